// @ts-check
// What a row of rods reads: as digits, and as a number in figures.

import { count } from './rods.js';

/** @typedef {import('./rods.js').Rod} Rod */

/**
 * The counts of the rods from the left, one character each; `A` to `F` stand for 10 to 15.
 * @param {readonly Rod[]} rods
 */
export function digits(rods) {
  return rods.map((rod) => count(rod).toString(16).toUpperCase()).join('');
}

/**
 * The number on the rods in figures, grouped three by three, with `decimals` rods right of the unit
 * rod: 1,234.5. Counts above nine are carried, as they would be when the frame is read.
 * @param {readonly Rod[]} rods @param {number} decimals
 */
export function figures(rods, decimals) {
  const total = rods.reduce((sum, rod) => 10n * sum + BigInt(count(rod)), 0n);
  const text = total.toString().padStart(decimals + 1, '0');
  const whole = text.slice(0, text.length - decimals);
  const part = text.slice(text.length - decimals).replace(/0+$/, '');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return part === '' ? grouped : `${grouped}.${part}`;
}
