// offline.js - a service worker: what the desk served is kept, and answers while it is closed.
// SPDX-License-Identifier: MIT

const NAME = "desk";
const PARTS = ["/", "/app.webmanifest", "/icon.svg"];

async function keep() {
  const kept = await caches.open(NAME);
  await kept.addAll(PARTS);
  await self.skipWaiting();
}

// From the desk while it is open, so that the page is never an old one; else what was kept, under
// its path alone: what stands behind the "?" is the page's own. Logged days are not kept here.
async function answer(request) {
  const kept = await caches.open(NAME);
  const path = new URL(request.url).pathname;
  try {
    const fresh = await fetch(request);
    if (fresh.ok && request.method === "GET" && PARTS.includes(path))
      await kept.put(path, fresh.clone());
    return fresh;
  } catch (closed) {
    return (await kept.match(path)) ?? new Response(null, { status: 204 }); // nothing to be had
  }
}

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => event.respondWith(answer(event.request)));
