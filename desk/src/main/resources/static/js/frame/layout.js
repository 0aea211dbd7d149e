// @ts-check
// Where everything on a drawn frame is, in CSS pixels. Every deck has one place more than it has
// beads: the gap that the beads move through.

/** @typedef {import('./rods.js').Kind} Kind */
/** @typedef {import('./rods.js').Rod} Rod */
/** @typedef {import('./rods.js').Deck} Deck */
/**
 * From the top: the letters of the rods, if any, to `top`; the wood to `bottom`; the counts.
 * @typedef {{kind: Kind, rods: number, pitch: number, bead: number, rail: number, beam: number,
 *   top: number, beamTop: number, bottom: number, width: number, height: number}} Layout
 */

/** The least bead that a finger can hit (WCAG 2.2, 2.5.8). */
const LEAST_TARGET = 24;
/** Beads are about two thirds as tall as wide. */
const SHAPE = 0.66;
const LARGEST_PITCH = 104;

/**
 * Lays out a frame in the room there is. Rods never come closer than a finger's width, so a long
 * frame may be wider than `room.width`.
 * @param {Kind} kind @param {number} rods @param {{width: number, height: number}} room
 * @param {boolean} lettered whether the rods are lettered
 * @returns {Layout}
 */
export function layout(kind, rods, room, lettered) {
  const places = kind.upper + kind.lower + 2;
  const byWidth = room.width / (rods + 0.5);
  const byHeight = room.height / (places * SHAPE + (lettered ? 1.9 : 1.4));
  const pitch = Math.max(LEAST_TARGET, Math.min(byWidth, byHeight, LARGEST_PITCH));
  const bead = Math.max(LEAST_TARGET, pitch * SHAPE);
  const rail = Math.max(8, pitch * 0.25);
  const beam = Math.max(9, pitch * 0.26);
  const top = lettered ? Math.max(18, pitch * 0.5) : 0;
  const beamTop = top + rail + (kind.upper + 1) * bead;
  const bottom = beamTop + beam + (kind.lower + 1) * bead + rail;
  const height = bottom + Math.max(20, pitch * 0.66);
  return { kind, rods, pitch, bead, rail, beam, top, beamTop, bottom, width: pitch * (rods + 0.5), height };
}

/** The middle of a rod; rods are counted from the left, from 0. @param {Layout} at @param {number} rod */
export function rodX(at, rod) {
  return at.pitch * (rod + 0.75);
}

/**
 * The middle of a bead; beads are counted from the beam, from 0.
 * @param {Layout} at @param {Rod} rod @param {Deck} deck @param {number} index
 */
export function beadY(at, rod, deck, index) {
  const place = index < rod[deck] ? index : index + 1;
  return deck === 'upper'
    ? at.beamTop - (place + 0.5) * at.bead
    : at.beamTop + at.beam + (place + 0.5) * at.bead;
}

/**
 * The bead at height `y` of a rod, or the nearest one where the gap or the beam is.
 * @param {Layout} at @param {Rod} rod @param {number} y @returns {{deck: Deck, index: number}}
 */
export function beadAt(at, rod, y) {
  const deck = y < at.beamTop + at.beam / 2 ? 'upper' : 'lower';
  let nearest = 0;
  for (let index = 1; index < at.kind[deck]; index++) {
    const closer = Math.abs(beadY(at, rod, deck, index) - y);
    if (closer < Math.abs(beadY(at, rod, deck, nearest) - y)) nearest = index;
  }
  return { deck, index: nearest };
}
