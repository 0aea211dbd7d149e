// @ts-check
// A pupil's page: shows where the round stands, takes what is written, and hands it in.

import { Captions } from './captions.js';
import { Clock } from './clock.js';
import { listen } from './live.js';
import { Outbox } from './outbox.js';
import { listenToPad, needs } from './pad.js';
import { Sheet } from './sheet.js';
import { Shown } from './shown.js';
import { Spoken } from './spoken.js';
import { says, takesAnswers } from './turn.js';

/** @typedef {{problem: number, times: number, step: string}} Turn */
/** Times in milliseconds. @typedef {{run: number, phase: string, worked: number, limit: number, turn: Turn}} Round */
/**
 * @typedef {{room: string, seat: number, name: string, extra: number, taken: number, handedIn: boolean,
 *   later: number, asked: boolean, one: boolean, title: string, written: string[], marks: string[], activity: string, shows: boolean, spoken: boolean, captions: {language: string, rows: string[]}, everywhere: boolean, answer: string,
 *   round: Round}} State
 */

const root = /** @type {HTMLElement} */ (document.querySelector('.seat'));
/** @param {string} name */
const part = (name) => /** @type {HTMLElement} */ (root.querySelector(`.seat-${name}`));
/** @param {string} name */
const given = (name) => JSON.parse(root.querySelector(`script.seat-${name}`)?.textContent ?? '{}');
/** @type {Record<string, string>} */
const words = given('words');
/** @type {State} */
let state = given('state');
/** So long the second press may take, in milliseconds. */
const SECOND_PRESS = 6_000;
let shownRun = 0;
let isThere = true;
let isOver = false;
/** Whether the class went on while answers were still on the tablet. */
let wentOn = false;
/** Handing in takes two presses. */
let isAsked = false;
/** What the tablet sent last, by problem, so that nothing is sent twice for nothing. @type {Map<number, string>} */
let sent = new Map();

const clock = new Clock(part('clock'));
const sheet = new Sheet(part('work'), state.one);
const box = new Outbox(state.room, state.seat, state.taken);
const spoken = new Spoken(part('sound'), () => void look());
const shown = new Shown(part('stage'), spoken, () => void look());
const captions = new Captions(part('caption'));
const drafts = `drafts-${state.room}-${state.seat}`;

/** @returns {{run: number, written: Record<number, string>}} */
function draft() {
  const kept = JSON.parse(localStorage.getItem(drafts) ?? 'null');
  return kept?.run === state.round.run ? kept : { run: state.round.run, written: {} };
}

function keepDraft() {
  const kept = draft();
  if (sheet.current) kept.written[sheet.at] = sheet.current.value;
  localStorage.setItem(drafts, JSON.stringify(kept));
}

sheet.left = (problem, written) => {
  if (state.handedIn || isOver || (sent.get(problem) ?? '') === written) return;
  sent.set(problem, written);
  box.add(state.round.run, String(problem), written);
};

/** @param {string} text */
function say(text) {
  const place = part('status');
  if (place.textContent !== text) place.textContent = text;
}

/** @param {string} text @param {boolean} forEver whether nothing goes on here */
function trouble(text, forEver) {
  part('trouble').textContent = text;
  part('trouble').hidden = !text;
  part('way-on').hidden = !forEver;
  if (forEver) {
    isOver = true;
    stream.stop();
    show();
  }
}

/** A room that is closed has no way back; another one may have a code. */
function toAnotherRoom() {
  const link = /** @type {HTMLAnchorElement} */ (part('way-on').querySelector('a'));
  link.href = '/join';
  link.textContent = link.dataset.code ?? '';
}

async function look() {
  try {
    const answer = await fetch(`/seat/${state.room}/state`, { cache: 'no-store' });
    if (!answer.ok) {
      location.reload();
      return;
    }
    const before = state;
    state = await answer.json();
    if (state.asked !== before.asked) location.reload();
    box.drop(state.taken);
    box.send();
    await round(state.round);
  } catch {
    // The stream comes back and says so.
  }
}

/** @param {Round} now */
async function round(now) {
  const isNew = now.run !== state.round.run;
  const isEnd = now.phase === 'ended' && state.round.phase !== 'ended';
  const isTold = inTurn() && now.turn.step === 'revealed' && state.round.turn.step !== 'revealed';
  if (isEnd) sheet.leave();
  state.round = now;
  if (now.phase === 'closed') {
    sheet.leave();
    part('clock').hidden = true;
    // What became of the last answers stays to be read, whichever comes first.
    trouble(part('trouble').textContent ?? '', true);
    toAnotherRoom();
    box.send();
    return;
  }
  if (isNew) {
    trouble('', false);
    wentOn = box.queue.length > 0;
    await look();
    return;
  }
  const limit = now.limit < 0 ? -1 : (now.limit * (100 + state.extra)) / 100;
  part('clock').hidden = limit < 0 || now.phase === 'ended';
  clock.set(limit < 0 ? -1 : limit - now.worked, now.phase === 'running' && limit >= 0);
  part('round').textContent = state.title;
  if (now.phase !== 'waiting' && shownRun !== now.run) await fetchProblems();
  if (inTurn() && shownRun === now.run) {
    if (isTold) sheet.leave();
    sheet.turnTo(Math.max(0, now.turn.problem));
    if (isTold) setTimeout(look, 300);
  }
  if (isEnd && !isOver) setTimeout(look, 3_500);
  show();
  void shown.look(state);
}

