//! The app in one of its two shells: a page in the browser, or its own window.

use crate::fault::{Fault, Outcome};
use crate::places;
use crate::process::{Driver, free_port, kill};
use crate::server::Server;
use crate::wait::until;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::process::Command;
use tempfile::TempDir;
use thirtyfour::{Capabilities, WebDriver};

/// Which of the two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The web app in Chromium.
    Browser,
    /// The native window.
    Window,
}

/// A phone of ordinary width; nearly every browser test runs at this size.
pub const PHONE: (u32, u32) = (360, 740);

/// The app, running, with a store of its own that nothing was ever kept in.
///
/// The parts are dropped in this order: the session first, then its driver, then what both stood on.
pub struct Shell {
    kind: Kind,
    session: Option<WebDriver>,
    driver: Driver,
    server: Option<Server>,
    home: TempDir,
    letters_px: u32,
}

/// What browsers come with.
const LETTERS_PX: u32 = 16;

/// A window is asked for so often.
const STARTS: u32 = 3;

impl Shell {
    /// Starts the app for the first time on this device.
    ///
    /// # Errors
    /// When the test run has prepared nothing, or the app does not come up.
    pub async fn open(kind: Kind) -> Outcome<Self> {
        match kind {
            Kind::Browser => Self::browser(&places::web()?).await,
            Kind::Window => Self::window(&places::app()?).await,
        }
    }

    /// Starts the web app that stands in this folder.
    ///
    /// # Errors
    /// When the browser or the app does not come up.
    pub async fn browser(folder: &Path) -> Outcome<Self> {
        let home = TempDir::new()?;
        let driver = drive(Kind::Browser, home.path())?;
        let server = Some(Server::start(folder)?);
        let mut shell = Self { kind: Kind::Browser, session: None, driver, server, home, letters_px: LETTERS_PX };
        shell.begin().await?;
        Ok(shell)
    }

    async fn window(app: &Path) -> Outcome<Self> {
        // Only so that a run without the app says so, and not that the driver gave up.
        std::fs::metadata(app)?;
        let home = TempDir::new()?;
        let driver = drive(Kind::Window, home.path())?;
        let mut shell = Self { kind: Kind::Window, session: None, driver, server: None, home, letters_px: LETTERS_PX };
        shell.begin().await?;
        Ok(shell)
    }

    /// Ends the app and starts it again on the same device, with what it has kept.
    ///
    /// # Errors
    /// When it does not come up again.
    pub async fn restart(&mut self) -> Outcome {
        self.end().await?;
        self.begin().await
    }

    /// Kills the app and its driver as a power cut would, and starts it again on the same device.
    ///
    /// # Errors
    /// When it does not come up again.
    pub async fn kill(&mut self) -> Outcome {
        kill(self.driver.id())?;
        if let Some(session) = self.session.take() {
            // There is nobody left to say goodbye to; one that was ended already is as good.
            drop(session.leak());
        }
        self.driver = drive(self.kind, self.home.path())?;
        self.begin().await
    }

    /// The folder in which the window keeps what it keeps.
    pub fn data(&self) -> PathBuf {
        self.home.path().join("data")
    }

    /// Starts the browser anew with letters of another size, as a person sets it there: 32 px is 200 %.
    ///
    /// # Errors
    /// When the app does not come up again.
    pub async fn with_letters(&mut self, px: u32) -> Outcome {
        self.letters_px = px;
        self.restart().await
    }

    /// Ends the app; what it stood on goes with this value.
    ///
    /// # Errors
    /// When the driver refuses.
    pub async fn end(&mut self) -> Outcome {
        match self.session.take() {
            Some(session) => Ok(session.quit().await?),
            None => Ok(()),
        }
    }

    /// A session. On a busy machine WebKit's driver now and then gives up before there is one; then another is asked.
    async fn asked_for(&mut self, wanted: &Capabilities) -> Outcome<WebDriver> {
        for _ in 1..STARTS {
            match WebDriver::new(self.driver.address(), wanted.clone()).await {
                Err(error) if self.kind == Kind::Window => {
                    eprintln!("The window did not start, and is started again: {error}");
                    self.driver = drive(self.kind, self.home.path())?;
                }
                session => return Ok(session?),
            }
        }
        Ok(WebDriver::new(self.driver.address(), wanted.clone()).await?)
    }

    async fn begin(&mut self) -> Outcome {
        let wanted = match self.kind {
            Kind::Browser => browser_wanted(self.home.path(), self.letters_px),
            Kind::Window => json!({
                "browserName": "wry",
                "tauri:options": { "application": places::app()? },
            }),
        };
        let wanted: Capabilities = serde_json::from_value(wanted)?;
        self.session = Some(self.asked_for(&wanted).await?);
        if self.kind == Kind::Browser {
            self.size(PHONE).await?;
            self.go_to("").await?;
        }
        self.started().await
    }

