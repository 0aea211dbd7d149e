// @ts-check
// While a line is typed, the desk marks what stands in it and keeps it as a draft, so that nothing
// is lost when the page is closed or the machine goes down.

const PAUSE = 400;

/** @type {Map<HTMLFormElement, number>} */
const waiting = new Map();
/** What the desk told of a line: marks in one word each, how many are right, what is wrong with the
 * time, and why the line could not be kept as it stands.
 * @typedef {{marks: string[], score: string, fault: string, refused: string}} Told */

/** @type {Map<HTMLFormElement, Promise<Told | undefined>>} */
const running = new Map();

// What was typed a moment ago is sent off, and kept in this tab until the page is there again: the
// page may be asked for before the desk has read it.
addEventListener("pagehide", () => {
  for (const form of waiting.keys()) {
    navigator.sendBeacon(form.dataset.draft ?? "", fields(form));
    sessionStorage.setItem(form.dataset.draft ?? "", String(fields(form)));
  }
});

for (const form of document.querySelectorAll("form[data-draft]")) {
  if (form instanceof HTMLFormElement) {
    takeUp(form);
  }
}

/** @param {HTMLFormElement} form */
function takeUp(form) {
  const key = form.dataset.draft ?? "";
  const typed = new URLSearchParams(sessionStorage.getItem(key) ?? "");
  sessionStorage.removeItem(key);
  for (const field of form.querySelectorAll("input")) {
    if (field.type !== "hidden" && typed.has(field.name)) {
      field.value = typed.get(field.name) ?? "";
    }
  }
  if (typed.size > 0) {
    draftNow(form);
  }
}

/** What stands in a line. @param {HTMLFormElement} form */
export function fields(form) {
  const all = new URLSearchParams();
  for (const [name, value] of new FormData(form)) {
    all.append(name, String(value));
  }
  return all;
}

/** Marks and keeps the line when the typing pauses. @param {HTMLFormElement | null} form */
export function draftLater(form) {
  if (form) {
    clearTimeout(waiting.get(form));
    waiting.set(form, window.setTimeout(() => draftNow(form), PAUSE));
  }
}

/** Marks and keeps the line at once. One asking follows the other, so that the last one stays.
 * @param {HTMLFormElement} form */
export function draftNow(form) {
  clearTimeout(waiting.get(form));
  waiting.delete(form);
  const before = running.get(form) ?? Promise.resolve(undefined);
  const now = before.then(() => ask(form));
  running.set(form, now);
  return now;
}

/** @param {HTMLFormElement} form @returns {Promise<Told | undefined>} */
async function ask(form) {
  try {
    const reply = await fetch(form.dataset.draft ?? "", { method: "POST", body: fields(form) });
    if (reply.ok) {
      /** @type {Told} */
      const told = await reply.json();
      show(form, told);
      return told;
    }
  } catch {
    // The desk is away; what is typed stays in the page, and is sent with the next key.
  }
  return undefined;
}

/** @param {HTMLFormElement} form @param {Told} told */
function show(form, told) {
  told.marks.forEach((mark, index) => {
    const field = form.querySelector(`input[name="a${index + 1}"]`);
    const place = field?.parentElement?.querySelector("[data-mark]");
    const sign = document.getElementById(`sign-${mark}`);
    if (field instanceof HTMLInputElement && place && sign instanceof HTMLTemplateElement) {
      place.replaceChildren(...(field.value.trim() ? [sign.content.cloneNode(true)] : []));
    }
  });
  const score = form.querySelector("[data-score]");
  const fault = form.querySelector("[data-fault]");
  if (score && fault) {
    score.textContent = told.score;
    fault.textContent = told.fault;
  }
}
