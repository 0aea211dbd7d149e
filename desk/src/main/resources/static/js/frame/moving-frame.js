// @ts-check
// The drawn frame of a working: it stands where so many steps are done, or plays the motions of one.

import { Drawing } from './drawing.js';
import { rodX } from './layout.js';
import { mark, unmark } from './marks.js';
import { bringIntoSight, roomFor } from './room.js';
import { playAll } from './rods.js';
import { motions } from './run.js';

/** @typedef {import('./run.js').Run} Run */

export class MovingFrame {
  /** @param {HTMLElement} stage @param {Run} run @param {boolean} lettered */
  constructor(stage, run, lettered) {
    this.stage = stage;
    this.run = run;
    this.at = 0;
    this.drawing = new Drawing(stage, { kind: run.kind, rods: run.states[0], unit: run.unit, lettered });
    /** Motions still to come. @type {ReturnType<typeof setTimeout>[]} */
    this.later = [];
    new ResizeObserver(() => this.draw()).observe(/** @type {Element} */ (stage.parentElement));
  }

  draw() {
    this.drawing.draw(roomFor(this.stage));
    this.still();
    this.rest();
  }

  /** Goes to where `step` steps are done; one step on is played, a longer way is a jump. @param {number} step @param {number} pace */
  go(step, pace) {
    const way = step - this.at;
    this.at = step;
    if (Math.abs(way) > 1) this.still();
    this.rest();
    if (way === 1) this.move(pace);
  }

  /** Stands still where the steps so far have led, with the beads of the last one marked. */
  rest() {
    this.later.forEach(clearTimeout);
    this.later = [];
    const done = this.run.steps[this.at - 1];
    this.drawing.show(this.run.states[this.at]);
    if (done) mark(this.drawing, done.rod, this.run.states[this.at - 1], done.strokes);
    else unmark(this.drawing);
    bringIntoSight(this.stage, rodX(this.drawing.at, done ? done.rod : this.run.unit));
  }

  /** Plays the motions of the last step one after another. @param {number} pace */
  move(pace) {
    const { rod, strokes } = this.run.steps[this.at - 1];
    let rods = this.run.states[this.at - 1];
    motions(strokes).forEach((together, number) => {
      rods = playAll(this.run.kind, rods, rod, together);
      const then = rods;
      if (number === 0) this.drawing.show(then);
      else this.later.push(setTimeout(() => this.drawing.show(then), number * pace * 0.3));
    });
  }

  /** Lets the next change jump instead of slide. */
  still() {
    this.stage.classList.add('still');
    requestAnimationFrame(() => requestAnimationFrame(() => this.stage.classList.remove('still')));
  }
}
