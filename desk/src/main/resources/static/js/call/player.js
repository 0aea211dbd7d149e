// @ts-check
// Plays a call by the clock of the audio device: the whole sound lies in memory before it starts, so
// that nothing on the way can change its pace. Without the voice only the clock runs.

/** @typedef {{ opening: number, rows: number[], end: number }} Times in seconds from the start */

/** What sounds before the start of a row still belongs to it: a soft consonant, in seconds. */
const LEAD = 0.09;
/** From the press of a button to the sound. */
const SOON = 0.12;

export class CallPlayer {
  /** @type {AudioBuffer | undefined} */
  #sound;
  /** @type {AudioBufferSourceNode | undefined} */
  #source;
  #context = new AudioContext();
  /** @type {Times} */
  #times = { opening: 0, rows: [], end: 0 };
  #zero = 0;
  #stopAt = 0;
  #isRunning = false;
  #isPausing = false;

  /** @param {(row: number, part: number, clock: number) => void} onTime told at every frame: the row,
   *   from 0 (-1 in the opening), and how much of its time has gone
   * @param {(row: number) => void} onStop told when a row has ended and nothing follows by itself */
  constructor(onTime, onStop) {
    this.onTime = onTime;
    this.onStop = onStop;
  }

  get isRunning() {
    return this.#isRunning;
  }

  get isPausing() {
    return this.#isPausing;
  }

  /** @param {Times} times @param {string} [address] of the sound, where there is a voice */
  async load(times, address) {
    this.stop();
    this.#times = times;
    this.#sound = undefined;
    if (address) {
      const reply = await fetch(address);
      if (!reply.ok) {
        throw new Error(`The sound is not there: ${reply.status}.`);
      }
      this.#sound = await this.#context.decodeAudioData(await reply.arrayBuffer());
    }
  }

  /** Plays from the start of a row, or from the opening.
   * @param {number} row from 0; -1 for the opening
   * @param {{ only?: boolean, voice: boolean, ticks: boolean }} how */
  async play(row, how) {
    this.stop();
    await this.#context.resume();
    const from = row < 0 ? 0 : Math.max(0, this.#start(row) - LEAD);
    const until = how.only ? this.#start(row + 1) - LEAD : this.#times.end + LEAD;
    const begin = this.#context.currentTime + SOON;
    this.#zero = begin - from;
    this.#stopAt = until;
    if (how.voice && this.#sound) {
      this.#source = new AudioBufferSourceNode(this.#context, { buffer: this.#sound });
      this.#source.connect(this.#context.destination);
      this.#source.start(begin, from, until - from);
    }
    if (how.ticks) {
      this.#times.rows.filter((at) => at >= from && at < until).forEach((at) => this.#tick(this.#zero + at));
    }
    this.#isRunning = true;
    this.#isPausing = false;
    requestAnimationFrame(() => this.#look());
  }

  /** Lets the row that is being called end, and stops before the next. */
  pause() {
    const next = this.#rowAt(this.#now()) + 1;
    if (next < this.#times.rows.length) {
      this.#stopAt = this.#start(next) - LEAD;
      this.#source?.stop(this.#zero + this.#stopAt);
      this.#isPausing = true;
    }
  }

  stop() {
    this.#source?.stop();
    this.#source = undefined;
    this.#isRunning = false;
  }

  #look() {
    if (!this.#isRunning) {
      return;
    }
    const now = this.#now();
    const row = this.#rowAt(Math.min(now, this.#stopAt));
    if (now >= this.#stopAt) {
      this.#isRunning = false;
      this.#source = undefined;
      this.onStop(row);
      return;
    }
    const start = this.#start(row);
    this.onTime(row, (now - start) / (this.#start(row + 1) - start), this.#context.currentTime);
    requestAnimationFrame(() => this.#look());
  }

  /** What is heard now, in seconds of the call. */
  #now() {
    return this.#context.currentTime - this.#zero;
  }

  /** @param {number} time */
  #rowAt(time) {
    return this.#times.rows.filter((at) => at <= time).length - 1;
  }

  /** @param {number} row */
  #start(row) {
    return row < 0 ? 0 : row < this.#times.rows.length ? this.#times.rows[row] : this.#times.end;
  }

  /** @param {number} at */
  #tick(at) {
    const tone = new OscillatorNode(this.#context, { frequency: 1200 });
    const gain = new GainNode(this.#context, { gain: 0 });
    gain.gain.setValueAtTime(0, at);
    gain.gain.linearRampToValueAtTime(0.25, at + 0.002);
    gain.gain.exponentialRampToValueAtTime(0.001, at + 0.05);
    tone.connect(gain).connect(this.#context.destination);
    tone.start(at);
    tone.stop(at + 0.06);
  }
}
