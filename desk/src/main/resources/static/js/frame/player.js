// @ts-check
// Plays a working on the drawn frame, step by step, and says each step. The steps are in the page
// already; this only moves the beads and shows which step is meant.

import { MovingFrame } from './moving-frame.js';
import { Notes } from './notes.js';
import { takeKeys } from './player-keys.js';
import { run } from './run.js';

class Player {
  /** @param {HTMLElement} root */
  constructor(root) {
    root.classList.add('scripted');
    this.run = run(JSON.parse(root.querySelector('script[type="application/json"]')?.textContent ?? ''));
    this.notes = new Notes(root);
    this.frame = new MovingFrame(this.notes.part('.frame-stage'), this.run, !root.matches('.of-column'));
    this.speed = /** @type {HTMLSelectElement} */ (root.querySelector('[name=speed]'));
    this.setting = /** @type {HTMLInputElement} */ (root.querySelector('[name=setting]'));
    /** @type {Record<string, () => void>} */
    this.acts = {
      start: () => this.jump(this.first),
      back: () => this.jump(this.frame.at - 1),
      play: () => (this.notes.playing ? this.pause() : this.play()),
      step: () => this.jump(this.frame.at + 1),
      end: () => this.jump(this.last),
      full: () => void (document.fullscreenElement ? document.exitFullscreen() : root.requestFullscreen()),
    };
    this.listen(root);
    this.open(root, this.notes.linked);
  }

  /** The steps that are done at the beginning: none, or those that set the numbers. */
  get first() {
    return this.setting.checked ? 0 : this.run.set;
  }

  get last() {
    return this.run.steps.length;
  }

  /** Milliseconds from one step to the next. */
  get pace() {
    return Number(this.speed.value);
  }

  /** @param {HTMLElement} root */
  listen(root) {
    takeKeys(root, this.acts);
    root.addEventListener('click', (event) => {
      const target = /** @type {Element} */ (event.target);
      const act = target.closest('[data-act]')?.getAttribute('data-act');
      const step = this.notes.stepOf(target);
      if (act) this.acts[act]();
      if (step === undefined) return;
      // The address names the step, but the page stays where it is.
      event.preventDefault();
      history.replaceState(null, '', `#step-${step}`);
      this.jump(step);
    });
    this.setting.addEventListener('change', () => this.jump(this.frame.at));
    this.speed.addEventListener('change', () => this.notes.playing && this.play());
  }

  /** Begins at the start, or at the step that the address names. @param {HTMLElement} root @param {number | undefined} linked */
  open(root, linked) {
    this.go(linked ?? this.first);
    if (linked === undefined) return;
    // The browser goes to the step in the list; the frame is what people came to see.
    addEventListener('load', () => {
      root.scrollIntoView();
      this.go(this.frame.at);
    });
  }

  play() {
    clearTimeout(this.next);
    this.notes.play(true);
    this.go(this.frame.at < this.last ? this.frame.at + 1 : this.first);
    this.next = setTimeout(() => (this.frame.at < this.last ? this.play() : this.pause()), this.pace);
  }

  pause() {
    clearTimeout(this.next);
    this.notes.play(false);
    this.frame.rest();
  }

  /** Goes to where `step` steps are done, and stays there. @param {number} step */
  jump(step) {
    this.pause();
    this.go(step);
  }

  /** @param {number} step */
  go(step) {
    const to = Math.min(Math.max(step, this.first), this.last);
    this.frame.go(to, this.pace);
    this.notes.show(to, this.first, this.last);
  }
}

for (const root of document.querySelectorAll('.player')) new Player(/** @type {HTMLElement} */ (root));
