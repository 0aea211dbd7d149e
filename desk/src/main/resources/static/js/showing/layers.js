// @ts-check
// One ready-drawn layer for each number, of which only the opacity changes, and the same numbers as
// plain pixels for the look at flashes.

/** @typedef {import('./figures.js').Writer} Writer */
/** @typedef {import('./flash.js').Picture} Picture */

/** Puts a layer for each number on the stage, none of them seen. @param {Element} stage @param {readonly string[]} texts @param {Writer} writer */
export function layers(stage, texts, writer) {
  const scale = window.devicePixelRatio || 1;
  return texts.map((text) => {
    const canvas = document.createElement('canvas');
    canvas.className = 'shown-number';
    canvas.width = Math.ceil(writer.width * scale);
    canvas.height = Math.ceil(writer.height * scale);
    canvas.style.width = `${writer.width}px`;
    canvas.style.height = `${writer.height}px`;
    const pen = canvas.getContext('2d');
    pen?.scale(scale, scale);
    pen && writer.draw(pen, text);
    stage.append(canvas);
    return canvas;
  });
}

/** A number on its ground, pixel by CSS pixel; the ground alone where there is no number.
 * @param {Writer} writer @param {string} text @param {string} ground @returns {Picture} */
export function picture(writer, text, ground) {
  const canvas = document.createElement('canvas');
  canvas.width = writer.width;
  canvas.height = writer.height;
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) {
    throw new Error('This browser does not draw.');
  }
  pen.fillStyle = ground;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  text && writer.draw(pen, text);
  const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
  const pixels = new Int32Array(canvas.width * canvas.height);
  pixels.forEach((_, i) => {
    pixels[i] = ((data[4 * i] ?? 0) << 16) | ((data[4 * i + 1] ?? 0) << 8) | (data[4 * i + 2] ?? 0);
  });
  return { width: canvas.width, height: canvas.height, pixels };
}
