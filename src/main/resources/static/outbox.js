// Sends the forms marked data-outbox. What is sent is kept in the browser first (outbox-kept.js), and stays there until the
// server has confirmed it; the operation id of each form makes it one record however often it is sent. A form that asks for
// a PIN afterwards is a draft: kept, and sent by its person only. Without this script the forms are sent as any form is.
"use strict";

(() => {
  const { strip, person, mine, forms, pathOf, NEVER_KEPT } = beltmarkShow;
  const PATIENCE_MILLISECONDS = 15000;
  const FIRST_PAUSE_MILLISECONDS = 3000;
  const LONGEST_PAUSE_MILLISECONDS = 300000;
  const others = "BroadcastChannel" in window ? new BroadcastChannel("beltmark-outbox") : null;
  // the worker has kept this page already when it was there before it
  const watched = navigator.serviceWorker?.controller != null;
  let pause = FIRST_PAUSE_MILLISECONDS;
  let timer = 0;
  let signedOut = false;

  const show = () => beltmarkShow.all(signedOut, changed);

  const changed = () => {
    others?.postMessage("changed");
    return show();
  };

  /** Shows a page as it is now, also when it is the one that is open. */
  const leadTo = (target) => {
    if (new URL(target, location.href).pathname === location.pathname) {
      history.replaceState(null, "", target);
      location.reload();
    } else {
      location.assign(target);
    }
  };

  // ---- sending ----

  const freshToken = async () => {
    try {
      const answer = await fetch("/outbox/token", { redirect: "manual", signal: AbortSignal.timeout(PATIENCE_MILLISECONDS) });
      if (!answer.ok) {
        return { ended: answer.type === "opaqueredirect" };
      }
      const [whose, csrf] = (await answer.text()).split("\n");
      return { whose, csrf };
    } catch {
      return {};
    }
  };

  /** stored, refused, stale, ended or later */
  const post = async (entry, csrf) => {
    try {
      const answer = await fetch(entry.action, {
        method: "POST",
        body: new URLSearchParams([["csrf", csrf], ...entry.fields]),
        signal: AbortSignal.timeout(PATIENCE_MILLISECONDS),
      });
      const word = { 401: "ended", 403: "stale", 408: "later", 425: "later", 429: "later" }[answer.status];
      const outcome = word ?? (answer.ok ? "stored" : answer.status >= 500 ? "later" : "refused");
      return { outcome, page: new URL(answer.url).pathname };
    } catch {
      return { outcome: "later" };
    }
  };

  const conclude = async (entry, { outcome, page }) => {
    if (outcome === "stored") {
      await beltmarkKept.confirm(entry, page);
    } else if (outcome === "refused") {
      await beltmarkKept.put({ ...entry, state: "refused" });
    }
    signedOut = outcome === "ended";
  };

  /** Sends what waits, in order; stops at the first that the server could not look at now. */
  const sendWaiting = async () => {
    const waiting = async () => (await beltmarkKept.list()).filter((entry) => mine(entry) && entry.state === "waiting" && entry.kind === "send");
    const stale = document.querySelector('input[name="csrf"][value=""]') !== null;
    if (person === "" || (!stale && (await waiting()).length === 0)) {
      return;
    }
    const { whose, csrf, ended } = await freshToken();
    signedOut = ended === true;
    if (whose !== person) {
      // somebody else's session is not kept alive by asking again
      if (whose === undefined) {
        later();
      }
      return;
    }
    document.querySelectorAll('input[name="csrf"]').forEach((field) => { field.value = csrf; });
    const sending = strip.querySelector('[data-line="sending"]');
    for (const entry of await waiting()) {
      sending.hidden = false;
      const result = await post(entry, csrf);
      await conclude(entry, result);
      if (!["stored", "refused"].includes(result.outcome)) {
        later();
        break;
      }
      pause = FIRST_PAUSE_MILLISECONDS;
      if (forms().some((form) => pathOf(form) === entry.action)) {
        leadTo(result.outcome === "stored" ? result.page + entry.to : entry.page);
      }
    }
    sending.hidden = true;
  };

  const later = () => {
    clearTimeout(timer);
    if (!signedOut) {
      timer = setTimeout(flush, pause);
      pause = Math.min(pause * 2, LONGEST_PAUSE_MILLISECONDS);
    }
  };

  // one tab at a time; the operation ids would make one record of two sendings anyway
  const inTurn = (step) => (navigator.locks ? navigator.locks.request("beltmark-outbox", step) : step());

  const flush = async () => {
    await inTurn(sendWaiting);
    await changed();
    fetchAhead();
  };

  // ---- forms ----

  const freshOperation = () => btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16))))
    .replaceAll("+", "-").replaceAll("/", "_").slice(0, 22);

  const entryOf = async (form, button) => {
    const fields = [...new FormData(form)].filter(([name, value]) => typeof value === "string" && !NEVER_KEPT.includes(name));
    if (button?.name) {
      fields.push([button.name, button.value]);
    }
    const operation = fields.find(([name]) => name === "operation");
    const used = (await beltmarkKept.list()).some((entry) => entry.operation === operation[1]);
    if (used && form.dataset.outbox === "send") {
      operation[1] = freshOperation();
    }
    return {
      person,
      kind: form.dataset.outbox,
      state: "waiting",
      action: pathOf(form, button),
      page: location.pathname,
      title: document.querySelector("h1").textContent,
      to: form.dataset.outboxTo ?? "",
      operation: operation[1],
      fields,
      madeAt: Date.now(),
    };
  };

  /** What the browser does with a form without this script. */
  const sendPlainly = (form, button) => {
    form.dataset.outboxPlain = "";
    form.requestSubmit(button ?? undefined);
  };

  const send = async (form, button) => {
    const entry = await entryOf(form, button);
    entry.id = await beltmarkKept.add(entry);
    const result = await inTurn(() => post(entry, form.querySelector('[name="csrf"]').value));
    if (result.outcome === "stored") {
      await beltmarkKept.remove(entry.id);
      leadTo(result.page + entry.to);
    } else if (result.outcome === "refused") {
      await beltmarkKept.remove(entry.id);
      sendPlainly(form, button);
    } else {
      await conclude(entry, result);
      await (result.outcome === "stale" ? flush() : changed());
      later();
    }
  };

  /** Keeps a form that only its person can send, and sends it if there is a network. */
  const sendByHand = async (form, button) => {
    let entry = null;
    if (form.dataset.outbox === "draft") {
      entry = await entryOf(form, button);
      const earlier = (await beltmarkKept.list()).find((one) => mine(one) && one.kind === "draft" && one.action === entry.action);
      entry.id = await (earlier === undefined ? beltmarkKept.add(entry) : beltmarkKept.put({ ...entry, id: earlier.id }));
    }
    const { whose, csrf, ended } = await freshToken();
    signedOut = ended === true;
    if (whose === person) {
      form.querySelector('[name="csrf"]').value = csrf;
      sendPlainly(form, button);
    } else {
      beltmarkShow.notSent(form, entry);
      await changed();
    }
  };

  document.addEventListener("submit", (event) => {
    const form = event.target;
    form.querySelectorAll("[data-now]").forEach((field) => { field.value ||= new Date().toISOString(); });
    if (!("outbox" in form.dataset) || "outboxPlain" in form.dataset || person === "") {
      return;
    }
    event.preventDefault();
    if (!("outboxBusy" in form.dataset)) {
      form.dataset.outboxBusy = "";
      (form.dataset.outbox === "send" ? send : sendByHand)(form, event.submitter)
        .catch(() => sendPlainly(form, event.submitter))
        .finally(() => delete form.dataset.outboxBusy);
    }
  });

  /** A draft whose record is stored is done with; a form of which there is a draft is filled from it. */
  const seeToDrafts = async () => {
    const drafts = (await beltmarkKept.list()).filter((entry) => mine(entry) && entry.kind === "draft");
    const signed = document.querySelector("[data-outbox-signed]")?.dataset.outboxSigned;
    for (const entry of drafts.filter((one) => one.operation === signed)) {
      await beltmarkKept.remove(entry.id);
    }
    forms().filter((form) => form.dataset.outbox === "draft")
      .forEach((form) => beltmarkShow.draft(form, drafts.find((entry) => entry.action === pathOf(form))));
  };

  // ---- pages ahead ----

  const fetchAhead = async () => {
    if (person === "" || !beltmarkPages.usable || forms().length === 0) {
      return;
    }
    try {
      await navigator.serviceWorker.ready;
      await beltmarkPages.keepOpen(watched ? [] : [location.pathname]);
      for (const start of forms().flatMap((form) => form.dataset.outboxAhead?.split(" ") ?? [])) {
        await beltmarkPages.fetchAhead(start);
      }
      strip.dataset.ahead = "fetched";
    } catch {
      // no network now: what is kept already is enough
    }
  };

  const start = async () => {
    if (beltmarkPages.usable) {
      await beltmarkPages.belongTo(person);
      if (person !== "") {
        await navigator.serviceWorker.register("/outbox-worker.js");
      }
    }
    await beltmarkKept.forgetOld();
    await seeToDrafts();
    await flush();
  };

  strip.querySelector("[data-send]").addEventListener("click", () => flush());
  window.addEventListener("online", () => flush());
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && flush());
  window.addEventListener("pageshow", () => forms().forEach((form) => delete form.dataset.outboxPlain));
  others?.addEventListener("message", () => show());
  start().catch(() => {
    // a browser that keeps nothing sends its forms as ever
  });
})();
