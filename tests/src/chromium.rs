//! What only the browser's own tools can do, through the driver's door to them.

use crate::fault::Outcome;
use crate::shell::Shell;
use serde_json::{Value, json};

/// Light or dark, as the device would ask for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scheme {
    /// Paper.
    Light,
    /// Slate.
    Dark,
}

impl Scheme {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Light, Self::Dark];

    /// As the media query calls it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Light => "light",
            Self::Dark => "dark",
        }
    }
}

impl Shell {
    /// One command of the browser's tools.
    ///
    /// # Errors
    /// When the browser refuses it.
    pub async fn tool(&self, method: &str, given: Value) -> Outcome<Value> {
        Ok(self.session()?.cdp().send_raw(method, given).await?)
    }

    /// A screen of this width and height.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn size(&self, (width, height): (u32, u32)) -> Outcome {
        let screen = json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false });
        self.tool("Emulation.setDeviceMetricsOverride", screen).await.map(drop)
    }

    /// A screen of this size under fingers instead of a mouse. Load the page after this.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn touch_screen(&self, (width, height): (u32, u32)) -> Outcome {
        let screen = json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": true });
        self.tool("Emulation.setDeviceMetricsOverride", screen).await?;
        self.tool("Emulation.setTouchEmulationEnabled", json!({ "enabled": true, "maxTouchPoints": 5 })).await.map(drop)
    }

    /// What the device prefers: light or dark, and whether things may move.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn prefer(&self, scheme: Scheme, still: bool) -> Outcome {
        let motion = if still { "reduce" } else { "no-preference" };
        let features = json!({ "features": [
            { "name": "prefers-color-scheme", "value": scheme.name() },
            { "name": "prefers-reduced-motion", "value": motion },
        ] });
        self.tool("Emulation.setEmulatedMedia", features).await.map(drop)
    }

    /// Takes the page's network away, or gives it back.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn offline(&self, offline: bool) -> Outcome {
        self.tool("Network.enable", json!({})).await?;
        let conditions = json!({ "offline": offline, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 });
        self.tool("Network.emulateNetworkConditions", conditions).await.map(drop)
    }

    /// Makes the processor so many times slower.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn slow_down(&self, times: u32) -> Outcome {
        self.tool("Emulation.setCPUThrottlingRate", json!({ "rate": times })).await.map(drop)
    }

    /// A finger on the middle of an element, and off again.
    ///
    /// # Errors
    /// When there is no such element, or the browser refuses.
    pub async fn tap(&self, css: &str) -> Outcome {
        let script = "const e = document.querySelector(arguments[0]);
            const r = e.getBoundingClientRect();
            return { x: r.x + r.width / 2, y: r.y + r.height / 2 };";
        let point: Value = self.ask(script, &[css.into()]).await?;
        self.tool("Input.dispatchTouchEvent", json!({ "type": "touchStart", "touchPoints": [point] })).await?;
        self.tool("Input.dispatchTouchEvent", json!({ "type": "touchEnd", "touchPoints": [] })).await.map(drop)
    }

    /// Runs a script in every page before anything of its own.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn run_first(&self, script: &str) -> Outcome {
        self.tool("Page.addScriptToEvaluateOnNewDocument", json!({ "source": script })).await.map(drop)
    }
}
