// Keeps the whole app on the device. The build puts two lines above this one: VERSION, the hash of the list below,
// and FILES, every file of the app with the hash of its content.

const PREFIX = "scantling-";
const CACHE = PREFIX + VERSION;

// All files or none: `addAll` keeps nothing if one fails, and `integrity` refuses a file of another version,
// so a server that is half-way through an update cannot leave a mixture on the device.
self.addEventListener("install", (event) => {
  const requests = FILES.map(([path, integrity]) => new Request(path, { cache: "reload", integrity }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(requests)));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(dropOlder().then(() => self.clients.claim()));
});

async function dropOlder() {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(older.map((name) => caches.delete(name)));
}

// A new version waits until the page says so: nobody's app changes under their hands.
self.addEventListener("message", (event) => {
  if (event.data === "take-over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const wanted = request.mode === "navigate" ? "index.html" : request;
  const cache = await caches.open(CACHE);
  const kept = await cache.match(wanted, { ignoreSearch: true, ignoreVary: true });
  return kept ?? fetch(request);
}
