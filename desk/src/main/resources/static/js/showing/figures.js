// @ts-check
// Draws numbers in figures, all in the same place, so large that their ink keeps within a height.

const FAMILY = '"Desk Gothic", sans-serif';
const TRIAL = 1000;

/** A ground pixel on each side, for edges that are drawn softly. */
const SOFT = 1;

/** @typedef {{width: number, height: number, draw: (pen: CanvasRenderingContext2D, text: string) => void}} Writer */

/** A number with its thousands apart and a true minus sign. @param {string} plain */
export function grouped(plain) {
  const [whole = '', ...decimals] = plain.replace('-', '').split('.');
  const parted = whole.replace(/(?<=\d)(?=(\d{3})+$)/g, ',');
  return (plain.startsWith('-') ? '\u2212' : '') + [parted, ...decimals].join('.');
}

/** A pen for all these numbers: the figures are as large as `tallest` and `room` allow, in CSS pixels.
 * @param {readonly string[]} texts @param {number} tallest @param {{width: number, height: number}} room
 * @param {string} ink @returns {Writer} */
export function figureWriter(texts, tallest, room, ink) {
  const pen = new OffscreenCanvas(1, 1).getContext('2d');
  if (!pen) {
    throw new Error('This browser does not draw.');
  }
  pen.font = `700 ${TRIAL}px ${FAMILY}`;
  const sizes = texts.map((text) => pen.measureText(grouped(text)));
  const up = Math.max(...sizes.map((size) => size.actualBoundingBoxAscent)) / TRIAL;
  const down = Math.max(0, ...sizes.map((size) => size.actualBoundingBoxDescent)) / TRIAL;
  const across = Math.max(...sizes.map((size) => size.width)) / TRIAL;
  const height = Math.min(tallest, room.height) - 2 * SOFT;
  const size = Math.max(1, Math.floor(Math.min(height / (up + down), room.width / across)));
  const width = Math.ceil(across * size) + 2 * SOFT;
  return {
    width,
    height: Math.ceil((up + down) * size) + 2 * SOFT,
    draw: (to, text) => {
      to.font = `700 ${size}px ${FAMILY}`;
      to.fillStyle = ink;
      to.textAlign = 'center';
      to.textBaseline = 'alphabetic';
      to.fillText(grouped(text), width / 2, SOFT + up * size);
    },
  };
}
