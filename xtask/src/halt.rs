//! Why a command stops: a sentence for the person at the keyboard.

use std::io;
use std::path::{Path, PathBuf};
use std::process::ExitStatus;

#[derive(Debug, thiserror::Error)]
pub(crate) enum Halt {
    #[error("{what} did not succeed ({status}).")]
    Unsuccessful { what: String, status: ExitStatus },
    #[error("{program} could not be started: {source}.")]
    NotStarted { program: String, source: io::Error },
    #[error("{} could not be {doing}: {source}.", path.display())]
    File { doing: &'static str, path: PathBuf, source: io::Error },
    #[error("No command is called “{0}”. `cargo xtask` alone lists them.")]
    UnknownCommand(String),
    #[error("“{0}” says nothing to this command. `cargo xtask` alone lists what each takes.")]
    UnknownOption(String),
    #[error("This machine lacks what is listed above. Once these commands have run, try again:\n\n{commands}")]
    Lacking { commands: String },
    #[error("{what} finished without making {made}.")]
    NotMade { what: String, made: String },
    #[error("wasm-bindgen could not make the JavaScript glue: {0:#}.")]
    Glue(Box<dyn std::error::Error + Send + Sync>),
    #[error("The program's functions could not be put in order: {0}.")]
    Order(#[from] wasm_encoder::reencode::Error),
    #[error("Port {port} of this machine cannot be used: {source}. Another one is taken with --port.")]
    Port { port: u16, source: io::Error },
    #[error("{name} has “</” in it, which would end the script or the style that it stands in.")]
    NotPortable { name: String },
    #[error("{} is not there yet. `cargo xtask build` makes it.", .0.display())]
    NotBuilt(PathBuf),
}

/// Adds to an error of the file system which file it was, and what was to be done with it.
pub(crate) trait AtFile<T> {
    fn at(self, doing: &'static str, path: impl AsRef<Path>) -> Result<T, Halt>;
}

impl<T> AtFile<T> for io::Result<T> {
    fn at(self, doing: &'static str, path: impl AsRef<Path>) -> Result<T, Halt> {
        self.map_err(|source| Halt::File { doing, path: path.as_ref().to_owned(), source })
    }
}
