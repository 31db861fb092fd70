// The service worker keeps one version of the page whole, so that it opens
// with no network and never mixes old parts with new. FILES and VERSION stand
// above this line in the built file and are made from the built bytes.
"use strict";

const SCOPE = new URL(self.registration.scope);
const MINE = "twistbench-" + SCOPE.pathname + "@"; // another copy on this host keeps its own
const CACHE = MINE + VERSION;
const PAGE = SCOPE.pathname;
const KEPT = new Set(FILES.map((file) => new URL(file, SCOPE).pathname));

// A name with a hash in it always means the same bytes, so the browser's own
// copy, fetched a moment ago by the page, will do; the rest comes afresh.
async function keep(cache, file) {
  const url = new URL(file, SCOPE);
  const hashed = /\.[0-9a-f]{12}\.\w+$/.test(file);
  const got = await fetch(url, { cache: hashed ? "default" : "reload" });
  if (!got.ok) throw new Error(url.pathname + ": " + got.status);
  // A redirected answer may not open a page later: keep it without that mark.
  await cache.put(url, got.redirected ? new Response(got.body, got) : got);
}

async function install() {
  const cache = await caches.open(CACHE);
  await Promise.all(FILES.map((file) => keep(cache, file)));
}

async function tidy() {
  for (const name of await caches.keys()) {
    if (name.startsWith(MINE) && name !== CACHE) await caches.delete(name);
  }
}

async function answer(request, path) {
  const cache = await caches.open(CACHE);
  return (await cache.match(new URL(path, SCOPE), { ignoreVary: true })) || fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== SCOPE.origin) return;
  const path = url.pathname === PAGE + "index.html" ? PAGE : url.pathname;
  if (!KEPT.has(path)) return;
  if (path !== PAGE && url.search !== "") return;
  event.respondWith(answer(request, path));
});

// A new version waits until the person takes it.
self.addEventListener("message", (event) => {
  if (event.data && event.data.type === "take") self.skipWaiting();
});
