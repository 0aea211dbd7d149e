// @ts-check
// What stands around the frame while a working is played: the sentence of the step, its place in
// the list and in the sum. Every text comes from the list that the page came with.

export class Notes {
  /** @param {HTMLElement} root */
  constructor(root) {
    this.root = root;
    this.list = /** @type {HTMLElement} */ (root.querySelector('.player-list'));
    /** @type {HTMLElement[]} */
    this.items = [...this.list.querySelectorAll('li')];
    this.playButton = /** @type {HTMLElement} */ (root.querySelector('[data-act=play]'));
    this.playing = false;
  }

  /** The step that the address names, such as `#step-4`. */
  get linked() {
    const step = this.items.findIndex((item) => `#${item.id}` === location.hash);
    return step < 0 ? undefined : step + 1;
  }

  /** The step whose entry in the list `target` is part of. @param {Element} target */
  stepOf(target) {
    const item = /** @type {HTMLElement | null} */ (target.closest('.player-list li a')?.parentElement ?? null);
    return item ? this.items.indexOf(item) + 1 : undefined;
  }

  /** Tells whether the working runs; a running one is not read aloud step by step. @param {boolean} playing */
  play(playing) {
    this.playing = playing;
    this.root.classList.toggle('playing', playing);
    this.part('.now-say').setAttribute('aria-live', playing ? 'off' : 'polite');
    this.playButton.setAttribute('aria-label', this.playButton.dataset[playing ? 'pause' : 'play'] ?? '');
  }

  /** Shows the step after which the frame stands. @param {number} step @param {number} first @param {number} last */
  show(step, first, last) {
    const item = step > first ? this.items[step - 1] : undefined;
    const pattern = this.part('.now-count').dataset.pattern ?? '';
    this.part('.now-count').textContent = pattern.replace('{0}', String(step - first)).replace('{1}', String(last - first));
    for (const text of ['label', 'brief', 'say', 'fingers']) {
      const source = item?.closest('section')?.querySelector(`.step-${text}`) ?? null;
      const own = item?.querySelector(`.step-${text}`) ?? source;
      this.part(`.now-${text}`).textContent = own?.textContent ?? '';
    }
    const say = this.part('.now-say');
    if (!item) say.textContent = (step === 0 ? say.dataset.clear : say.dataset.set) ?? '';
    this.part('.now-answer').textContent = step === last ? this.part('.sum-answer').textContent : '';
    this.point(item);
  }

  /** Points at a step in the list and at its figures in the sum. @param {HTMLElement | undefined} item */
  point(item) {
    for (const old of this.root.querySelectorAll('.now')) if (!old.closest('svg')) old.classList.remove('now');
    for (const old of this.items) old.removeAttribute('aria-current');
    for (const part of (item?.dataset.parts ?? '').split(' ').filter(Boolean)) {
      this.root.querySelector(`[data-part="${part}"]`)?.classList.add('now');
    }
    if (!item) {
      this.list.scrollTop = 0;
      return;
    }
    item.setAttribute('aria-current', 'step');
    const middle = item.offsetTop - (this.list.clientHeight - item.offsetHeight) / 2;
    this.list.scrollTop = middle;
  }

  /** @param {string} selector */
  part(selector) {
    return /** @type {HTMLElement} */ (this.root.querySelector(selector));
  }
}
