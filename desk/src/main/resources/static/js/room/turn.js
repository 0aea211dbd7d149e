// @ts-check
// What a seat says and takes where the problems come one after another: pure functions of its state.

/** @typedef {import('./seat.js').State} State */

/** Whether the problem that is on takes an answer. @param {State} state
 * @param {string} how it was shown on this tablet, where it shows */
export function takesAnswers(state, how) {
  const { phase, turn } = state.round;
  if (phase !== 'running' || turn.problem < 0) return false;
  if (state.shows && how !== 'exact') return false;
  return turn.step === 'answering' || (turn.step === 'under-way' && state.shows && state.everywhere);
}

/** @param {State} state @param {Record<string, string>} words @param {boolean} isSent @param {string} how */
export function says(state, words, isSent, how) {
  const { phase, turn } = state.round;
  if (phase !== 'running' && phase !== 'waiting') return words[phase] ?? '';
  const own = state.spoken ? 'spoken' : 'shown.here';
  if (turn.problem < 0) return words[state.shows ? `${own}.before` : `${state.activity}.before`];
  if (state.shows && turn.step !== 'revealed' && how === 'spoiled') return words[state.spoken ? 'spoken.spoiled' : 'shown.spoiled'];
  if (takesAnswers(state, how)) return isSent ? words.sent : words.answering;
  if (state.shows && turn.step !== 'revealed' && turn.step !== 'spoiled') return words[`${own}.under-way`];
  if (turn.step === 'under-way') return words[`${state.activity}.under-way`];
  if (turn.step === 'spoiled') return words['refused-not-counted'];
  if (!state.answer) return words.none;
  const mark = state.marks[turn.problem];
  const verdict = mark === 'right' ? words.right : mark && mark !== 'empty' ? words.wrong : '';
  return [words.revealed.replace('{0}', state.answer), verdict, words.none].filter(Boolean).join(' ');
}
