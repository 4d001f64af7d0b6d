// Shows under a length field how the server reads what is typed. The page works the same without it.
"use strict";

const WAIT_MILLISECONDS = 300;

for (const field of document.querySelectorAll("input[data-reading]")) {
  const shown = document.getElementById(field.dataset.reading);
  let timer = 0;
  let asked = 0;

  const ask = async () => {
    const mine = ++asked;
    if (field.value.trim() === "") {
      shown.textContent = "";
      return;
    }
    try {
      const answer = await fetch("/reading?typed=" + encodeURIComponent(field.value.slice(0, 100)), { redirect: "error" });
      const text = answer.ok ? await answer.text() : "";
      if (mine === asked) {
        shown.textContent = text;
      }
    } catch {
      // no connection or no session: the form itself will say so when it is sent
      shown.textContent = "";
    }
  };

  field.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(ask, WAIT_MILLISECONDS);
  });
}
