// @ts-check
// Fingers (or a mouse) on the beads: a tap sends a bead to the other side of its gap, a drag takes
// it along. Beads move when the finger lifts; a finger that leaves the rod first moves nothing.
// Several fingers work at once, as thumb and forefinger do.

import { beadAt } from './layout.js';
import { tapped } from './rods.js';

/** @typedef {import('./drawing.js').Drawing} Drawing */
/** @typedef {import('./rods.js').Stroke} Stroke */
/** @typedef {{rod: number, stroke: Stroke, bead: string, x: number, y: number, dragged: boolean}} Press */

/** A finger that moves less than this is a tap. */
const STILL = 6;

/**
 * Lets fingers move the beads of `drawing`.
 * @param {HTMLElement} stage the element that the picture fills
 * @param {Drawing} drawing
 * @param {{play: (rod: number, stroke: Stroke) => void, touch: (rod: number) => void}} hand
 */
export function listen(stage, drawing, hand) {
  /** @type {Map<number, Press>} */
  const presses = new Map();

  /** @param {PointerEvent} event */
  function spot(event) {
    const box = stage.getBoundingClientRect();
    const x = event.clientX - box.left;
    const y = event.clientY - box.top;
    const rod = Math.floor(x / drawing.at.pitch - 0.25);
    const inside = rod >= 0 && rod < drawing.at.rods && y >= drawing.at.top && y <= drawing.at.bottom;
    return { x, y, rod: inside ? rod : -1 };
  }

  /** @param {number} rod @param {number} y */
  function under(rod, y) {
    const { deck, index } = beadAt(drawing.at, drawing.shown.rods[rod], y);
    return { bead: `${deck} ${index}`, stroke: tapped(drawing.shown.rods[rod], deck, index) };
  }

  /** How far a dragged bead has come, from nothing to its whole way. @param {Press} press @param {number} y */
  function way(press, y) {
    const down = (press.stroke.bead === 'upper') === (press.stroke.direction === 'toward-beam');
    const far = down ? y - press.y : press.y - y;
    return Math.min(Math.max(far, 0), drawing.at.bead) * (down ? 1 : -1);
  }

  stage.addEventListener('pointerdown', (event) => {
    const { x, y, rod } = spot(event);
    if (rod < 0 || event.button !== 0) return;
    event.preventDefault();
    stage.setPointerCapture(event.pointerId);
    hand.touch(rod);
    presses.set(event.pointerId, { rod, x, y, dragged: false, ...under(rod, y) });
  });

  stage.addEventListener('pointermove', (event) => {
    const press = presses.get(event.pointerId);
    if (!press) return;
    const { x, y } = spot(event);
    press.dragged ||= Math.hypot(x - press.x, y - press.y) > STILL;
    if (press.dragged) drawing.drag(press.rod, press.stroke, way(press, y));
  });

  stage.addEventListener('pointerup', (event) => {
    const press = presses.get(event.pointerId);
    if (!press) return;
    presses.delete(event.pointerId);
    const { y, rod } = spot(event);
    const far = press.dragged ? Math.abs(way(press, y)) > drawing.at.bead * 0.4 : true;
    if (rod === press.rod && far) hand.play(press.rod, press.stroke);
    else drawing.show(drawing.shown.rods);
  });

  stage.addEventListener('pointercancel', (event) => {
    presses.delete(event.pointerId);
    drawing.show(drawing.shown.rods);
  });
}
