// @ts-check
// A seat whose own tablet shows the numbers: runs each showing once, and tells the desk how it went.

import { perform } from '../showing/perform.js';
import { known, note } from './once.js';

/** @typedef {import('./seat.js').State} State */

export class Shown {
  /** @param {HTMLElement} stage @param {import('./spoken.js').Spoken} spoken @param {() => void} changed told when a showing is over */
  constructor(stage, spoken, changed) {
    this.stage = stage;
    this.spoken = spoken;
    this.changed = changed;
    this.isOn = false;
    this.isUnsafe = false;
  }

  /** How the showing that is on went here. @param {State} state */
  how(state) {
    return known(state.room, { run: state.round.run, ...state.round.turn });
  }

  /** Shows what is on, if it is to be shown here and was not yet. @param {State} state */
  async look(state) {
    const { phase, turn, run } = state.round;
    const isRepeat = turn.step === 'revealed' && turn.times > 1;
    if (state.spoken && !this.spoken.isOn) return;
    if (!state.shows || this.isOn || phase !== 'running' || turn.problem < 0) return;
    if (turn.step === 'spoiled' || (turn.step === 'revealed' && !isRepeat)) return;
    const how = this.how(state);
    if (how === 'exact' || how === 'spoiled') return;
    const at = { run, problem: turn.problem, times: turn.times };
    this.isOn = true;
    if (how === 'begun') {
      await this.tell(state.room, at, false);
    } else {
      await this.show(state.room, at);
    }
    this.isOn = false;
    this.changed();
  }

  /** @param {string} room @param {{run: number, problem: number, times: number}} at */
  async show(room, at) {
    const reply = await fetch(`/seat/${room}/showing`, { cache: 'no-store' }).catch(() => undefined);
    if (!reply?.ok) return;
    const asked = await reply.json();
    if (asked.problem !== at.problem || asked.times !== at.times) return;
    note(room, at, 'begun');
    if (asked.spoken) {
      await this.tell(room, at, await this.spoken.play(`/seat/${room}/sound`));
      return;
    }
    const done = await perform(this.stage, { ...asked, screenWidth: NaN, nearest: NaN }, () => {});
    this.isUnsafe = done.broken === 'unsafe';
    await this.tell(room, at, done.exact);
  }

  /** @param {string} room @param {{run: number, problem: number, times: number}} at @param {boolean} exact */
  async tell(room, at, exact) {
    note(room, at, exact ? 'exact' : 'spoiled');
    const body = new URLSearchParams({ run: String(at.run), problem: String(at.problem), exact: exact ? '1' : '0' });
    await fetch(`/seat/${room}/ran`, { method: 'POST', body }).catch(() => undefined);
  }
}
