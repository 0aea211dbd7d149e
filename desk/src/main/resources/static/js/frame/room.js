// @ts-check
// How much room a frame has on the page: the width of its place, and so much of the window's height
// that what belongs to it stays in sight.

/** @param {HTMLElement} stage */
export function roomFor(stage) {
  const place = /** @type {HTMLElement} */ (stage.parentElement);
  return { width: place.clientWidth, height: Math.max(220, window.innerHeight * 0.46) };
}
