// @ts-check
// Draws a frame as SVG and redraws what changed. It knows beads and rods, nothing of sums.

import { beadY, layout, rodX } from './layout.js';
import { count, moving } from './rods.js';
import { beadShape, lettering, shape, unitPoint, woodwork } from './shapes.js';

/** @typedef {import('./rods.js').Kind} Kind */
/** @typedef {import('./rods.js').Rod} Rod */
/** @typedef {import('./rods.js').Deck} Deck */
/** @typedef {import('./rods.js').Stroke} Stroke */
/**
 * `unit` is the unit rod from the left, from 0; `lettered` frames have letters over their rods.
 * @typedef {{kind: Kind, rods: readonly Rod[], unit: number, lettered?: boolean}} Shown
 */

/** From one rod to the next when a frame is cleared, in milliseconds. */
const SWEEP = 25;

export class Drawing {
  /** @param {Element} place where the picture goes @param {Shown} shown */
  constructor(place, shown) {
    this.shown = shown;
    /** Every bead by its rod, deck and number from the beam. @type {Map<string, SVGElement>} */
    this.beads = new Map();
    /** @type {Element[]} */
    this.counts = [];
    this.svg = shape('svg', { 'aria-hidden': 'true', class: 'frame-picture', focusable: 'false' });
    place.append(this.svg);
    const room = { width: 320, height: 320 };
    this.at = layout(shown.kind, shown.rods.length, room, false);
    this.draw(room);
  }

  /** Draws everything anew in the room there is. @param {{width: number, height: number}} room */
  draw(room) {
    const { kind, rods, unit, lettered } = this.shown;
    this.at = layout(kind, rods.length, room, lettered ?? false);
    const { at } = this;
    for (const [key, value] of Object.entries({ width: at.width, height: at.height, viewBox: `0 0 ${at.width} ${at.height}` })) {
      this.svg.setAttribute(key, String(value));
    }
    const size = Math.min((at.height - at.bottom) * 0.85, at.pitch * 0.62);
    const middles = rods.map((_, rod) => rodX(at, rod));
    this.counts = middles.map((x) => lettering('rod-count', x, at.bottom + size, size, ''));
    const letters = !lettered ? [] : middles.map((x, rod) =>
      lettering(rod === unit ? 'rod-letter unit' : 'rod-letter', x, at.top * 0.78, at.top * 0.66, rod < 26 ? String.fromCharCode(65 + rod) : String(rod + 1)));
    const points = middles.flatMap((x, rod) => ((unit - rod) % 3 === 0 ? [unitPoint(at, x, rod === unit)] : []));
    this.beads.clear();
    this.each((name) => this.beads.set(name, beadShape(at)));
    this.svg.replaceChildren(...woodwork(at, (rod) => middles[rod]), ...points, ...this.beads.values(), ...letters, ...this.counts);
    this.show(rods);
  }

  /** Moves the beads to where `rods` has them. @param {readonly Rod[]} rods */
  show(rods) {
    this.shown = { ...this.shown, rods };
    this.each((name, rod, deck, index) => this.put(name, rod, beadY(this.at, rods[rod], deck, index)));
    rods.forEach((rod, number) => (this.counts[number].textContent = count(rod).toString(16).toUpperCase()));
  }

  /** Lets some beads of a rod follow a finger. @param {number} rod @param {Stroke} stroke @param {number} dy */
  drag(rod, stroke, dy) {
    const held = this.shown.rods[rod];
    const [from, to] = moving(held, stroke);
    for (let index = from; index < to; index++) {
      this.put(`${rod} ${stroke.bead} ${index}`, rod, beadY(this.at, held, stroke.bead, index) + dy);
    }
  }

  /** Lets the next change run along the beam, rod after rod, as a finger clears a frame. */
  sweep() {
    for (const [name, bead] of this.beads) bead.style.transitionDelay = `${Number.parseInt(name, 10) * SWEEP}ms`;
    setTimeout(() => {
      for (const bead of this.beads.values()) bead.style.transitionDelay = '';
    }, (this.counts.length + 20) * SWEEP);
  }

  /** @param {(name: string, rod: number, deck: Deck, index: number) => void} act */
  each(act) {
    for (let rod = 0; rod < this.shown.rods.length; rod++) {
      for (const deck of /** @type {Deck[]} */ (['upper', 'lower'])) {
        for (let index = 0; index < this.shown.kind[deck]; index++) act(`${rod} ${deck} ${index}`, rod, deck, index);
      }
    }
  }

  /** @param {string} name @param {number} rod @param {number} y */
  put(name, rod, y) {
    const bead = this.beads.get(name);
    if (bead) bead.style.transform = `translate(${rodX(this.at, rod)}px, ${y}px)`;
  }
}
