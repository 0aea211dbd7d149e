// @ts-check
// What a screen does by itself: how often it is drawn, and how evenly.

/** @typedef {{hertz: number, steady: boolean, slow: boolean}} Refresh */

/** At least so many gaps make a measurement. */
export const GAPS = 64;

/** @param {readonly number[]} sorted @param {number} part */
const at = (sorted, part) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? NaN;

/** Refresh rates that screens have; a measured rate within a hundredth of one is that one. */
const KNOWN = [24, 25, 30, 48, 50, 60, 72, 75, 85, 90, 100, 120, 144, 165, 240];

/** Reads the gaps between frames, in milliseconds. A screen is unsteady where one gap in twenty is
 * longer than a frame and a half, and slow at 40 a second or less, as when it saves power.
 * @param {readonly number[]} gaps @returns {Refresh} */
export function refreshOf(gaps) {
  const sorted = [...gaps].sort((a, b) => a - b);
  const median = at(sorted, 0.5);
  const middle = sorted.filter((gap) => gap > median * 0.75 && gap < median * 1.25);
  const mean = middle.reduce((sum, gap) => sum + gap, 0) / middle.length;
  const measured = 1000 / mean;
  const near = KNOWN.find((hertz) => Math.abs(hertz - measured) < hertz / 100);
  return { hertz: near ?? measured, steady: at(sorted, 0.95) <= 1.5 * median, slow: measured <= 40 };
}

/** Measures this screen. @returns {Promise<Refresh>} */
export function measureRefresh() {
  return new Promise((tell) => {
    /** @type {number[]} */
    const gaps = [];
    let before = NaN;
    /** @param {number} now */
    const frame = (now) => {
      if (!Number.isNaN(before) && now > before) {
        gaps.push(now - before);
      }
      before = now;
      if (gaps.length < GAPS) {
        requestAnimationFrame(frame);
      } else {
        tell(refreshOf(gaps));
      }
    };
    requestAnimationFrame(frame);
  });
}
