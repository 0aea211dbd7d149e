// @ts-check
// Outcomes with the keyboard only: Enter goes on to the next field, line after line, and after the
// last one to the button that keeps them; up and down in a field for points go to the pupil before
// and after.

const lines = document.querySelector("[data-exam-lines]");

/** @returns {(HTMLInputElement | HTMLSelectElement)[]} */
function fields() {
  return lines ? [...lines.querySelectorAll("input, select")].filter(isField) : [];
}

/** @param {unknown} one @returns {one is HTMLInputElement | HTMLSelectElement} */
function isField(one) {
  return one instanceof HTMLInputElement || one instanceof HTMLSelectElement;
}

lines?.addEventListener("keydown", (event) => {
  if (!(event instanceof KeyboardEvent) || !isField(event.target) || event.isComposing) {
    return;
  }
  const field = event.target;
  const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  if (event.key === "Enter") {
    event.preventDefault();
    go(fields()[fields().indexOf(field) + 1] ?? field.form?.querySelector("button"));
  } else if (step && field instanceof HTMLInputElement) {
    event.preventDefault();
    beside(field, step);
  }
});

/** @param {HTMLInputElement} field @param {number} step */
function beside(field, step) {
  const all = fields();
  const perLine = all.length / (lines?.children.length || 1);
  go(all[all.indexOf(field) + step * perLine]);
}

/** @param {HTMLElement | null | undefined} field */
function go(field) {
  field?.focus();
  if (field instanceof HTMLInputElement) {
    field.select();
  }
}

go(document.querySelector("[data-exam-lines] [aria-invalid]") ?? fields().find((field) => field.value === ""));
