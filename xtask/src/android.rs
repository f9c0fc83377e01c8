//! `cargo xtask check-android`: whether the app would compile for a phone. No SDK is needed, and no package is made.

use crate::halt::Halt;
use crate::{call, compiler};

pub(crate) fn check() -> Result<(), Halt> {
    let mut command = compiler::ANDROID.cargo("check")?;
    command
        .args(["--package", "scantling-app"])
        // A check links nothing, so the database's C may stay uncompiled: that would take Android's headers.
        .env("CC_aarch64_linux_android", "true")
        .env("AR_aarch64_linux_android", "true");
    call::run("The check for Android", &mut command)?;
    println!("The app passes the compiler's checks for Android.");
    Ok(())
}
