// @ts-check
// The caller's page: buttons, what is shown, and which call is on.

import { CallPlayer } from "./player.js";
import { keepTally } from "./tally.js";

/** @typedef {{ shown: string, said: string }} Line
 * @typedef {{ id: string, digits: number, language: string, opening: Line, rows: Line[], answer: string,
 *   right: string, sound?: string, told: string, verdict: string,
 *   times: import("./player.js").Times }} Call */

/** @type {{ round: string, first: number, calls: Call[], words: Record<string, string> }} */
const page = JSON.parse(part("script[type='application/json']").textContent ?? "");
const { calls, words } = page;
const player = new CallPlayer(tell, stopped);
let at = page.first;
/** The row that was called last, and whether the call is under way. */
let row = -1;
let isUnderWay = false;
let isReady = false;

/** @param {string} selector @returns {HTMLElement} */
function part(selector) {
  return /** @type {HTMLElement} */ (document.querySelector(selector));
}

/** @param {string} selector */
const button = (selector) => /** @type {HTMLButtonElement} */ (part(selector));
/** @param {string} selector */
const ticked = (selector) => /** @type {HTMLInputElement} */ (part(selector)).checked;

/** @param {string} key @param {...(string | number)} values */
function say(key, ...values) {
  return values.reduce((/** @type {string} */ text, value, i) => text.replace(`{${i}}`, String(value)), words[key]);
}

async function open() {
  const call = calls[at];
  row = -1;
  isUnderWay = false;
  isReady = false;
  part(".call-which").textContent = say("which", at + 1, calls.length);
  part(".call-told").textContent = `${say("digits", call.rows.length, call.digits)} · ${call.told}`;
  part(".call-told").dataset.verdict = call.verdict;
  part(".call-answer").hidden = true;
  const save = /** @type {HTMLAnchorElement} */ (part(".call-save"));
  save.hidden = !call.sound;
  save.href = `${call.sound}&save=1`;
  show("loading");
  try {
    await player.load(call.times, call.sound);
    isReady = true;
    show("ready");
  } catch {
    show("no-sound");
  }
}

/** @param {string} state @param {...(string | number)} values */
function show(state, ...values) {
  const call = calls[at];
  const canPlay = isReady && (Boolean(call.sound) || ticked(".call-prompter"));
  part(".call-state").textContent = say(state, ...values);
  button(".call-start").textContent = say(player.isRunning ? "pause" : isUnderWay ? "go-on" : "start");
  button(".call-start").disabled = !canPlay || player.isPausing && player.isRunning;
  button(".call-row-again").disabled = !canPlay || row < 0;
  button(".call-all-again").disabled = !canPlay || row < 0;
  button(".call-show").disabled = !isReady;
  button(".call-next").disabled = at === calls.length - 1;
  button(".call-show").textContent = say(part(".call-answer").hidden ? "show-answer" : "hide-answer");
  write();
}

/** The row that is on, or in the prompter its words. */
function write() {
  const call = calls[at];
  const isPrompter = ticked(".call-prompter");
  const line = row < 0 ? call.opening : call.rows[row];
  const now = part(".call-now");
  now.textContent = isPrompter ? line.shown : row < 0 ? "" : say("row", row + 1, call.rows.length);
  now.lang = isPrompter ? call.language : document.documentElement.lang;
  now.classList.toggle("is-prompter", isPrompter);
}

/** Tells other parts of the page how far a call is. @param {"begin" | "open" | "reveal"} move */
function turn(move) {
  document.dispatchEvent(new CustomEvent("call-turn", { detail: { move, problem: at } }));
}

/** @param {number} from @param {boolean} only */
function play(from, only) {
  if (from < 0) {
    turn("begin");
  }
  isUnderWay = true;
  const how = { only, voice: !ticked(".call-prompter"), ticks: ticked(".call-metronome") };
  player.play(from, how).then(() => show("calling"));
}

/** @param {number} now @param {number} gone @param {number} clock */
function tell(now, gone, clock) {
  part(".call-bar span").style.transform = `scaleX(${Math.min(1, Math.max(0, gone))})`;
  if (now !== row) {
    row = now;
    document.dispatchEvent(new CustomEvent("call-row", { detail: { row: now + 1, clock } }));
    show("calling");
  }
}

/** @param {number} last */
function stopped(last) {
  row = last;
  isUnderWay = last < calls[at].rows.length - 1;
  part(".call-bar span").style.transform = "scaleX(0)";
  isUnderWay ? show("paused", last + 2) : show("over");
  document.dispatchEvent(new CustomEvent("call-said", { detail: { rows: last + 1 } }));
  if (!isUnderWay) {
    turn("open");
  }
}

part(".call-start").addEventListener("click", () => {
  if (player.isRunning) {
    player.pause();
    show("calling");
  } else {
    play(isUnderWay ? row + 1 : -1, false);
  }
});
part(".call-row-again").addEventListener("click", () => play(row, true));
part(".call-all-again").addEventListener("click", () => {
  row = -1;
  play(-1, false);
});
part(".call-show").addEventListener("click", () => {
  const answer = part(".call-answer");
  answer.hidden = !answer.hidden;
  part(".call-answer-number").textContent = calls[at].answer;
  part(".call-right").textContent = calls[at].right;
  button(".call-show").textContent = say(answer.hidden ? "show-answer" : "hide-answer");
  if (!answer.hidden) {
    turn("reveal");
  }
});
part(".call-next").addEventListener("click", () => {
  at++;
  open();
});
part(".call-prompter").addEventListener("change", () => {
  player.stop();
  isUnderWay = false;
  row = -1;
  show(isReady ? "ready" : "loading");
});
keepTally(page.round, words, () => at + 1);
open();
