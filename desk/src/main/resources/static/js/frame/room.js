// @ts-check
// How much room a frame has on the page: the width of its place, and so much of the window's height
// that what belongs to it stays in sight.

/** @param {HTMLElement} stage */
export function roomFor(stage) {
  const place = /** @type {HTMLElement} */ (stage.parentElement);
  const share = document.fullscreenElement ? 0.56 : 0.46;
  return { width: place.clientWidth, height: Math.max(220, window.innerHeight * share) };
}

/** Scrolls a frame that is wider than its place, so that `x` is in sight. @param {HTMLElement} stage @param {number} x */
export function bringIntoSight(stage, x) {
  const place = /** @type {HTMLElement} */ (stage.parentElement);
  const margin = place.clientWidth / 4;
  const hidden = x < place.scrollLeft + margin || x > place.scrollLeft + place.clientWidth - margin;
  if (hidden) place.scrollLeft = x - place.clientWidth / 2;
}
