// Starts the app, and keeps it on the device so that it opens without a network.

const worker = "serviceWorker" in navigator && location.protocol.startsWith("http") ? navigator.serviceWorker : null;

start();
// The worker fetches every file: let the page have its own first.
if (worker) addEventListener("load", () => keepOnDevice().catch(reportToConsole), { once: true });

async function start() {
  try {
    if (typeof WebAssembly !== "object") throw new Error("no WebAssembly");
    // Both at once; the glue alone would ask for the program only after it was read itself.
    const program = fetch(new URL("scantling_bg.wasm", import.meta.url));
    const glue = await import("./scantling.js");
    await glue.default({ module_or_path: program });
  } catch (error) {
    reportToConsole(error);
    say("Scantling could not start here. It needs a browser that runs WebAssembly, such as one made since 2022.");
  }
}

async function keepOnDevice() {
  // A page that was never controlled gets its first worker silently; any later change of worker is a new version.
  let controlled = worker.controller !== null;
  let reloading = false;
  worker.addEventListener("controllerchange", () => {
    if (controlled && !reloading) {
      reloading = true;
      location.reload();
    }
    controlled = true;
  });

  // `updateViaCache: "none"`: no HTTP cache may hold back a new version.
  const registration = await worker.register("sw.js", { updateViaCache: "none" });
  addEventListener("scantling-take-over", () => registration.waiting?.postMessage("take-over"));
  if (registration.waiting) announce();
  registration.addEventListener("updatefound", () => {
    const incoming = registration.installing;
    incoming?.addEventListener("statechange", () => {
      if (incoming.state === "installed") announce();
    });
  });
}

/**
 * Tells the app that a new version waits. The mark on the root element is for an app that listens only later;
 * the app answers with the event `scantling-take-over`.
 */
function announce() {
  if (!worker.controller) return;
  document.documentElement.dataset.newVersion = "waiting";
  dispatchEvent(new CustomEvent("scantling-new-version"));
}

function say(sentence) {
  const paragraph = document.createElement("p");
  paragraph.setAttribute("role", "alert");
  paragraph.textContent = sentence;
  document.getElementById("app")?.replaceChildren(paragraph);
}

function reportToConsole(error) {
  console.error(error);
}
