// @ts-check
// Draws numbers as the beads of a frame, for beginners.

/** @typedef {import('./figures.js').Writer} Writer */

/** Room for a bead above the beam at rest, one at the beam, the beam, and five below it. */
const BEADS_HIGH = 7;
const BEAM = 0.35;
const WIDE = 1.75;
const FLAT = 0.92;

/** @param {CanvasRenderingContext2D} pen @param {number} x @param {number} y the middle @param {number} bead its height */
function drawBead(pen, x, y, bead) {
  const half = (bead * FLAT) / 2;
  const side = (bead * WIDE) / 2;
  pen.beginPath();
  for (const [dx, dy] of [[-side, 0], [-side * 0.35, -half], [side * 0.35, -half], [side, 0], [side * 0.35, half], [-side * 0.35, half]]) {
    pen.lineTo(x + (dx ?? 0), y + (dy ?? 0));
  }
  pen.closePath();
  pen.fill();
}

/** @param {CanvasRenderingContext2D} pen @param {number} digit @param {number} x @param {number} bead */
function drawRod(pen, digit, x, bead) {
  const beam = 2 * bead;
  const below = beam + BEAM * bead;
  const lower = digit % 5;
  drawBead(pen, x, digit >= 5 ? 1.5 * bead : 0.5 * bead, bead);
  for (let i = 0; i < 4; i++) {
    drawBead(pen, x, below + (i < lower ? i + 0.5 : i + 1.5) * bead, bead);
  }
}

/** A pen that draws each number on as many rods as the longest one has; a minus row has its sign.
 * @param {readonly string[]} texts @param {number} tallest @param {{width: number, height: number}} room
 * @param {string} ink @returns {Writer} */
export function beadWriter(texts, tallest, room, ink) {
  const rods = Math.max(...texts.map((text) => text.replace(/\D/g, '').length));
  const signed = texts.some((text) => text.startsWith('-')) ? 1 : 0;
  const pitch = WIDE + 0.25;
  const high = BEADS_HIGH + BEAM;
  const bead = Math.max(1, Math.min((Math.min(tallest, room.height) - 2) / high, room.width / (pitch * (rods + signed) + 0.5)));
  const width = Math.ceil(bead * (pitch * (rods + signed) + 0.5));
  return {
    width,
    height: Math.ceil(bead * high) + 2,
    draw: (pen, text) => {
      pen.fillStyle = ink;
      const digits = text.replace(/\D/g, '').padStart(rods, '0');
      const left = bead * (0.25 + pitch * signed);
      pen.fillRect(left, 1 + 2 * bead + 0.08 * bead, bead * pitch * rods, BEAM * 0.55 * bead);
      [...digits].forEach((digit, i) => {
        pen.save();
        pen.translate(0, 1);
        drawRod(pen, Number(digit), left + bead * pitch * (i + 0.5), bead);
        pen.restore();
      });
      if (text.startsWith('-')) {
        pen.fillRect(bead * 0.3, 2 * bead, bead * 1.3, bead * 0.35);
      }
    },
  };
}
