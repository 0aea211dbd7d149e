// @ts-check
// A working as the page plays it: the steps one after another, and the frame before and after each.

import { CLEAR, KINDS, playAll } from './rods.js';

/** @typedef {import('./rods.js').Kind} Kind */
/** @typedef {import('./rods.js').Rod} Rod */
/** @typedef {import('./rods.js').Stroke} Stroke */
/** `rod` is a power of ten. @typedef {{rod: number, after: string, strokes: Stroke[]}} Step */
/**
 * What `work --json` writes, as far as the page needs it. `unit` counts from the left, from 1.
 * @typedef {{frame: string, rods: number, unit: number, setting: Step[], steps: Step[]}} Working
 */

/**
 * The whole run: `states[n]` is the frame when n steps are done; `set` steps set the operands.
 * @typedef {{kind: Kind, unit: number, set: number, steps: {rod: number, strokes: Stroke[]}[],
 *   states: Rod[][]}} Run
 */

/** Replays a working from the cleared frame. @param {Working} working @returns {Run} */
export function run(working) {
  const kind = KINDS[working.frame];
  const unit = working.unit - 1;
  const steps = [...working.setting, ...working.steps].map(({ rod, strokes }) => ({ rod: unit - rod, strokes }));
  const states = [Array.from({ length: working.rods }, () => CLEAR)];
  for (const { rod, strokes } of steps) states.push(playAll(kind, states[states.length - 1], rod, strokes));
  return { kind, unit, set: working.setting.length, steps, states };
}

/** The strokes of a step by motion: those that the hand makes together. @param {Stroke[]} strokes */
export function motions(strokes) {
  /** @type {Map<number, Stroke[]>} */
  const together = new Map();
  for (const stroke of strokes) {
    const motion = stroke.motion ?? 1;
    together.set(motion, [...(together.get(motion) ?? []), stroke]);
  }
  return [...together.values()];
}
