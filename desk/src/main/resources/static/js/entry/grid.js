// @ts-check
// One line a pupil, with the keyboard only: Enter goes on to the next field, and after the last one
// keeps the line and goes on to the next pupil; up and down go to the pupil before and after.

import { draftLater, draftNow, fields } from "./drafts.js";

const lines = document.querySelector("[data-lines]");

lines?.addEventListener("input", (event) => draftLater(line(event)));
lines?.addEventListener("keydown", (event) => {
  if (event instanceof KeyboardEvent && event.target instanceof HTMLInputElement && !event.isComposing) {
    press(event, event.target);
  }
});
lines?.addEventListener("submit", (event) => {
  event.preventDefault();
  const form = line(event);
  if (form) {
    keep(form);
  }
});

const asked = document.getElementById(location.hash.slice(1));
firstOpen(asked?.matches(".line") ? asked : (lines?.firstElementChild ?? null));

/** @param {Event} event @returns {HTMLFormElement | null} */
function line(event) {
  return event.target instanceof Element ? event.target.closest("form") : null;
}

/** @param {HTMLFormElement} form @returns {HTMLInputElement[]} */
function typed(form) {
  return [...form.querySelectorAll("input")].filter((field) => field.type !== "hidden");
}

/** @param {KeyboardEvent} event @param {HTMLInputElement} field */
function press(event, field) {
  const form = field.form;
  const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  if (!form) {
    return;
  }
  if (step) {
    const all = [...document.querySelectorAll("[data-lines] form")];
    const beside = all[all.indexOf(form) + step];
    const same = beside?.querySelector(`input[name="${field.name}"]`);
    if (same instanceof HTMLInputElement) {
      event.preventDefault();
      go(same);
    }
  } else if (event.key === "Enter") {
    event.preventDefault();
    const all = typed(form);
    const next = all[all.indexOf(field) + 1];
    if (next) {
      draftNow(form);
      go(next);
    } else {
      keep(form);
    }
  }
}

/** @param {HTMLInputElement} field */
function go(field) {
  field.focus();
  field.select();
}

/** Goes to the first blank field of the first open line from there on.
 * @param {Element | null} from */
function firstOpen(from) {
  for (let item = from; item; item = item.nextElementSibling) {
    const form = item.querySelector("form");
    if (form) {
      const all = typed(form);
      go(all.find((field) => field.value === "") ?? all[0]);
      return true;
    }
  }
  return false;
}

/** Keeps the line of a pupil, shows it as it was kept, and goes on.
 * @param {HTMLFormElement} form */
async function keep(form) {
  const item = form.closest("li.line");
  const told = await draftNow(form);
  if (told?.refused) {
    fault(form, told.refused);
    return;
  }
  try {
    const reply = await fetch(form.action, { method: "POST", body: fields(form) });
    const page = new DOMParser().parseFromString(await reply.text(), "text/html");
    const fresh = page.getElementById(item?.id ?? "");
    if (!reply.ok || !item || !fresh) {
      throw new Error("No such line.");
    }
    item.replaceChildren(...fresh.childNodes);
    say(item.querySelector("[data-said]")?.textContent ?? "");
    if (!firstOpen(item.nextElementSibling) && !firstOpen(lines?.firstElementChild ?? null)) {
      item.querySelector("a")?.focus();
    }
  } catch {
    fault(form, lines instanceof HTMLElement ? (lines.dataset.lost ?? "") : "");
  }
}

/** @param {HTMLFormElement} form @param {string} words why it could not be kept */
function fault(form, words) {
  const place = form.querySelector("[data-fault]");
  if (place) {
    place.textContent = words;
  }
  say(words);
}

/** @param {string} words */
function say(words) {
  const status = document.getElementById("entry-status");
  if (status) {
    status.textContent = words.replace(/\s+/g, " ").trim();
  }
}
