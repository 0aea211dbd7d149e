// @ts-check
// What a seat says and takes where the problems come one after another: pure functions of its state.

/** @typedef {import('./seat.js').State} State */

/** Whether the problem that is on takes an answer. @param {State} state */
export function takesAnswers(state) {
  const { phase, turn } = state.round;
  return phase === 'running' && turn.problem >= 0 && turn.step === 'answering';
}

/** @param {State} state @param {Record<string, string>} words @param {boolean} isSent */
export function says(state, words, isSent) {
  const { phase, turn } = state.round;
  if (phase !== 'running' && phase !== 'waiting') return words[phase] ?? '';
  if (turn.problem < 0) return words[`${state.activity}.before`];
  if (turn.step === 'under-way') return words[`${state.activity}.under-way`];
  if (turn.step === 'spoiled') return words['refused-not-counted'];
  if (turn.step === 'answering') return isSent ? words.sent : words.answering;
  if (!state.answer) return words.none;
  const mark = state.marks[turn.problem];
  const verdict = mark === 'right' ? words.right : mark && mark !== 'empty' ? words.wrong : '';
  return [words.revealed.replace('{0}', state.answer), verdict, words.none].filter(Boolean).join(' ');
}
