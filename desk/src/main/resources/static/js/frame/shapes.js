// @ts-check
// The outlines of a frame's parts as SVG elements. A bead is two cones, base to base, seen from the
// side; light falls from above.

/** @typedef {import('./layout.js').Layout} Layout */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * An SVG element with attributes.
 * @param {string} name @param {Record<string, string | number>} attributes @param {Element[]} inside
 */
export function shape(name, attributes, inside = []) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.append(...inside);
  return made;
}

/**
 * One bead around its middle, with a mark (an outline and an arrow) that shows when it has moved.
 * @param {Layout} at
 */
export function beadShape(at) {
  const wide = at.pitch / 2 - Math.max(1, at.pitch * 0.03);
  const high = at.bead / 2 - Math.max(0.7, at.bead * 0.025);
  const flat = wide * 0.4;
  const edge = high * 0.1;
  const upper =
    `M${-wide} ${-edge} Q${-wide * 0.76} ${-high * 0.7} ${-flat} ${-high} H${flat}` +
    ` Q${wide * 0.76} ${-high * 0.7} ${wide} ${-edge}`;
  const lower =
    `L${wide} ${edge} Q${wide * 0.76} ${high * 0.7} ${flat} ${high} H${-flat}` +
    ` Q${-wide * 0.76} ${high * 0.7} ${-wide} ${edge} Z`;
  const arrow = Math.min(high * 0.5, wide * 0.4);
  return shape('g', { class: 'bead' }, [
    shape('path', { class: 'bead-body', d: upper + lower }),
    shape('path', { class: 'bead-light', d: `${upper} L${wide} ${-edge} H${-wide} Z` }),
    shape('path', { class: 'bead-edge', d: `M${-wide} 0 H${wide}` }),
    shape('path', { class: 'bead-outline', d: upper + lower }),
    shape('path', { class: 'bead-arrow', d: `M${-arrow} ${arrow * 0.6} L0 ${-arrow * 0.7} L${arrow} ${arrow * 0.6} Z` }),
  ]);
}

/**
 * The wood that does not move: the ground, rods, rails and beam.
 * @param {Layout} at @param {(rod: number) => number} middle
 */
export function woodwork(at, middle) {
  const { top, bottom, rail, width, pitch } = at;
  const body = bottom - top;
  const line = Math.max(2, pitch * 0.07);
  const rx = rail * 0.4;
  const rods = Array.from({ length: at.rods }, (_, rod) =>
    shape('rect', { class: 'rod-line', x: middle(rod) - line / 2, y: top + rail, width: line, height: body - 2 * rail }));
  const wood = [[0, top, width, rail], [0, bottom - rail, width, rail], [0, top, pitch * 0.18, body], [width - pitch * 0.18, top, pitch * 0.18, body]];
  return [
    shape('rect', { class: 'frame-ground', x: 0, y: top, width, height: body, rx }),
    shape('g', { class: 'rod-bands' }),
    ...rods,
    ...wood.map(([x, y, wide, high]) => shape('rect', { class: 'frame-wood', x, y, width: wide, height: high, rx })),
    shape('rect', { class: 'frame-beam', x: 0, y: at.beamTop, width, height: at.beam }),
  ];
}

/**
 * A letter or a digit that belongs to a rod.
 * @param {string} name @param {number} x @param {number} y @param {number} size @param {string} text
 */
export function lettering(name, x, y, size, text) {
  const made = shape('text', { class: name, x, y, 'font-size': size });
  made.textContent = text;
  return made;
}

/**
 * The dot of a unit point on the beam; the unit rod's own is a diamond.
 * @param {Layout} at @param {number} x @param {boolean} unit
 */
export function unitPoint(at, x, unit) {
  const y = at.beamTop + at.beam / 2;
  const r = at.beam * 0.27;
  if (!unit) return shape('circle', { class: 'unit-point', cx: x, cy: y, r });
  const d = r * 1.6;
  return shape('path', { class: 'unit-rod', d: `M${x} ${y - d} L${x + d} ${y} L${x} ${y + d} L${x - d} ${y} Z` });
}
