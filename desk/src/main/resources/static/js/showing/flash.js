// @ts-check
// Looks for flashes in a showing, with the same rules and the same figures as the server's analyser
// in tamabako.showing.safety, which says where the limits come from.

import { isSaturatedRed, luminance } from './colour.js';
import { extent } from './extent.js';

/** @typedef {{width: number, height: number, pixels: ArrayLike<number>}} Picture */
/** @typedef {{at: number, picture: Picture}} Shown */
/** @typedef {{width: number, height: number}} Field */
/** @typedef {'NO_FLASH' | 'SLOW_ENOUGH' | 'SMALL_ENOUGH' | 'ONLY_BY_THE_LETTER' | 'RED' | 'TOO_MUCH'} Verdict */
/** @typedef {{least: number, darkBelow: number}} Luminances */

/** The field where nobody knows the screen and the seats. @type {Field} */
export const UNKNOWN_FIELD = { width: 341, height: 256 };

/** From this time between onsets on, in milliseconds, the size does not matter. */
export const LEAST_PERIOD = 360;

/** The brightness of white where nobody measured it, in cd/m2. */
export const USUAL_PEAK = 500;

const SECOND = 1000;
const MOST_FLASHES = 3;
const TIRING_FLASHES = 2;
const TIRING_AFTER = 5000;
const SLACK = 1e-6;

/** @type {readonly Verdict[]} */
const SAFE = ['NO_FLASH', 'SLOW_ENOUGH', 'SMALL_ENOUGH'];

/** Whether what got this verdict may be shown. @param {Verdict} verdict */
export const isSafe = (verdict) => SAFE.includes(verdict);

/** The field of the nearest viewer: lengths in millimetres, the screen in CSS pixels.
 * @param {number} distance @param {number} screenWidth @param {number} across @param {number} down
 * @returns {Field} */
export function fieldOf(distance, screenWidth, across, down) {
  const pixels = (distance * across) / screenWidth;
  return {
    width: Math.min((pixels * 10 * Math.PI) / 180, across),
    height: Math.min((pixels * 7.5 * Math.PI) / 180, down),
  };
}

/** The tallest row, over its ink, that is safe at any pace. @param {Field} field */
export const tallestRow = (field) => Math.floor(field.height / 4);

/** The most of ascending times within a second that leaves out its end. @param {readonly number[]} times */
function mostInASecond(times) {
  let most = 0;
  let first = 0;
  times.forEach((time, last) => {
    while (time - (times[first] ?? 0) >= SECOND - SLACK) {
      first++;
    }
    most = Math.max(most, last - first + 1);
  });
  return most;
}

/** Every pixel's transitions. A change spread over several pictures is one, at its last.
 * @param {readonly Shown[]} shown @param {Luminances} luminances */
function changesOf(shown, luminances) {
  const size = shown[0]?.picture.pixels.length ?? 0;
  const changes = shown.map(() => ({ mask: new Uint8Array(size), lighter: false, darker: false, any: false }));
  const found = { changes, red: false, mostAtOnePlace: 0 };
  for (let i = 0; i < size; i++) {
    walk(i);
  }
  return found;

  /** @param {number} i */
  function walk(i) {
    let colour = shown[0]?.picture.pixels[i] ?? 0;
    let from = NaN;
    let now = NaN;
    let since = 0;
    /** @type {number[]} */
    const own = [];
    for (let k = 1; k < shown.length; k++) {
      const next = shown[k]?.picture.pixels[i] ?? 0;
      if (next === colour) {
        continue;
      }
      if (since === 0) {
        from = now = luminance(colour);
        found.red ||= isSaturatedRed(colour);
      }
      found.red ||= isSaturatedRed(next);
      const then = luminance(next);
      if (since > 0 && (then - now) * (now - from) < 0) {
        note(i, since, from, now, own);
        from = now;
      }
      now = then;
      since = k;
      colour = next;
    }
    if (since > 0) {
      note(i, since, from, now, own);
      found.mostAtOnePlace = Math.max(found.mostAtOnePlace, mostInASecond(own));
    }
  }

  /** @param {number} i @param {number} k @param {number} from @param {number} to @param {number[]} own */
  function note(i, k, from, to, own) {
    const change = changes[k];
    if (change && Math.abs(to - from) >= luminances.least && Math.min(from, to) < luminances.darkBelow) {
      change.mask[i] = 1;
      change.any = true;
      change.lighter ||= to > from;
      change.darker ||= to < from;
      own.push(shown[k]?.at ?? 0);
    }
  }
}