async function fetchProblems() {
  // Without a network they come with the next look.
  const answer = await fetch(`/seat/${state.room}/problems`, { cache: 'no-store' }).catch(() => undefined);
  if (!answer?.ok) return;
  const kept = draft();
  sheet.show(await answer.text(), state.written, (problem) => kept.written[problem]);
  const { run, minus, remainder } = sheet.list.dataset;
  shownRun = Number(run);
  sent = new Map(state.written.map((written, problem) => [problem, written]));
  for (const one of box.queue) if (one.run === shownRun && one.problem !== 'end') sent.set(Number(one.problem), one.written);
  needs(part('pad'), minus === 'true', remainder === 'true');
  sheet.together = inTurn();
  root.classList.toggle('in-turn', inTurn());
  if (inTurn()) {
    const send = /** @type {HTMLElement} */ (part('pad').querySelector('[data-key=after]'));
    send.textContent = '✓';
    send.setAttribute('aria-label', words.send);
  }
}

/** Whether the class goes from problem to problem together. */
const inTurn = () => state.activity !== 'written';

function show() {
  const { phase } = state.round;
  const isSheetThere = shownRun === state.round.run && phase !== 'waiting' && phase !== 'paused';
  const isUp = phase === 'running' && clock.isOver;
  const canWrite = isSheetThere && phase === 'running' && !isUp && !state.handedIn && !isOver && (!inTurn() || takesAnswers(state, shown.how(state)));
  part('work').hidden = !isSheetThere || (inTurn() && !canWrite && phase !== 'ended');
  part('pad').hidden = !canWrite;
  part('end').hidden = !canWrite || inTurn();
  part('frame').hidden = !canWrite || inTurn();
  sheet.close(!canWrite);
  sheet.showMarks(phase === 'ended' ? state.marks : []);
  root.classList.toggle('writing', canWrite);
  spoken.offer(state.spoken && !isOver && phase !== 'ended');
  captions.look([state.round.run, state.round.turn.problem, state.round.turn.times].join(), state.captions);
  tell();
}

/** What is to be said of the round. */
function standing() {
  const { phase } = state.round;
  if (phase === 'closed') return words.closed;
  if (inTurn() && phase !== 'ended') return says(state, words, isSent(), shown.how(state));
  if (phase === 'ended' && state.marks.length > 0) {
    const right = state.marks.filter((mark) => mark === 'right').length;
    return words['right-of'].replace('{0}', String(right)).replace('{1}', String(state.marks.length));
  }
  if (state.handedIn && phase !== 'waiting') return words['handed-in'];
  return clock.isOver && phase === 'running' ? words['time-up'] : (words[phase] ?? '');
}

function tell() {
  const waiting = box.queue.length;
  const where = standing();
  const net = isOver ? '' : !isThere ? words.offline : waiting > 0 ? words['waiting-to-send'].replace('{0}', String(waiting)) : '';
  const later = state.later > 0 ? words.later : '';
  say([where, later, net].filter(Boolean).join(' '));
}

/** Whether what stands in the field is on its way or with the desk. */
const isSent = () => shownRun === state.round.run && sheet.current?.value !== '' && sent.get(sheet.at) === sheet.current?.value;

/** The button says again what it said at first. */
function notYet() {
  isAsked = false;
  part('hand-in').textContent = words['hand-in'];
}

box.changed = tell;
box.told = ({ refused, round: now }) => {
  if (!refused) {
    if (box.queue.length === 0 && wentOn) void look();
    wentOn = false;
    return;
  }
  if (refused === 'late') {
    trouble(words.late, isOver);
    box.send();
  } else if (refused === 'stale' || refused === 'handed-in' || refused === 'not-begun' || refused === 'no-answer' || refused === 'early' || refused === 'not-counted') {
    const run = now?.run ?? 0;
    if (refused === 'early' || refused === 'not-counted') sent.delete(Number(box.queue[0]?.problem));
    const first = box.queue[0];
    box.forget((one) => (refused === 'stale' ? one.run !== run : one === first));
    if (refused === 'stale') trouble(words.stale, false);
    box.send();
  } else if (refused === 'gap') {
    box.forget(() => false);
    box.send();
  } else {
    trouble(words[`refused-${refused}`] ?? refused, true);
  }
};

listenToPad(part('pad'), {
  field: () => sheet.current,
  moved: (move) => {
    sheet.go(sheet.at + (move === 'after' ? 1 : -1));
    tell();
  },
  wrote: keepDraft,
});
part('work').addEventListener('input', keepDraft);
part('hand-in').addEventListener('click', () => {
  sheet.leave();
  const blank = sheet.items.filter((_, problem) => sheet.field(problem).value.trim() === '').length;
  if (!isAsked) {
    isAsked = true;
    part('hand-in').textContent = words[blank > 0 ? 'really-blank' : 'really'].replace('{0}', String(blank));
    setTimeout(notYet, SECOND_PRESS);
    return;
  }
  notYet();
  state.handedIn = true;
  box.add(state.round.run, 'end', '');
  show();
});
clock.up = () => {
  sheet.leave();
  show();
};
addEventListener('online', () => {
  box.send();
  void look();
});
addEventListener('pagehide', () => sheet.leave());
document.addEventListener('visibilitychange', () => document.hidden && sheet.leave());

const stream = listen(
  `/seat/${state.room}/stream`,
  { round: (data) => round(JSON.parse(data)), look, replaced: () => trouble(words.replaced, true) },
  (there) => {
    isThere = there;
    if (there) box.send();
    tell();
  },
);
void round(state.round);
