// @ts-check
// One run of a schedule, frame by frame, and the true account of it. It knows no page and no clock:
// it is told the time of every frame, and says which number to show.

/** @typedef {import('./schedule.js').Schedule} Schedule */
/** @typedef {{number: number, on: number, off: number}} Told when a number came and went, milliseconds from the first frame */

export class Run {
  /** @param {Schedule} schedule @param {(number: number, seen: boolean) => void} flip shows or hides a number, from 0 */
  constructor(schedule, flip) {
    this.schedule = schedule;
    this.flip = flip;
    this.frameTime = 1000 / schedule.hertz;
    this.start = NaN;
    this.before = NaN;
    this.up = -1;
    this.next = 0;
    this.ended = false;
    /** @type {Told[]} */
    this.told = [];
    /** Gaps of more than a frame and a half. @type {{number: number, lasted: number}[]} */
    this.stalls = [];
  }

  /** Takes the time of a frame; the first one is the frame of the first number. @param {number} now */
  frame(now) {
    if (this.ended) {
      return;
    }
    if (Number.isNaN(this.start)) {
      this.start = now;
    }
    const elapsed = now - this.start;
    if (!Number.isNaN(this.before) && now - this.before > 1.5 * this.frameTime) {
      this.stalls.push({ number: Math.max(this.up, this.next - 1), lasted: now - this.before });
    }
    this.before = now;
    this.show(Math.round(elapsed / this.frameTime), elapsed);
  }

  /** @param {number} frame @param {number} elapsed */
  show(frame, elapsed) {
    const { slots, frames } = this.schedule;
    const up = slots[this.up];
    if (up && frame >= up.off) {
      this.hide(elapsed);
    }
    while (this.next < slots.length && frame >= (slots[this.next]?.off ?? 0)) {
      this.next++; // its whole time went by in a stall: it is never shown late on top of the next one
    }
    if (this.up < 0 && this.next < slots.length && frame >= (slots[this.next]?.on ?? 0)) {
      this.up = this.next++;
      this.told.push({ number: this.up, on: elapsed, off: NaN });
      this.flip(this.up, true);
    }
    this.ended = frame >= frames && this.up < 0;
  }

  /** @param {number} elapsed */
  hide(elapsed) {
    const last = this.told.at(-1);
    if (last) {
      last.off = elapsed;
    }
    this.flip(this.up, false);
    this.up = -1;
  }

  /** Takes away what is up and ends the run, which then tells of no number after it. */
  stop() {
    if (this.up >= 0) {
      this.hide(this.before - this.start);
    }
    this.ended = true;
  }

  /** What was really shown. A run is exact where every number came, and none came, stayed or went
   * more than a frame otherwise than asked. */
  account() {
    const { slots } = this.schedule;
    const frame = this.frameTime;
    const lines = slots.map((slot, number) => {
      const asked = { on: slot.on * frame, lasted: (slot.off - slot.on) * frame };
      const told = this.told.find((each) => each.number === number);
      const got = told && { on: told.on, lasted: told.off - told.on };
      const off = got ? Math.max(Math.abs(got.on - asked.on), Math.abs(got.lasted - asked.lasted)) : Infinity;
      return { number, asked, got, exact: off <= 1.02 * frame };
    });
    const first = this.told[0];
    const last = this.told.at(-1);
    return {
      lines,
      stalls: this.stalls,
      exact: lines.every((line) => line.exact),
      perSecond: first && last && last.on > first.on ? ((this.told.length - 1) * 1000) / (last.on - first.on) : 0,
    };
  }
}
