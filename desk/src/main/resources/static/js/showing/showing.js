// @ts-check
// A showing made ready: its layers, its schedule with the count-in before it, and what the look at
// flashes finds in it, before it runs and after.

import { analyse, USUAL_PEAK } from './flash.js';
import { picture } from './layers.js';
import { schedule } from './schedule.js';

/** @typedef {import('./figures.js').Writer} Writer */
/** @typedef {import('./flash.js').Field} Field */
/** @typedef {import('./flash.js').Picture} Picture */
/** @typedef {import('./run.js').Told} Told */

/** A count-in of so many marks, a second apart. */
export const COUNT_IN = 3;
const COUNT_PERIOD = 1000;
const COUNT_SHOWN = 600;

/** The marks of the count-in, in the writer's figures: dots, so that nobody adds them. */
export const COUNT_MARKS = Array.from({ length: COUNT_IN }, (_, i) => '\u2022'.repeat(COUNT_IN - i));

/** @param {number} hertz */
export const countIn = (hertz) =>
  schedule({ hertz, period: COUNT_PERIOD, shown: COUNT_SHOWN, count: COUNT_IN, anySize: false });

export class FlashLook {
  /** @param {{numbers: Writer, marks: Writer}} writers @param {readonly string[]} texts @param {string} ground @param {Field} field */
  constructor(writers, texts, ground, field) {
    this.field = field;
    this.blank = picture(writers.numbers, '', ground);
    /** @type {Map<string, Picture>} */
    const drawn = new Map();
    this.numbers = texts.map((text) => {
      const known = drawn.get(text) ?? picture(writers.numbers, text, ground);
      drawn.set(text, known);
      return known;
    });
    this.markBlank = picture(writers.marks, '', ground);
    this.marks = COUNT_MARKS.map((mark) => picture(writers.marks, mark, ground));
  }

  /** Looks at the numbers at these times, in milliseconds from the first one, and at the marks alone,
   * which keep to a slow pace of their own before it. @param {readonly Told[]} told */
  at(told) {
    const shown = [{ at: -COUNT_PERIOD, picture: this.blank }];
    for (const { number, on, off } of told) {
      shown.push({ at: on, picture: this.numbers[number] ?? this.blank }, { at: off, picture: this.blank });
    }
    return analyse(shown, this.field, USUAL_PEAK);
  }

  /** What was planned, as if every frame came in time. @param {import('./schedule.js').Schedule} plan */
  planned(plan) {
    const frame = 1000 / plan.hertz;
    return this.at(plan.slots.map((slot, number) => ({ number, on: slot.on * frame, off: slot.off * frame })));
  }

  /** The count-in. */
  counted() {
    const shown = [{ at: -COUNT_PERIOD, picture: this.markBlank }];
    this.marks.forEach((mark, i) => {
      shown.push({ at: i * COUNT_PERIOD, picture: mark }, { at: i * COUNT_PERIOD + COUNT_SHOWN, picture: this.markBlank });
    });
    return analyse(shown, this.field, USUAL_PEAK);
  }
}
