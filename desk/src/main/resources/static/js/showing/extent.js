// @ts-check
// How much of a field the pixels of one change fill.

/** @param {Uint8Array} mask @param {number} width */
function boxOf(mask, width) {
  let left = width;
  let right = -1;
  let top = -1;
  let bottom = -1;
  mask.forEach((set, i) => {
    if (set) {
      const x = i % width;
      left = Math.min(left, x);
      right = Math.max(right, x);
      bottom = Math.floor(i / width);
      top = top < 0 ? bottom : top;
    }
  });
  return { left, top, across: right - left + 1, down: bottom - top + 1 };
}

/** The box round the pixels, and the most of the box and of the pixels that one field can hold.
 * @param {Uint8Array} mask @param {number} width @param {{width: number, height: number}} field */
export function extent(mask, width, field) {
  const { left, top, across, down } = boxOf(mask, width);
  const line = across + 1;
  const sums = new Int32Array(line * (down + 1));
  for (let y = 0; y < down; y++) {
    let row = 0;
    for (let x = 0; x < across; x++) {
      row += mask[(top + y) * width + left + x] ?? 0;
      sums[(y + 1) * line + x + 1] = (sums[y * line + x + 1] ?? 0) + row;
    }
  }
  const wide = Math.min(across, Math.ceil(field.width));
  const high = Math.min(down, Math.ceil(field.height));
  let ink = 0;
  for (let y = 0; y + high <= down; y++) {
    for (let x = 0; x + wide <= across; x++) {
      const at = y * line + x;
      const below = (y + high) * line + x;
      ink = Math.max(ink, (sums[below + wide] ?? 0) - (sums[at + wide] ?? 0) - (sums[below] ?? 0) + (sums[at] ?? 0));
    }
  }
  return { boxWidth: across, boxHeight: down, box: Math.min(across, field.width) * Math.min(down, field.height), ink };
}
