// @ts-check
// Draws a frame as SVG and redraws what changed. It knows beads and rods, nothing of sums.

import { beadY, layout, rodX } from './layout.js';
import { count, moving, playAll } from './rods.js';
import { beadShape, shape, unitPoint, woodwork } from './shapes.js';

/** @typedef {import('./rods.js').Kind} Kind */
/** @typedef {import('./rods.js').Rod} Rod */
/** @typedef {import('./rods.js').Deck} Deck */
/** @typedef {import('./rods.js').Stroke} Stroke */
/** @typedef {import('./layout.js').Layout} Layout */
/** `unit` is the unit rod from the left, from 0. @typedef {{kind: Kind, rods: readonly Rod[], unit: number}} Shown */

/** From one rod to the next when a frame is cleared, in milliseconds. */
const SWEEP = 25;

export class Drawing {
  /** @param {Element} place where the picture goes @param {Shown} shown */
  constructor(place, shown) {
    this.place = place;
    this.shown = shown;
    /** @type {Map<string, SVGElement>} */
    this.beads = new Map();
    /** @type {Element[]} */
    this.counts = [];
    this.svg = shape('svg', { 'aria-hidden': 'true', class: 'frame-picture', focusable: 'false' });
    place.append(this.svg);
    this.at = layout(shown.kind, shown.rods.length, { width: 320, height: 320 });
  }

  /** Draws everything anew in the room there is. @param {{width: number, height: number}} room */
  draw(room) {
    const { kind, rods, unit } = this.shown;
    this.at = layout(kind, rods.length, room);
    const { width, height, foot, pitch } = this.at;
    for (const [key, value] of Object.entries({ width, height, viewBox: `0 0 ${width} ${height}` })) {
      this.svg.setAttribute(key, String(value));
    }
    const points = rods.flatMap((_, rod) =>
      (unit - rod) % 3 === 0 ? [unitPoint(this.at, rodX(this.at, rod), rod === unit)] : []);
    this.counts = rods.map((_, rod) =>
      shape('text', { class: 'rod-count', x: rodX(this.at, rod), y: height - foot * 0.22, 'font-size': Math.min(foot * 0.8, pitch * 0.6) }));
    this.svg.replaceChildren(...woodwork(this.at, (rod) => rodX(this.at, rod)), ...points, ...this.allBeads(), ...this.counts);
    this.show(rods);
  }

  /** Moves the beads to where `rods` has them. @param {readonly Rod[]} rods */
  show(rods) {
    this.shown = { ...this.shown, rods };
    rods.forEach((rod, number) => {
      for (const deck of /** @type {Deck[]} */ (['upper', 'lower'])) {
        for (let index = 0; index < this.shown.kind[deck]; index++) {
          this.put(number, deck, index, beadY(this.at, rod, deck, index));
        }
      }
      this.counts[number].textContent = count(rod).toString(16).toUpperCase();
    });
  }

  /** Lets some beads of a rod follow a finger. @param {number} rod @param {Stroke} stroke @param {number} dy */
  drag(rod, stroke, dy) {
    const held = this.shown.rods[rod];
    const [from, to] = moving(held, stroke);
    for (let index = from; index < to; index++) {
      this.put(rod, stroke.bead, index, beadY(this.at, held, stroke.bead, index) + dy);
    }
  }

  /** Marks the beads that `strokes` will move on one rod, and no others. @param {number} rod @param {readonly Stroke[]} strokes */
  mark(rod, strokes) {
    for (const bead of this.beads.values()) bead.classList.remove('moved', 'downward');
    let held = this.shown.rods[rod];
    for (const stroke of strokes) {
      const [from, to] = moving(held, stroke);
      const down = (stroke.bead === 'upper') === (stroke.direction === 'toward-beam');
      for (let index = from; index < to; index++) {
        const bead = this.beads.get(`${rod} ${stroke.bead} ${index}`);
        bead?.classList.add('moved');
        bead?.classList.toggle('downward', down);
      }
      [held] = playAll(this.shown.kind, [held], 0, [stroke]);
    }
  }

  /** Shades one rod, or none if there is no such rod. @param {number} rod */
  point(rod) {
    const bands = this.svg.querySelector('.rod-bands');
    const { pitch, height, foot } = this.at;
    const band = { class: 'rod-band', x: rodX(this.at, rod) - pitch / 2, y: 0, width: pitch, height: height - foot };
    bands?.replaceChildren(...(rod in this.counts ? [shape('rect', band)] : []));
    this.counts.forEach((text, number) => text.classList.toggle('now', number === rod));
  }

  /** Lets the next change run along the beam, rod after rod, as a finger clears a frame. */
  sweep() {
    for (const [name, bead] of this.beads) bead.style.transitionDelay = `${Number.parseInt(name, 10) * SWEEP}ms`;
    setTimeout(() => {
      for (const bead of this.beads.values()) bead.style.transitionDelay = '';
    }, (this.counts.length + 20) * SWEEP);
  }

  allBeads() {
    this.beads.clear();
    for (let rod = 0; rod < this.shown.rods.length; rod++) {
      for (const deck of /** @type {Deck[]} */ (['upper', 'lower'])) {
        for (let index = 0; index < this.shown.kind[deck]; index++) {
          this.beads.set(`${rod} ${deck} ${index}`, beadShape(this.at));
        }
      }
    }
    return this.beads.values();
  }

  /** @param {number} rod @param {Deck} deck @param {number} index @param {number} y */
  put(rod, deck, index, y) {
    const bead = this.beads.get(`${rod} ${deck} ${index}`);
    if (bead) bead.style.transform = `translate(${rodX(this.at, rod)}px, ${y}px)`;
  }
}
