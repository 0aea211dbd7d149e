// @ts-check
// The keys of a rod, after the spinbutton pattern of the ARIA Authoring Practices: up and down by
// one, page up and down by five (the upper bead), home and end to the ends; digits set the rod,
// delete clears it. Left and right go to the next rod.

import { CLEAR, capacity, count, showing } from './rods.js';

/** @typedef {import('./rods.js').Kind} Kind */
/** @typedef {import('./rods.js').Rod} Rod */

/**
 * What a key makes of a rod; nothing for keys that do not change it.
 * @param {Kind} kind @param {Rod} rod @param {string} key @returns {Rod | undefined}
 */
export function changed(kind, rod, key) {
  switch (key) {
    case 'ArrowUp':
      return showing(kind, count(rod) + 1);
    case 'ArrowDown':
      return showing(kind, count(rod) - 1);
    case 'PageUp':
      return showing(kind, count(rod) + 5);
    case 'PageDown':
      return showing(kind, count(rod) - 5);
    case 'Home':
    case 'Delete':
    case 'Backspace':
      return CLEAR;
    case 'End':
      return showing(kind, capacity(kind));
    default:
      return /^[0-9]$/.test(key) ? showing(kind, Number(key)) : undefined;
  }
}

/** Which way a key leads along the rods. @param {string} key */
export function way(key) {
  return key === 'ArrowLeft' ? -1 : key === 'ArrowRight' ? 1 : 0;
}
