// @ts-check
// The problems of a round on the page: all of them, or one at a time; one is being worked on.

export class Sheet {
  /** @param {HTMLElement} place @param {boolean} oneByOne */
  constructor(place, oneByOne) {
    this.place = place;
    this.oneByOne = oneByOne;
    this.at = 0;
    /** Whether the class goes from problem to problem together. */
    this.together = false;
    /** @type {HTMLElement[]} */
    this.items = [];
    /** Told when an answer is left. @type {(problem: number, written: string) => void} */
    this.left = () => {};
    place.addEventListener('focusin', ({ target }) => {
      const item = /** @type {HTMLElement} */ (target).closest('[data-problem]');
      if (item) this.go(Number(/** @type {HTMLElement} */ (item).dataset.problem), false);
    });
    place.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' || event.isComposing) return;
      event.preventDefault();
      this.go(this.at + (event.shiftKey ? -1 : 1));
    });
  }

  /** @param {string} html made by the desk @param {string[]} written @param {(problem: number) => string | undefined} draft */
  show(html, written, draft) {
    this.place.innerHTML = html;
    this.items = [...this.place.querySelectorAll('li[data-problem]')].map((item) => /** @type {HTMLElement} */ (item));
    this.items.forEach((_, problem) => (this.field(problem).value = draft(problem) ?? written[problem] ?? ''));
    const blank = this.items.findIndex((_, problem) => this.field(problem).value === '');
    this.at = Math.max(0, blank);
    this.mark();
  }

  get list() {
    return /** @type {HTMLElement} */ (this.place.querySelector('.asked-list'));
  }

  /** @param {number} problem */
  field(problem) {
    return /** @type {HTMLInputElement} */ (this.items[problem].querySelector('input'));
  }

  get current() {
    return this.items.length > 0 ? this.field(this.at) : undefined;
  }

  /** @param {number} problem @param {boolean} focus */
  go(problem, focus = true) {
    const to = this.together ? this.at : Math.min(Math.max(problem, 0), this.items.length - 1);
    if (to !== this.at || (this.together && focus)) this.leave();
    this.at = to;
    this.mark();
    if (focus) this.current?.focus({ preventScroll: this.oneByOne });
  }

  /** The class is at that problem. @param {number} problem */
  turnTo(problem) {
    if (this.at !== problem) this.leave();
    this.at = problem;
    this.mark();
  }

  /** The answer that is being worked on may be sent. */
  leave() {
    if (this.current) this.left(this.at, this.current.value);
  }

  mark() {
    this.place.classList.toggle('one', this.oneByOne || this.together);
    this.items.forEach((item, problem) => {
      item.classList.toggle('current', problem === this.at);
      item.hidden = (this.oneByOne || this.together) && problem !== this.at;
    });
  }

  /** @param {boolean} closed nothing more can be written */
  close(closed) {
    this.items.forEach((_, problem) => (this.field(problem).readOnly = closed));
  }

  /** @param {string[]} marks by the desk, after the end */
  showMarks(marks) {
    if (marks.length > 0) this.place.classList.remove('one');
    this.items.forEach((item, problem) => {
      const sign = /** @type {HTMLElement} */ (item.querySelector('.asked-mark'));
      sign.textContent = marks[problem] === 'right' ? '○' : marks[problem] ? '×' : '';
      if (marks.length > 0) item.hidden = false;
    });
  }
}
