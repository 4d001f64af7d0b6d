// Shows what this browser keeps: the strip below the head of each page, and a notice in a form whose sending is kept. All
// words come from the page.
"use strict";

const beltmarkShow = (() => {
  const strip = document.getElementById("outbox");
  const NEVER_KEPT = ["csrf", "pin"];
  const person = strip.dataset.person;
  const mine = (entry) => entry.person === person;
  const forms = () => [...document.querySelectorAll("form[data-outbox]")];
  const pathOf = (form, button) => new URL(button?.getAttribute("formaction") ?? form.action, location.href).pathname;
  const atTime = (milliseconds) => new Date(milliseconds).toLocaleString(document.documentElement.lang, { dateStyle: "medium", timeStyle: "short" });
  const copyOf = (template) => document.getElementById(template).content.firstElementChild.cloneNode(true);

  const item = (entry, changed) => {
    const kind = entry.state === "waiting" ? entry.kind : entry.state;
    const made = copyOf(`outbox-${kind}`);
    const link = made.querySelector("a");
    link.textContent = entry.title;
    link.href = entry.page;
    made.querySelector("[data-when]").textContent = atTime(entry.madeAt);
    const typed = made.querySelector("[data-typed]");
    if (typed !== null) {
      typed.textContent = entry.fields.filter(([name]) => name !== "operation").map(([, value]) => value).join(" · ");
    }
    made.querySelector("[data-drop]")?.addEventListener("click", () => beltmarkKept.remove(entry.id).then(changed));
    return made;
  };

  const fill = (form, entry) => {
    for (const [name, value] of entry.fields) {
      for (const field of form.elements) {
        if (field.name === name && ["radio", "checkbox"].includes(field.type)) {
          field.checked = field.value === value || (field.type === "checkbox" && field.checked);
        } else if (field.name === name && field.type !== "file" && !NEVER_KEPT.includes(name)) {
          field.value = value;
        }
      }
    }
  };

  const notice = (form, template, entry) => {
    const made = copyOf(template);
    made.querySelector("[data-when]").textContent = entry === null ? "" : atTime(entry.madeAt);
    form.querySelectorAll("[data-outbox-notice]").forEach((earlier) => earlier.remove());
    form.append(made);
    return made;
  };

  /** A form whose sending is kept cannot be changed any more; in place of its button stands where it is. */
  const lock = async (form, entry) => {
    if (entry === undefined || form.querySelector("[data-outbox-notice]") !== null) {
      return;
    }
    const made = notice(form, "outbox-notice", entry);
    for (const field of form.elements) {
      field.disabled = true;
      if (field.tagName === "BUTTON") {
        field.hidden = true;
      }
    }
    fill(form, entry);
    const start = form.dataset.outboxAhead?.split(" ")[0];
    const left = start === undefined ? [] : await beltmarkPages.ahead(start);
    const on = made.querySelector("[data-go-on]");
    on.hidden = left.length === 0;
    on.href = start ?? "/";
    made.querySelector("[data-none-ahead]").hidden = start === undefined || left.length > 0;
  };

  return {
    strip,
    person,
    mine,
    forms,
    pathOf,
    NEVER_KEPT,
    /** Shows what is kept now. */
    all: async (signedOut, changed) => {
      const entries = await beltmarkKept.list();
      const own = entries.filter(mine);
      const lines = {
        waiting: own.filter((entry) => entry.state === "waiting" && entry.kind === "send"),
        draft: own.filter((entry) => entry.state === "waiting" && entry.kind === "draft"),
        refused: own.filter((entry) => entry.state === "refused"),
        stored: own.filter((entry) => entry.state === "stored"),
        other: entries.filter((entry) => !mine(entry) && entry.state !== "stored"),
      };
      for (const [name, found] of Object.entries(lines)) {
        const line = strip.querySelector(`[data-line="${name}"]`);
        line.hidden = found.length === 0;
        line.textContent = line.dataset.says.replace("{count}", String(found.length));
      }
      strip.querySelector("[data-send]").hidden = lines.waiting.length === 0 || signedOut;
      strip.querySelector("[data-sign-in]").hidden = !(signedOut && lines.waiting.length + lines.draft.length > 0);
      strip.querySelector("[data-list]").replaceChildren(
        ...[...lines.draft, ...lines.refused, ...lines.stored].map((entry) => item(entry, changed)));
      strip.hidden = Object.values(lines).every((found) => found.length === 0);
      forms().forEach((form) => lock(form, lines.waiting.find((entry) => entry.action === pathOf(form))));
    },
    /** Fills a form that was never sent from the draft that is kept of it; one that came back needs none. */
    draft: (form, entry) => {
      if (entry !== undefined && form.querySelector("[data-now]")?.value === "") {
        fill(form, entry);
        form.prepend(notice(form, "outbox-restored", entry));
      }
    },
    /** Says in a form that it was not sent, and whether it is kept. */
    notSent: (form, entry) => notice(form, entry === null ? "outbox-not-sent" : "outbox-draft-notice", entry).scrollIntoView({ block: "nearest" }),
  };
})();
