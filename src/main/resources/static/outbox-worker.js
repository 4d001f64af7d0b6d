// The service worker: opens pages from the network first, and when there is none from what is kept. It keeps static files
// and pages with an outbox form, nothing else, and never touches what is sent.
"use strict";

const PAGES = "beltmark-pages";
const AHEAD = "beltmark-ahead";
const STATIC = "beltmark-static";
const AWAY = "/outbox/away";
const PATIENCE_MILLISECONDS = 12000;
// no session lasts longer
const LONGEST_KEPT_MILLISECONDS = 12 * 60 * 60 * 1000;
const GATEWAYS = [502, 503, 504];

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) {
    return;
  }
  if (request.method === "POST") {
    if (url.pathname === "/sign-out" || url.pathname.startsWith("/sign-in/")) {
      event.waitUntil(dropPages());
    }
  } else if (request.method === "GET" && url.pathname.startsWith("/static/")) {
    event.respondWith(staticFile(request));
  } else if (request.method === "GET" && request.mode === "navigate") {
    event.respondWith(page(event, url));
  }
});

async function dropPages() {
  await caches.delete(PAGES);
  await caches.delete(AHEAD);
}

async function staticFile(request) {
  const cache = await caches.open(STATIC);
  const kept = await cache.match(request);
  if (kept) {
    return kept;
  }
  const fresh = await fetch(request);
  if (fresh.ok) {
    await cache.put(request, fresh.clone());
  }
  return fresh;
}

async function page(event, url) {
  try {
    const fresh = await Promise.race([fetch(event.request), outOfPatience()]);
    if (GATEWAYS.includes(fresh.status)) {
      return (await keptPage(url)) ?? fresh;
    }
    if (fresh.status === 200) {
      event.waitUntil(keep(url.pathname, fresh.clone()));
    }
    return fresh;
  } catch {
    return (await keptPage(url)) ?? (await aheadOf(url)) ?? (await match(PAGES, AWAY)) ?? Response.error();
  }
}

function outOfPatience() {
  return new Promise((_, reject) => setTimeout(() => reject(new Error("no answer")), PATIENCE_MILLISECONDS));
}

/** A page with an outbox form can be opened again without network; the token of its forms is not kept. */
async function keep(path, response) {
  const html = await response.text();
  const cache = await caches.open(PAGES);
  await (await caches.open(AHEAD)).delete(path);
  if (/<form[^>]* data-outbox="/.test(html)) {
    await cache.put(path, new Response(html.replace(/(name="csrf" value=")[^"]*/g, "$1"), {
      headers: {
        "Content-Type": "text/html; charset=utf-8",
        "Content-Security-Policy": response.headers.get("Content-Security-Policy"),
        "Kept-At": String(Date.now()),
      },
    }));
  } else {
    await cache.delete(path);
  }
}

async function match(name, path) {
  const kept = await (await caches.open(name)).match(path);
  return kept && Date.now() - Number(kept.headers.get("Kept-At")) < LONGEST_KEPT_MILLISECONDS ? kept : undefined;
}

async function keptPage(url) {
  const kept = await match(PAGES, url.pathname);
  if (kept) {
    return kept;
  }
  const fetched = await match(AHEAD, url.pathname);
  if (fetched) {
    // opened once, it is no longer ahead
    await (await caches.open(PAGES)).put(url.pathname, fetched.clone());
    await (await caches.open(AHEAD)).delete(url.pathname);
  }
  return fetched;
}

/** Where a start path leads without network: to the first page that was fetched ahead from there. */
async function aheadOf(url) {
  for (const request of await (await caches.open(AHEAD)).keys()) {
    const path = new URL(request.url).pathname;
    if (path.startsWith(url.pathname + "/") && (await match(AHEAD, path))) {
      return Response.redirect(path, 303);
    }
  }
  return undefined;
}
