// @ts-check
// What a seat wrote and the desk has not said to have. It is kept on the tablet, goes on after a
// reload, and is sent until the desk has it; each message has a number, so that the desk takes it
// once however often it comes.

/** @typedef {{number: number, run: number, problem: string, written: string, at: number, tried: boolean}} Message */
/** @typedef {{taken: number, refused: string, round: import('./seat.js').Round | null}} Told */

/** Sent within so many milliseconds, an answer is fresh: the desk knows how long it took. */
const FRESH = 5_000;

const MOST_AT_ONCE = 100;

export class Outbox {
  /** @param {string} room @param {number} seat @param {number} taken */
  constructor(room, seat, taken) {
    this.address = `/seat/${room}/answers`;
    this.key = `seat-${room}-${seat}`;
    /** @type {Message[]} */
    this.queue = JSON.parse(localStorage.getItem(this.key) ?? '[]');
    this.wait = 500;
    this.sending = false;
    /** @type {(told: Told) => void} */
    this.told = () => {};
    /** @type {() => void} */
    this.changed = () => {};
    this.taken = taken;
    this.drop(taken);
  }

  /** @param {number} run @param {string} problem @param {string} written */
  add(run, problem, written) {
    const number = (this.queue.at(-1)?.number ?? this.taken) + 1;
    this.queue.push({ number, run, problem, written, at: Date.now(), tried: false });
    this.keep();
    this.send();
  }

  /** The desk has everything up to this number. @param {number} taken */
  drop(taken) {
    this.taken = Math.max(this.taken, taken);
    this.queue = this.queue.filter(({ number }) => number > this.taken);
    this.keep();
  }

  /** Forgets what the desk will never take, and numbers the rest anew. @param {(one: Message) => boolean} goes */
  forget(goes) {
    this.queue = this.queue.filter((one) => !goes(one));
    this.queue.forEach((one, index) => (one.number = this.taken + 1 + index));
    this.keep();
  }

  keep() {
    localStorage.setItem(this.key, JSON.stringify(this.queue));
    this.changed();
  }

  async send() {
    if (this.sending || this.queue.length === 0) return;
    this.sending = true;
    const part = this.queue.slice(0, MOST_AT_ONCE);
    const form = new URLSearchParams();
    for (const one of part) {
      form.append('number', String(one.number));
      form.append('run', String(one.run));
      form.append('problem', one.problem);
      form.append('written', one.written);
      form.append('fresh', !one.tried && Date.now() - one.at < FRESH ? '1' : '0');
      one.tried = true;
    }
    try {
      const answer = await fetch(this.address, { method: 'POST', body: form });
      const told = /** @type {Told} */ (await answer.json());
      this.wait = 500;
      this.drop(told.taken);
      this.sending = false;
      this.told(told);
      if (!told.refused) this.send();
    } catch {
      this.sending = false;
      this.changed();
      setTimeout(() => this.send(), this.wait);
      this.wait = Math.min(2 * this.wait, 10_000);
    }
  }
}
