// @ts-check
// Marks on a drawn frame: the rod that is worked on, and the beads that have just moved, by an
// outline and an arrow, so that colour is not needed to see them.

import { rodX } from './layout.js';
import { moving, playAll } from './rods.js';
import { shape } from './shapes.js';

/** @typedef {import('./drawing.js').Drawing} Drawing */
/** @typedef {import('./rods.js').Rod} Rod */
/** @typedef {import('./rods.js').Stroke} Stroke */

/** Takes all marks off. @param {Drawing} drawing */
export function unmark(drawing) {
  drawing.svg.querySelector('.rod-bands')?.replaceChildren();
  for (const bead of drawing.beads.values()) bead.classList.remove('moved', 'downward');
  for (const text of drawing.counts) text.classList.remove('now');
}

/**
 * Marks one rod and the beads that `strokes` move on it, beginning with `before`.
 * @param {Drawing} drawing @param {number} rod @param {readonly Rod[]} before @param {readonly Stroke[]} strokes
 */
export function mark(drawing, rod, before, strokes) {
  unmark(drawing);
  const { pitch, top, bottom } = drawing.at;
  const band = { class: 'rod-band', x: rodX(drawing.at, rod) - pitch / 2, y: top, width: pitch, height: bottom - top };
  drawing.svg.querySelector('.rod-bands')?.replaceChildren(shape('rect', band));
  drawing.counts[rod].classList.add('now');
  let rods = before;
  for (const stroke of strokes) {
    const [from, to] = moving(rods[rod], stroke);
    const down = (stroke.bead === 'upper') === (stroke.direction === 'toward-beam');
    for (let index = from; index < to; index++) {
      const bead = drawing.beads.get(`${rod} ${stroke.bead} ${index}`);
      bead?.classList.add('moved');
      bead?.classList.toggle('downward', down);
    }
    rods = playAll(drawing.shown.kind, rods, rod, [stroke]);
  }
}
