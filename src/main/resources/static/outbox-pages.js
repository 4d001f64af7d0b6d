// Keeps pages with an outbox form for opening them without network: the page that is open, and a few fetched ahead. The
// token of the forms is taken out of what is kept; a page is kept for one person and dropped when another one comes.
"use strict";

const beltmarkPages = (() => {
  const PAGES = "beltmark-pages";
  const AHEAD = "beltmark-ahead";
  const STATIC = "beltmark-static";
  const OWNER = "/outbox/owner";
  const AWAY = "/outbox/away";
  const MOST_AHEAD = 3;
  const usable = "caches" in window && "serviceWorker" in navigator;

  const keepAssets = async (html) => {
    const page = new DOMParser().parseFromString(html, "text/html");
    const cache = await caches.open(STATIC);
    for (const element of page.querySelectorAll("script[src], link[href]")) {
      const path = element.getAttribute("src") ?? element.getAttribute("href");
      if (path.startsWith("/static/") && !(await cache.match(path))) {
        await cache.add(path);
      }
    }
  };

  const fetchInto = async (name, start) => {
    const answer = await fetch(start, { headers: { Outbox: "ahead" } });
    const path = new URL(answer.url).pathname;
    if (!answer.ok || path.startsWith("/sign-in")) {
      return false;
    }
    const html = (await answer.text()).replace(/(name="csrf" value=")[^"]*/g, "$1");
    await keepAssets(html);
    const headers = { "Content-Type": "text/html; charset=utf-8", "Content-Security-Policy": answer.headers.get("Content-Security-Policy"), "Kept-At": String(Date.now()) };
    await (await caches.open(name)).put(path, new Response(html, { headers }));
    return true;
  };

  const ahead = async (start) => {
    if (!usable) {
      return [];
    }
    const keys = await (await caches.open(AHEAD)).keys();
    return keys.map((request) => new URL(request.url).pathname).filter((path) => path.startsWith(start + "/"));
  };

  return {
    /** Whether this browser can keep pages at all; it cannot over plain HTTP. */
    usable,
    /** Drops what is kept for anybody but this person; nobody signed in counts as somebody else. */
    belongTo: async (person) => {
      const owner = await (await caches.open(PAGES)).match(OWNER);
      if (owner && (await owner.text()) === person) {
        return;
      }
      await caches.delete(PAGES);
      await caches.delete(AHEAD);
      if (person !== "") {
        await (await caches.open(PAGES)).put(OWNER, new Response(person));
      }
    },
    /** Keeps the open page, and the page that says that there is no network. */
    keepOpen: async (paths) => {
      const cache = await caches.open(PAGES);
      for (const wanted of [...paths, AWAY]) {
        if (!(await cache.match(wanted))) {
          await fetchInto(PAGES, wanted);
        }
      }
    },
    /** Fetches pages ahead until there are enough. */
    fetchAhead: async (start) => {
      for (let kept = (await ahead(start)).length; kept < MOST_AHEAD; kept++) {
        if (!(await fetchInto(AHEAD, start))) {
          return;
        }
      }
    },
    /** The paths of the pages fetched ahead from that start. */
    ahead,
  };
})();
