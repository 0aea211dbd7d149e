// @ts-check
// The beads of a frame, without any page: what a rod holds, and what a stroke does to it. It knows
// beads, not techniques. The same strokes give the same rods as the frame of the program; both read
// the same list of cases.

/** How many beads a rod has above and below the beam. @typedef {{upper: number, lower: number}} Kind */
/** The beads of one rod that touch the beam. @typedef {{upper: number, lower: number}} Rod */
/** @typedef {'upper' | 'lower'} Deck */
/** @typedef {'toward-beam' | 'away-from-beam'} Direction */
/**
 * One push of one finger.
 * @typedef {{bead: Deck, beads: number, direction: Direction, finger?: string, motion?: number}} Stroke
 */
/** @typedef {'no-bead-left-to-bring' | 'no-bead-at-the-beam'} Refusal */
/** @typedef {{rod: Rod} | {refused: Refusal}} Played */

/** The frame kinds by name. @type {Readonly<Record<string, Kind>>} */
export const KINDS = Object.freeze({
  modern: { upper: 1, lower: 4 },
  older: { upper: 1, lower: 5 },
  suanpan: { upper: 2, lower: 5 },
});

/** A rod at zero. @type {Rod} */
export const CLEAR = Object.freeze({ upper: 0, lower: 0 });

/** What a rod counts. @param {Rod} rod */
export function count(rod) {
  return 5 * rod.upper + rod.lower;
}

/** The most that a rod of this kind can show. @param {Kind} kind */
export function capacity(kind) {
  return count(kind);
}

/**
 * A rod that shows `number`, with as many upper beads as fit; numbers out of range go to the ends.
 * @param {Kind} kind @param {number} number @returns {Rod}
 */
export function showing(kind, number) {
  const within = Math.min(Math.max(number, 0), capacity(kind));
  const upper = Math.min(Math.floor(within / 5), kind.upper);
  return { upper, lower: within - 5 * upper };
}

/**
 * What comes of a stroke on `rod`: the rod afterwards, or why the beads cannot move so.
 * @param {Kind} kind @param {Rod} rod @param {Stroke} stroke @returns {Played}
 */
export function play(kind, rod, stroke) {
  const sign = stroke.direction === 'toward-beam' ? 1 : -1;
  const held = rod[stroke.bead] + sign * stroke.beads;
  if (held < 0) return { refused: 'no-bead-at-the-beam' };
  if (held > kind[stroke.bead]) return { refused: 'no-bead-left-to-bring' };
  return { rod: { ...rod, [stroke.bead]: held } };
}

/**
 * The stroke that a tap on one bead means: the bead goes to the other side of the gap, and the
 * beads between go with it. Beads are counted from the beam, from 0.
 * @param {Rod} rod @param {Deck} bead @param {number} index @returns {Stroke}
 */
export function tapped(rod, bead, index) {
  const held = rod[bead];
  return index < held
    ? { bead, beads: held - index, direction: 'away-from-beam' }
    : { bead, beads: index - held + 1, direction: 'toward-beam' };
}

/**
 * Which beads `stroke` moves, counted from the beam: from the first up to, not including, the last.
 * @param {Rod} rod @param {Stroke} stroke @returns {[number, number]}
 */
export function moving(rod, stroke) {
  const held = rod[stroke.bead];
  return stroke.direction === 'toward-beam'
    ? [held, held + stroke.beads]
    : [held - stroke.beads, held];
}

/**
 * `rods` with the strokes played on one of them; strokes that cannot be are left out.
 * @param {Kind} kind @param {readonly Rod[]} rods @param {number} at @param {readonly Stroke[]} strokes
 */
export function playAll(kind, rods, at, strokes) {
  let rod = rods[at];
  for (const stroke of strokes) {
    const played = play(kind, rod, stroke);
    if ('rod' in played) rod = played.rod;
  }
  return rods.with(at, rod);
}
