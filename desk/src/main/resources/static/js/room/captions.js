// @ts-check
// What a caller has said, row by row, for a pupil who reads it. Each row stays for a second at
// least, so that nothing flashes however fast the call is; none is left out.

const LEAST = 1_000;

export class Captions {
  /** @param {HTMLElement} place */
  constructor(place) {
    this.place = place;
    this.row = /** @type {HTMLElement} */ (place.querySelector('span'));
    this.number = /** @type {HTMLElement} */ (place.querySelector('b'));
    this.call = '';
    /** @type {string[]} */
    this.rows = [];
    this.seen = 0;
    this.resting = 0;
  }

  /** @param {string} call which one is on @param {{language: string, rows: string[]}} said */
  look(call, said) {
    if (call !== this.call || said.rows.length < this.seen) {
      this.call = call;
      this.seen = 0;
      this.row.textContent = this.number.textContent = '';
    }
    this.rows = said.rows;
    this.number.lang = said.language;
    this.place.hidden = said.rows.length === 0;
    this.next();
  }

  next() {
    if (this.resting || this.seen >= this.rows.length) return;
    this.number.textContent = this.rows[this.seen++];
    this.row.textContent = `${this.seen}.`;
    this.resting = setTimeout(() => {
      this.resting = 0;
      this.next();
    }, LEAST);
  }
}
