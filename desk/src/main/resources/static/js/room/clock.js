// @ts-check
// The time left, counted down on the page from what the desk said last.

export class Clock {
  /** @param {HTMLElement} place */
  constructor(place) {
    this.place = place;
    this.left = -1;
    this.since = performance.now();
    this.running = false;
    this.isOver = false;
    /** @type {() => void} */
    this.up = () => {};
    setInterval(() => this.show(), 250);
  }

  /** @param {number} left in milliseconds; below zero without a limit @param {boolean} running */
  set(left, running) {
    this.left = left;
    this.since = performance.now();
    this.running = running;
    this.isOver = false;
    this.show();
  }

  /** @returns {number} in milliseconds */
  get now() {
    return this.running ? this.left - (performance.now() - this.since) : this.left;
  }

  show() {
    if (this.place.hidden) return;
    const now = this.now;
    const seconds = Math.max(0, Math.ceil(now / 1000));
    const text = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
    if (this.place.textContent !== text) this.place.textContent = text;
    this.place.classList.toggle('short', seconds <= 30 && this.running);
    if (this.running && now <= 0 && !this.isOver) {
      this.isOver = true;
      this.up();
    }
  }
}
