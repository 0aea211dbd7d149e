// @ts-check
// Plays a working on the drawn frame, step by step, and says each step. The steps are in the page
// already; this only moves the beads and shows which step is meant.

import { Drawing } from './drawing.js';
import { rodX } from './layout.js';
import { mark, unmark } from './marks.js';
import { Notes } from './notes.js';
import { takeKeys } from './player-keys.js';
import { bringIntoSight, roomFor } from './room.js';
import { playAll } from './rods.js';
import { motions, run } from './run.js';

class Player {
  /** @param {HTMLElement} root */
  constructor(root) {
    this.run = run(JSON.parse(root.querySelector('script[type="application/json"]')?.textContent ?? '{}'));
    this.notes = new Notes(root);
    root.classList.add('scripted');
    this.stage = /** @type {HTMLElement} */ (root.querySelector('.frame-stage'));
    this.speed = /** @type {HTMLSelectElement} */ (root.querySelector('[name=speed]'));
    this.setting = /** @type {HTMLInputElement} */ (root.querySelector('[name=setting]'));
    this.drawing = new Drawing(this.stage, { kind: this.run.kind, rods: this.run.states[0], unit: this.run.unit, lettered: !root.matches('.of-column') });
    this.at = 0;
    /** @type {ReturnType<typeof setTimeout>[]} */
    this.later = [];
    /** @type {Record<string, () => void>} */
    this.acts = {
      start: () => this.jump(this.first),
      back: () => this.jump(this.at - 1),
      play: () => (this.notes.playing ? this.pause() : this.play()),
      step: () => this.jump(this.at + 1),
      end: () => this.jump(this.last),
      full: () => void (document.fullscreenElement ? document.exitFullscreen() : root.requestFullscreen()),
    };
    this.listen(root);
    new ResizeObserver(() => this.draw()).observe(/** @type {Element} */ (this.stage.parentElement));
    const { linked } = this.notes;
    this.go(linked ?? this.first);
    // The browser goes to the linked step in the list; the frame is what people came to see.
    if (linked) {
      addEventListener('load', () => {
        root.scrollIntoView();
        this.notes.show(this.at, this.first, this.last);
      });
    }
  }

  get first() {
    return this.setting.checked ? 0 : this.run.set;
  }

  get last() {
    return this.run.steps.length;
  }

  /** @param {HTMLElement} root */
  listen(root) {
    takeKeys(root, this.acts);
    root.addEventListener('click', (event) => {
      const target = /** @type {Element} */ (event.target);
      const act = target.closest('[data-act]')?.getAttribute('data-act');
      const step = this.notes.stepOf(target);
      if (act) this.acts[act]();
      if (step === undefined) return;
      // The address names the step, but the page stays where it is.
      event.preventDefault();
      history.replaceState(null, '', `#step-${step}`);
      this.jump(step);
    });
    this.setting.addEventListener('change', () => this.jump(Math.max(this.at, this.first)));
    this.speed.addEventListener('change', () => this.notes.playing && this.play());
  }

  draw() {
    this.drawing.draw(roomFor(this.stage));
    this.still();
    this.show(this.at);
  }

  play() {
    this.notes.play(true);
    this.go(this.at < this.last ? this.at + 1 : this.first);
    this.later.push(setTimeout(() => (this.at < this.last ? this.play() : this.pause()), this.pace));
  }

  get pace() {
    return Number(this.speed.value);
  }

  pause() {
    this.notes.play(false);
    this.stop();
  }

  /** Goes to where `step` steps are done, and stays there. @param {number} step */
  jump(step) {
    this.pause();
    this.go(step);
  }

  /** @param {number} step */
  go(step) {
    this.stop();
    const to = Math.min(Math.max(step, this.first), this.last);
    if (Math.abs(to - this.at) > 1) this.still();
    const forward = to === this.at + 1;
    this.at = to;
    this.show(to);
    this.notes.show(to, this.first, this.last);
    if (forward) this.move(to);
  }

  /** Shows the frame after so many steps, with the beads of the last one marked. @param {number} step */
  show(step) {
    const done = this.run.steps[step - 1];
    this.drawing.show(this.run.states[step]);
    if (done) mark(this.drawing, done.rod, this.run.states[step - 1], done.strokes);
    else unmark(this.drawing);
    bringIntoSight(this.stage, rodX(this.drawing.at, done ? done.rod : this.run.unit));
  }

  /** Plays the motions of a step one after another. @param {number} step */
  move(step) {
    const { rod, strokes } = this.run.steps[step - 1];
    let rods = this.run.states[step - 1];
    motions(strokes).forEach((together, number) => {
      rods = playAll(this.run.kind, rods, rod, together);
      const then = rods;
      if (number === 0) this.drawing.show(then);
      else this.later.push(setTimeout(() => this.drawing.show(then), number * this.pace * 0.3));
    });
  }

  /** Lets the next change jump instead of slide. */
  still() {
    this.stage.classList.add('still');
    requestAnimationFrame(() => requestAnimationFrame(() => this.stage.classList.remove('still')));
  }

  stop() {
    this.later.forEach(clearTimeout);
    this.later = [];
  }
}

for (const root of document.querySelectorAll('.player')) new Player(/** @type {HTMLElement} */ (root));