    /// Waits until the app is on the screen.
    ///
    /// # Errors
    /// When it does not come up.
    pub async fn started(&self) -> Outcome {
        let look = async || self.ask::<bool>("return document.querySelector('.frame') !== null", &[]).await;
        until("the app on the screen", look, |there| *there).await?;
        Ok(())
    }

    /// Loads the page anew at this address within the app, such as `#/shelf`. Browser only.
    ///
    /// # Errors
    /// When there is no server, or the page does not load.
    pub async fn go_to(&self, address: &str) -> Outcome {
        let origin = self.server()?.origin();
        // Only the part behind the hash would differ, and that alone loads nothing.
        self.session()?.goto("about:blank").await?;
        Ok(self.session()?.goto(format!("{origin}/{address}")).await?)
    }

    /// Which of the two this is.
    pub fn kind(&self) -> Kind {
        self.kind
    }

    /// The session with the driver.
    ///
    /// # Errors
    /// Between [`Shell::end`] and the next start there is none.
    pub fn session(&self) -> Outcome<&WebDriver> {
        self.session.as_ref().ok_or_else(|| Fault::Wrong("the app was ended".to_owned()))
    }

    /// The web server under the browser.
    ///
    /// # Errors
    /// The window has none.
    pub fn server(&self) -> Outcome<&Server> {
        self.server.as_ref().ok_or_else(|| Fault::Wrong("the window has no server".to_owned()))
    }

    /// The driver's process.
    pub fn driver(&self) -> &Driver {
        &self.driver
    }

    /// Asks the page something in its own language. The script ends in a `return`; `arguments` are what is given.
    ///
    /// # Errors
    /// When the script throws, or gives something of another shape.
    pub async fn ask<T: DeserializeOwned>(&self, script: &str, given: &[Value]) -> Outcome<T> {
        let given = self.session()?.execute(script, given.to_vec()).await?;
        Ok(serde_json::from_value(given.json().clone())?)
    }

    /// The same for a script that answers later: the last of its `arguments` is the function to call.
    ///
    /// # Errors
    /// When the script throws, never answers, or gives something of another shape.
    pub async fn ask_later<T: DeserializeOwned>(&self, script: &str, given: &[Value]) -> Outcome<T> {
        let given = self.session()?.execute_async(script, given.to_vec()).await?;
        Ok(serde_json::from_value(given.json().clone())?)
    }

    /// Where the page is, the beginning of its text, and in Chromium what it told its console.
    ///
    /// # Errors
    /// When the page cannot be asked.
    pub async fn last_words(&self) -> Outcome<String> {
        let page = "return `${location.href} ${document.visibilityState}: ${document.body.innerText.slice(0, 600)}`";
        let mut words = self.ask::<String>(page, &[]).await?;
        if self.kind == Kind::Browser {
            for entry in self.session()?.get_log("browser").await? {
                words.push_str(&format!("\n{}", entry.message));
            }
        }
        Ok(words)
    }

    /// Keeps a picture of the screen with the artefacts, as `name-browser.png` or `name-window.png`.
    ///
    /// # Errors
    /// When it cannot be taken or written.
    pub async fn keep_picture(&self, name: &str) -> Outcome {
        let shell = match self.kind {
            Kind::Browser => "browser",
            Kind::Window => "window",
        };
        let picture = self.session()?.screenshot_as_png().await?;
        Ok(std::fs::write(places::artefacts()?.join(format!("{name}-{shell}.png")), picture)?)
    }
}

/// Starts the program that drives such a shell, whose own folders are in `home`.
fn drive(kind: Kind, home: &Path) -> Outcome<Driver> {
    let port = free_port()?;
    if kind == Kind::Browser {
        let mut command = Command::new("chromedriver");
        command.arg(format!("--port={port}"));
        return Driver::start(command, port, None);
    }
    let native = free_port()?;
    let mut command = Command::new("tauri-driver");
    command
        .args(["--port", &port.to_string(), "--native-port", &native.to_string()])
        .args(["--native-driver", "/usr/bin/WebKitWebDriver"])
        .env("SCANTLING_DATA_DIR", home.join("data"));
    // The web view's own folders, so that nothing of another run is met there either.
    for (name, folder) in [("XDG_DATA_HOME", "share"), ("XDG_CACHE_HOME", "cache"), ("XDG_CONFIG_HOME", "config")] {
        command.env(name, home.join(folder));
    }
    Driver::start(command, port, Some(native))
}

fn browser_wanted(home: &Path, letters_px: u32) -> Value {
    let profile = format!("--user-data-dir={}", home.join("profile").display());
    json!({
        "browserName": "chrome",
        "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
        "goog:chromeOptions": { "prefs": { "webkit.webprefs.default_font_size": letters_px }, "args": [
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync",
            "--hide-scrollbars", "--force-device-scale-factor=1", profile,
        ] },
    })
}
