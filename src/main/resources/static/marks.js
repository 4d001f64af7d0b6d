// Puts items in order by buttons and by drag, and takes a height from a tap on the drawing. The page works the same without it.
"use strict";

const MILLIMETRES_PER_INCH = 25.4;

function rows(list) {
  return [...list.querySelectorAll(":scope > .place")];
}

// the places follow the rows as they stand
function number(list) {
  rows(list).forEach((row, index) => {
    row.querySelector("select").value = String(index + 1);
  });
}

function mover(list, row, text, step) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "second move";
  button.textContent = step < 0 ? "▲" : "▼";
  button.setAttribute("aria-label", text + ": " + row.querySelector("label").textContent);
  button.addEventListener("click", () => {
    const other = step < 0 ? row.previousElementSibling : row.nextElementSibling;
    if (other !== null && other.classList.contains("place")) {
      if (step < 0) {
        other.before(row);
      } else {
        other.after(row);
      }
      number(list);
      button.focus();
    }
  });
  return button;
}

for (const list of document.querySelectorAll("fieldset[data-order=true]")) {
  for (const row of rows(list)) {
    row.draggable = true;
    row.append(mover(list, row, list.dataset.up, -1), mover(list, row, list.dataset.down, 1));
    row.addEventListener("dragstart", (event) => {
      row.classList.add("dragged");
      event.dataTransfer.effectAllowed = "move";
    });
    row.addEventListener("dragend", () => {
      row.classList.remove("dragged");
      number(list);
    });
    row.addEventListener("dragover", (event) => {
      const dragged = list.querySelector(".dragged");
      if (dragged !== null && dragged !== row) {
        event.preventDefault();
        const box = row.getBoundingClientRect();
        if (event.clientY < box.top + box.height / 2) {
          row.before(dragged);
        } else {
          row.after(dragged);
        }
      }
    });
  }
}

function fraction(count, perUnit) {
  const whole = Math.floor(count / perUnit);
  let above = count - whole * perUnit;
  let below = perUnit;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return above === 0 ? String(whole) : (whole === 0 ? "" : whole + " ") + above + "/" + below;
}

// a height in millimetres, to the nearest graduation of the person's own tape
function told(millimetres, hint) {
  const perUnit = Number(hint.dataset.perUnit);
  const inch = hint.dataset.unit === "in";
  const count = Math.round((inch ? millimetres / MILLIMETRES_PER_INCH : millimetres) * perUnit);
  return inch ? fraction(count, perUnit) : String(count / perUnit);
}

const hints = [...document.querySelectorAll("[data-tap-for]")];
for (const drawing of document.querySelectorAll(".part-open svg[data-axis-zero]")) {
  hints.forEach((hint) => { hint.hidden = false; });
  drawing.addEventListener("click", (event) => {
    const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse());
    const half = drawing.viewBox.baseVal.width / 2;
    const hint = hints[hints.length > 1 && place.x > half ? hints.length - 1 : 0];
    const height = (Number(drawing.dataset.axisZero) - place.y) * Number(drawing.dataset.scale);
    const field = document.getElementById(hint.dataset.tapFor);
    field.value = told(height, hint);
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.focus({ preventScroll: true });
  });
}
