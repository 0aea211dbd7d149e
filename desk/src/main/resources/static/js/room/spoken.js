// @ts-check
// A seat that hears the numbers: plays the voice of a showing once. Browsers play nothing before
// their page was touched, so the sound is turned on first.

/** A soft tone that tells that the sound is on: pitch in hertz, length in seconds. */
const TONE = { frequency: 660, lasts: 0.25 };

export class Spoken {
  /** @param {HTMLElement} place with the button that turns the sound on @param {() => void} ready told when it is on */
  constructor(place, ready) {
    this.place = place;
    /** @type {AudioContext | undefined} */
    this.context = undefined;
    place.querySelector('button')?.addEventListener('click', async () => {
      this.context ??= new AudioContext();
      await this.context.resume();
      this.tone(this.context);
      ready();
    });
  }

  get isOn() {
    return this.context?.state === 'running';
  }

  /** Shows the button where it is needed. @param {boolean} isSpoken */
  offer(isSpoken) {
    this.place.hidden = !isSpoken || this.isOn;
  }

  /** @param {AudioContext} context */
  tone(context) {
    const end = context.currentTime + TONE.lasts;
    const tone = new OscillatorNode(context, { frequency: TONE.frequency });
    const gain = new GainNode(context, { gain: 0.15 });
    gain.gain.linearRampToValueAtTime(0, end);
    tone.connect(gain).connect(context.destination);
    tone.start();
    tone.stop(end);
  }

  /** @param {string} address @returns {Promise<boolean>} whether it was heard to its end */
  async play(address) {
    const context = this.context;
    const reply = await fetch(address, { cache: 'no-store' }).catch(() => undefined);
    if (!context || !reply?.ok) return false;
    const buffer = await context.decodeAudioData(await reply.arrayBuffer());
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(context.destination);
    return new Promise((tell) => {
      const listening = new AbortController();
      let isWhole = !document.hidden;
      const look = () => {
        if (!document.hidden && context.state === 'running') return;
        isWhole = false;
        source.stop();
      };
      document.addEventListener('visibilitychange', look, { signal: listening.signal });
      context.addEventListener('statechange', look, { signal: listening.signal });
      source.onended = () => {
        listening.abort();
        tell(isWhole);
      };
      source.start();
    });
  }
}
