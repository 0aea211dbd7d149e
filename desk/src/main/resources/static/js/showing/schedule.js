// @ts-check
// At which frame of a screen each number comes and goes. Frames are counted from the first number.

import { LEAST_PERIOD } from './flash.js';

/** @typedef {{on: number, off: number}} Slot the first frame of a number, and the first one without it */
/** @typedef {{hertz: number, period: number, slots: readonly Slot[], frames: number}} Schedule */

/** The fewest frames that last as long as numbers of any size need. @param {number} hertz */
export const leastFrames = (hertz) => Math.ceil((LEAST_PERIOD * hertz) / 1000 - 1e-9);

/** Each number comes at the frame nearest to its time, counted from the start and never from the
 * number before, so that nothing drifts. Numbers of any size come a whole number of frames apart,
 * rounded up, as no pair of them may be closer than the least period.
 * @param {{hertz: number, period: number, shown: number, count: number, anySize: boolean}} asked
 *   `period` from onset to onset and `shown` how long each number stays, in milliseconds
 * @returns {Schedule} */
export function schedule({ hertz, period, shown, count, anySize }) {
  const frame = 1000 / hertz;
  const wholeFrames = Math.max(leastFrames(hertz), Math.ceil(period / frame - 1e-9));
  const step = anySize ? wholeFrames : period / frame;
  const stays = Math.max(1, Math.round(Math.min(shown / frame, step - 1)));
  const slots = Array.from({ length: count }, (_, k) => {
    const on = Math.round(k * step);
    return { on, off: Math.min(on + stays, Math.round((k + 1) * step)) };
  });
  return { hertz, period: step * frame, slots, frames: slots.at(-1)?.off ?? 0 };
}
