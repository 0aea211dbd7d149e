// @ts-check
// The projector's page: where the teacher begins a showing for the projector, it runs here, and the
// room is told whether every number was shown as it was to be.

import { perform } from '../showing/perform.js';
import { refresh } from './board.js';
import { known, note } from './once.js';

const stage = /** @type {HTMLElement} */ (document.getElementById('stage'));
const told = /** @type {HTMLElement} */ (document.querySelector('.turn-note'));
let isOn = false;

/** @param {'open' | 'spoil'} move @param {number} problem */
async function tell(move, problem) {
  const body = new URLSearchParams({ do: move, problem: String(problem) });
  await fetch(stage.dataset.do ?? '', { method: 'POST', body, redirect: 'manual' });
}

async function look() {
  const part = /** @type {HTMLElement | null} */ (document.querySelector('.turn[data-board=true]'));
  if (!part || isOn || part.dataset.step !== 'under-way' && part.dataset.step !== 'revealed') return;
  const turn = { run: Number(part.dataset.run), problem: Number(part.dataset.problem), times: Number(part.dataset.times) };
  const room = stage.dataset.do ?? '';
  const before = known(room, turn);
  // An answer that is known may be shown again, but a page that comes to it late shows nothing.
  if (before === 'exact' || before === 'spoiled' || (part.dataset.step === 'revealed' && turn.times === 1)) return;
  isOn = true;
  try {
    if (before === 'begun') {
      note(room, turn, 'spoiled');
      await tell('spoil', turn.problem);
    } else {
      await show(room, turn);
    }
  } catch {
    told.textContent = told.dataset.spoiled ?? '';
  }
  isOn = false;
  void refresh();
}

/** @param {string} room @param {{run: number, problem: number, times: number}} turn */
async function show(room, turn) {
  const reply = await fetch(stage.dataset.showing ?? '', { cache: 'no-store' });
  if (!reply.ok) return;
  const asked = await reply.json();
  note(room, turn, 'begun');
  told.textContent = '';
  const done = await perform(stage, { ...asked, screenWidth: asked.screenWidth || NaN, nearest: asked.nearest || NaN }, () => {});
  note(room, turn, done.exact ? 'exact' : 'spoiled');
  told.textContent = done.exact ? '' : (told.dataset[done.broken === 'unsafe' ? 'unsafe' : 'spoiled'] ?? '');
  await tell(done.exact ? 'open' : 'spoil', turn.problem);
}

document.addEventListener('room-part', () => void look());
void look();
