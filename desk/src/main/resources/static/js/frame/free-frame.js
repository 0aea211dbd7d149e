// @ts-check
// The free frame: a frame that a class moves beads on as it likes.

import { Drawing } from './drawing.js';
import { listen } from './fingers.js';
import { rodX } from './layout.js';
import { figures } from './reading.js';
import { RodControls } from './rod-controls.js';
import { CLEAR, KINDS, playAll } from './rods.js';
import { bringIntoSight, roomFor } from './room.js';

/** @typedef {import('./rods.js').Rod} Rod */
/** @typedef {import('./rod-controls.js').Names & {groups: Record<string, string>, reads: string}} Words */

/** The number is told when the hand has rested this long, in milliseconds. */
const PAUSE = 500;

class FreeFrame {
  /** @param {HTMLElement} root */
  constructor(root) {
    /** @type {Words} */
    this.words = JSON.parse(root.querySelector('script[type="application/json"]')?.textContent ?? '{}');
    this.form = /** @type {HTMLFormElement} */ (root.querySelector('form'));
    this.stage = /** @type {HTMLElement} */ (root.querySelector('.frame-stage'));
    this.reading = /** @type {HTMLElement} */ (root.querySelector('.frame-reading'));
    this.status = /** @type {HTMLElement} */ (root.querySelector('[role=status]'));
    this.drawing = new Drawing(this.stage, { kind: KINDS.modern, rods: [CLEAR], unit: 0 });
    this.controls = new RodControls(this.stage, this.words, (rod, now) => this.show(this.rods.with(rod, now)));
    listen(this.stage, this.drawing, {
      play: (rod, stroke) => this.show(playAll(this.drawing.shown.kind, this.rods, rod, [stroke])),
      touch: (rod) => this.controls.focus(rod),
    });
    this.form.addEventListener('change', () => this.build());
    this.form.addEventListener('submit', (event) => event.preventDefault());
    root.querySelector('.frame-clear')?.addEventListener('click', () => this.clear());
    new ResizeObserver(() => this.draw()).observe(/** @type {Element} */ (this.stage.parentElement));
    this.build();
  }

  get rods() {
    return this.drawing.shown.rods;
  }

  /** Makes the frame that the form asks for; rods that both frames have keep their beads. */
  build() {
    const asked = new FormData(this.form);
    const name = String(asked.get('kind'));
    const kind = KINDS[name];
    const count = Math.min(Math.max(Number(asked.get('rods')) || 13, 5), 27);
    this.decimals = Math.min(Number(asked.get('decimals')), count - 1);
    const unit = count - 1 - this.decimals;
    const before = this.drawing.shown;
    const rods = Array.from({ length: count }, (_, rod) => {
      const old = before.rods[rod - unit + before.unit] ?? CLEAR;
      return { upper: Math.min(old.upper, kind.upper), lower: Math.min(old.lower, kind.lower) };
    });
    this.drawing.shown = { kind, rods, unit };
    this.stage.setAttribute('aria-label', this.words.groups[name].replace('{0}', String(count)));
    this.controls.make(kind, rods, unit);
    this.draw();
    bringIntoSight(this.stage, rodX(this.drawing.at, unit));
    this.show(rods);
  }

  draw() {
    this.drawing.draw(roomFor(this.stage));
    this.controls.place(this.drawing.at);
  }

  /** @param {Rod[]} rods */
  show(rods) {
    this.drawing.show(rods);
    this.controls.show(rods);
    this.reading.textContent = figures(rods, this.decimals ?? 0);
    clearTimeout(this.telling);
    this.telling = setTimeout(() => this.tell(), PAUSE);
  }

  tell() {
    this.status.textContent = this.words.reads.replace('{0}', figures(this.rods, this.decimals ?? 0));
  }

  /** Clears as a hand does: along the beam, rod after rod. */
  clear() {
    this.drawing.sweep();
    this.show(this.rods.map(() => CLEAR));
  }
}

for (const root of document.querySelectorAll('.free-frame')) new FreeFrame(/** @type {HTMLElement} */ (root));
