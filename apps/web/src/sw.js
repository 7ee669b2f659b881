/* global FILES, NAME -- written above this text by the build: every file of the app, and the name of this build's store. */

addEventListener("install", (event) => {
  const fresh = FILES.map((file) => new Request(file, { cache: "reload" }));
  event.waitUntil(caches.open(NAME).then((store) => store.addAll(fresh)));
});

addEventListener("activate", (event) => {
  const old = (name) => name.startsWith("shell-") && name !== NAME;
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name))))
      .then(() => clients.claim()),
  );
});

// A new build waits until a person says so: never in the middle of an exposure.
addEventListener("message", (event) => {
  if (event.data === "take-over") skipWaiting();
});

addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== "GET" || origin !== location.origin || pathname.includes("/api/")) return;
  const wanted = mode === "navigate" ? "./index.html" : event.request;
  event.respondWith(
    caches
      .open(NAME)
      .then((store) => store.match(wanted, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(event.request)),
  );
});
