// @ts-check
// The teacher's and the projector's page: fetches its part again whenever something changed. What
// somebody has open or is typing in stays as it is.

import { Clock } from './clock.js';
import { listen } from './live.js';

const live = /** @type {HTMLElement} */ (document.querySelector('.live'));
const lost = /** @type {HTMLElement} */ (document.querySelector('.live-lost'));
/** @type {Clock | undefined} */
let clock;
let fetching = false;
let again = false;
/** Whether something in the part is being pressed: it must still be there when the finger comes up. */
let isPressed = false;

function startClock() {
  const place = /** @type {HTMLElement | null} */ (live.querySelector('.clock'));
  if (!place) return;
  if (clock) clock.place = place;
  else clock = new Clock(place);
  clock.set(Number(place.dataset.left), place.dataset.running === 'true');
}

/** The room is closed. Where that was done on this page, its form goes on by itself to the same place. */
function leave() {
  if (live.dataset.closed) location.assign(live.dataset.closed);
  else location.reload();
}

/** Whether somebody types in the part, or numbers are shown over it. */
function isBusy() {
  if (isPressed || document.body.classList.contains('on-stage')) return true;
  const at = document.activeElement;
  return (at instanceof HTMLInputElement || at instanceof HTMLSelectElement) && live.contains(at);
}

export async function refresh() {
  if (fetching || isBusy()) {
    again = true;
    return;
  }
  fetching = true;
  again = false;
  try {
    const answer = await fetch(live.dataset.part ?? '', { cache: 'no-store' });
    if (answer.ok && isBusy()) again = true;
    else if (answer.ok) show(await answer.text());
    else if (answer.status === 404) leave();
  } catch {
    // The stream comes back and says so.
  }
  fetching = false;
  if (again) setTimeout(refresh, 100);
}

/** What somebody typed or chose and did not send yet. @param {Element} field */
function changedValue(field) {
  const isChanged =
    field instanceof HTMLSelectElement
      ? ![...field.selectedOptions].every((option) => option.defaultSelected)
      : field instanceof HTMLInputElement && field.value !== field.defaultValue;
  return isChanged ? { id: field.id, value: /** @type {HTMLInputElement} */ (field).value } : undefined;
}

/** @param {string} part made by the desk, names and all written safely */
function show(part) {
  const focus = document.activeElement?.id ?? '';
  const changed = [...live.querySelectorAll('input[id], select[id]')].map(changedValue);
  const open = [...live.querySelectorAll('details[open]')].map(({ id }) => id);
  live.innerHTML = part;
  for (const id of open) document.getElementById(id)?.setAttribute('open', '');
  for (const one of changed) {
    const field = one && /** @type {HTMLInputElement | null} */ (document.getElementById(one.id));
    if (field) field.value = one.value;
  }
  if (focus) document.getElementById(focus)?.focus({ preventScroll: true });
  startClock();
  document.dispatchEvent(new CustomEvent('room-part'));
}

live.addEventListener('pointerdown', () => (isPressed = true));
for (const end of ['pointerup', 'pointercancel']) {
  addEventListener(end, () => {
    isPressed = false;
    setTimeout(() => again && refresh(), 50);
  });
}
live.addEventListener('focusout', () => setTimeout(() => again && refresh(), 50));
startClock();
listen(live.dataset.stream ?? '', { look: refresh }, (isThere) => {
  lost.hidden = isThere;
});
