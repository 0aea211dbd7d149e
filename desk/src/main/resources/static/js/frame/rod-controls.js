// @ts-check
// The rods for the keyboard and for screen readers: one control over each drawn rod, one tab stop
// for all.

import { changed, way } from './keys.js';
import { rodX } from './layout.js';
import { capacity, count } from './rods.js';

/** @typedef {import('./layout.js').Layout} Layout */
/** @typedef {import('./rods.js').Kind} Kind */
/** @typedef {import('./rods.js').Rod} Rod */
/** Names of places by power of ten, and of rods by their beads such as `1.2`. @typedef {{places: Record<string, string>, rods: Record<string, string>}} Names */

export class RodControls {
  /**
   * @param {HTMLElement} stage @param {Names} names
   * @param {(rod: number, now: Rod) => void} set called when a key sets a rod
   */
  constructor(stage, names, set) {
    this.stage = stage;
    this.names = names;
    this.set = set;
    /** @type {HTMLElement[]} */
    this.controls = [];
    /** @type {readonly Rod[]} */
    this.rods = [];
    stage.addEventListener('keydown', (event) => this.press(event));
    stage.addEventListener('focusin', (event) => this.stop(this.controls.indexOf(/** @type {HTMLElement} */ (event.target))));
  }

  /** Makes a control for each rod of a frame. @param {Kind} kind @param {readonly Rod[]} rods @param {number} unit */
  make(kind, rods, unit) {
    this.kind = kind;
    for (const old of this.controls) old.remove();
    this.controls = rods.map((_, rod) => {
      const control = document.createElement('div');
      control.className = 'frame-rod';
      control.setAttribute('role', 'spinbutton');
      control.setAttribute('aria-valuemin', '0');
      control.setAttribute('aria-valuemax', String(capacity(kind)));
      control.setAttribute('aria-label', this.names.places[unit - rod]);
      return control;
    });
    this.stage.append(...this.controls);
    this.stop(unit);
    this.show(rods);
  }

  /** Puts the controls over the drawn rods. @param {Layout} at */
  place(at) {
    this.controls.forEach((control, rod) => {
      control.style.left = `${rodX(at, rod) - at.pitch / 2}px`;
      control.style.top = `${at.top}px`;
      control.style.width = `${at.pitch}px`;
      control.style.height = `${at.bottom - at.top}px`;
    });
  }

  /** Tells what the rods hold now. @param {readonly Rod[]} rods */
  show(rods) {
    this.rods = rods;
    this.controls.forEach((control, rod) => {
      const { upper, lower } = rods[rod];
      control.setAttribute('aria-valuenow', String(count(rods[rod])));
      control.setAttribute('aria-valuetext', this.names.rods[`${upper}.${lower}`]);
    });
  }

  /** Makes `rod` the one tab stop. @param {number} rod */
  stop(rod) {
    if (rod < 0) return;
    this.controls.forEach((control, number) => (control.tabIndex = number === rod ? 0 : -1));
  }

  /** Gives `rod` the focus, as a touch does. @param {number} rod */
  focus(rod) {
    this.controls[rod].focus({ preventScroll: true });
  }

  /** @param {KeyboardEvent} event */
  press(event) {
    const rod = this.controls.indexOf(/** @type {HTMLElement} */ (event.target));
    if (rod < 0 || !this.kind || event.ctrlKey || event.altKey || event.metaKey) return;
    const step = way(event.key);
    const now = changed(this.kind, this.rods[rod], event.key);
    if (step === 0 && !now) return;
    event.preventDefault();
    if (now) this.set(rod, now);
    else this.controls[rod + step]?.focus();
  }
}
