// @ts-check
// The caller's page of a room: tells the room how far a call is, so that the tablets take answers
// after its last word, and gives the count of the tablets to the tally.

import './board.js';

const stage = /** @type {HTMLElement} */ (document.querySelector('.call-stage'));
const trouble = /** @type {HTMLElement} */ (document.querySelector('.caller-trouble'));
const live = /** @type {HTMLElement} */ (document.querySelector('.live'));
const AGAIN = 1_000;

/** @type {URLSearchParams[]} */
const waiting = [];
let isSending = false;

/** Sends what was told, one after another, until the room has it. */
async function send() {
  if (isSending) return;
  isSending = true;
  while (waiting.length > 0) {
    try {
      const reply = await fetch(stage.dataset.do ?? '', { method: 'POST', body: waiting[0], redirect: 'manual' });
      trouble.hidden = reply.type === 'opaqueredirect' || reply.ok;
      trouble.textContent = trouble.hidden ? '' : (trouble.dataset.text ?? '');
      waiting.shift();
    } catch {
      await new Promise((go) => setTimeout(go, AGAIN));
    }
  }
  isSending = false;
}

document.addEventListener('call-turn', (event) => {
  const { move, problem } = /** @type {CustomEvent} */ (event).detail;
  if (move === 'begin') called = problem;
  waiting.push(new URLSearchParams({ do: move, problem: String(problem) }));
  void send();
});

/** The call that was begun last on this page, from 0. */
let called = -1;

/** So many rows were said; told where somebody reads them. @param {number} rows */
function said(rows) {
  const part = /** @type {HTMLElement} */ (live.querySelector('.caller-part'));
  if (part.dataset.captions !== 'true' || called < 0 || rows < 1) return;
  waiting.push(new URLSearchParams({ do: 'said', problem: String(called), rows: String(rows) }));
  void send();
}

document.addEventListener('call-row', (event) => said(/** @type {CustomEvent} */ (event).detail.row - 1));
document.addEventListener('call-said', (event) => said(/** @type {CustomEvent} */ (event).detail.rows));

const hands = /** @type {HTMLFormElement} */ (document.querySelector('.room-hands'));
hands.addEventListener('submit', (event) => {
  event.preventDefault();
  const field = /** @type {HTMLInputElement} */ (hands.querySelector('input'));
  const wrong = /** @type {HTMLElement} */ (hands.querySelector('[role=alert]'));
  const written = field.value.normalize('NFKC').trim();
  const isRight = /^\d{1,3}$/.test(written);
  wrong.textContent = isRight ? '' : (wrong.dataset.text ?? '');
  field.setAttribute('aria-invalid', String(!isRight));
  if (!isRight) return;
  const part = /** @type {HTMLElement} */ (live.querySelector('.caller-part'));
  waiting.push(new URLSearchParams({ do: 'hands', call: part.dataset.call ?? '0', hands: written }));
  field.value = '';
  void send();
});

/** The round was set anew: the page begins with it. */
function look() {
  const part = /** @type {HTMLElement} */ (live.querySelector('.caller-part'));
  if (part.dataset.run !== stage.dataset.run) {
    location.reload();
    return;
  }
  const notes = JSON.parse(part.dataset.notes ?? '[]').map((/** @type {number[]} */ [call, hands]) => ({ call, hands }));
  document.dispatchEvent(new CustomEvent('call-notes', { detail: notes }));
}

document.addEventListener('room-part', look);
import('../call/stage.js').then(look);