/** The beginnings of the flashes: the changes that go the way of the first one.
 * @param {readonly {lighter: boolean, darker: boolean}[]} changes @param {readonly Shown[]} shown */
function onsetsOf(changes, shown) {
  let shortest = Infinity;
  let last = -Infinity;
  let back = 0;
  let alternate = true;
  let way = 0;
  changes.forEach((change, k) => {
    way ||= change.lighter ? 1 : change.darker ? -1 : 0;
    if (way > 0 ? change.darker : way < 0 && change.lighter) {
      alternate = ++back <= 1 && alternate;
    }
    if (way > 0 ? change.lighter : way < 0 && change.darker) {
      const at = shown[k]?.at ?? 0;
      shortest = Math.min(shortest, at - last);
      last = at;
      back = 0;
    }
  });
  return { shortest, alternate };
}

/** @param {readonly Shown[]} shown @param {Field} field @param {Luminances} luminances */
function report(shown, field, luminances) {
  const { changes, red, mostAtOnePlace } = changesOf(shown, luminances);
  const width = shown[0]?.picture.width ?? 0;
  /** @type {number[]} */
  const transitions = [];
  let worst = { boxWidth: 0, boxHeight: 0, box: 0, ink: 0 };
  let ink = 0;
  changes.forEach((change, k) => {
    const at = shown[k]?.at ?? 0;
    transitions.push(...(change.lighter ? [at] : []), ...(change.darker ? [at] : []));
    const fills = change.any ? extent(change.mask, width, field) : { boxWidth: 0, boxHeight: 0, box: 0, ink: 0 };
    worst = fills.box > worst.box ? fills : worst;
    ink = Math.max(ink, fills.ink);
  });
  const limit = (field.width * field.height) / 4;
  const flashes = mostInASecond(transitions) / 2;
  const flashesAtOnePlace = mostAtOnePlace / 2;
  const onsets = onsetsOf(changes, shown);
  const lasts = transitions.length === 0 ? 0 : (transitions.at(-1) ?? 0) - (transitions[0] ?? 0);
  return {
    verdict: verdict(),
    flashes,
    flashesAtOnePlace,
    boxWidth: worst.boxWidth,
    boxHeight: worst.boxHeight,
    boxShare: worst.box / (field.width * field.height),
    inkShare: ink / (field.width * field.height),
    shortestPeriod: onsets.shortest,
    restAdvised: worst.box > limit && flashes >= TIRING_FLASHES && lasts > TIRING_AFTER,
  };

  /** @returns {Verdict} */
  function verdict() {
    if (red) {
      return 'RED';
    }
    if (transitions.length === 0) {
      return 'NO_FLASH';
    }
    if (onsets.alternate && onsets.shortest >= LEAST_PERIOD - SLACK) {
      return 'SLOW_ENOUGH';
    }
    if (worst.box <= limit) {
      return 'SMALL_ENOUGH';
    }
    return ink <= limit || flashes <= MOST_FLASHES || flashesAtOnePlace <= MOST_FLASHES ? 'ONLY_BY_THE_LETTER' : 'TOO_MUCH';
  }
}

/** Looks at pictures of one size in the order of their times, which are in milliseconds.
 * @param {readonly Shown[]} shown @param {Field} field @param {number} peak */
export function analyse(shown, field, peak) {
  const usual = report(shown, field, { least: 0.1, darkBelow: 0.8 });
  return usual.verdict === 'NO_FLASH' ? report(shown, field, { least: 20 / peak, darkBelow: 160 / peak }) : usual;
}
