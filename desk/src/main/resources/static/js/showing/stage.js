// @ts-check
// The stage: makes a showing ready, runs it, asks for the answer, and tells what was really shown.

import { grouped } from './figures.js';
import { perform } from './perform.js';

/** @typedef {import('./run.js').Run} Run */

/** @param {string} id */
function part(id) {
  const found = document.getElementById(id);
  if (!found) {
    throw new Error(`No part named ${id}.`);
  }
  return found;
}

const stage = part('stage');
const status = part('showing-status');
const asked = {
  texts: (stage.dataset.numbers ?? '').split(' '),
  period: Number(stage.dataset.period),
  shown: Number(stage.dataset.shown),
  anySize: stage.dataset.anySize === 'true',
  beads: stage.dataset.look === 'frame',
  screenWidth: parseFloat(stage.dataset.screenWidth ?? ''),
  nearest: parseFloat(stage.dataset.nearest ?? ''),
};
const { texts } = asked;

/** @param {string} name @param {...(string | number)} values */
const say = (name, ...values) =>
  (part('showing-words').dataset[name] ?? '').replace(/\{(\d)\}/g, (_, i) => String(values[Number(i)] ?? ''));

/** @param {number} value */
const tenths = (value) => value.toFixed(1);

async function show() {
  status.textContent = say('ready');
  part('after').hidden = true;
  const performed = await perform(stage, asked, () => (status.textContent = ''));
  if (!performed.run) {
    status.textContent = say(performed.broken);
    return;
  }
  tellAccount(performed.run, performed.refresh, performed.safe);
  part('before').hidden = true;
  part('after').hidden = false;
  part('answer').focus();
}

/** @param {Run} run @param {import('./refresh.js').Refresh} refresh @param {boolean} safe */
function tellAccount(run, refresh, safe) {
  const account = run.account();
  const worst = account.lines.find((line) => !line.exact);
  const lines = [say('account', account.lines.length, tenths(account.perSecond), tenths(refresh.hertz))];
  if (worst) {
    lines.push(say('inexact', worst.number + 1, Math.round(worst.asked.lasted), Math.round(worst.got?.lasted ?? 0)));
  } else {
    lines.push(say('exact'));
  }
  lines.push(...(refresh.steady ? [] : [say('unsteady')]), ...(refresh.slow ? [say('slow')] : []), ...(safe ? [] : [say('tooMuch')]));
  part('account').replaceChildren(...lines.map(paragraph));
  part('account').dataset.exact = String(account.exact && safe);
  part('times').replaceChildren(...account.lines.map((line) => row([
    String(line.number + 1),
    grouped(texts[line.number] ?? ''),
    `${Math.round(line.asked.on)}`,
    line.got ? `${Math.round(line.got.on)}` : '\u2013',
    `${Math.round(line.asked.lasted)}`,
    line.got ? `${Math.round(line.got.lasted)}` : '\u2013',
  ])));
}

/** @param {string} text */
function paragraph(text) {
  const made = document.createElement('p');
  made.textContent = text;
  return made;
}

/** @param {readonly string[]} cells */
function row(cells) {
  const made = document.createElement('tr');
  made.append(...cells.map((text) => Object.assign(document.createElement('td'), { textContent: text })));
  return made;
}

/** Marks the answer, or shows the right one where nothing is written. @param {HTMLFormElement} form */
async function mark(form) {
  const fields = new URLSearchParams(stage.dataset.answer ?? '');
  fields.set('answer', String(new FormData(form).get('answer') ?? ''));
  const reply = await fetch('/showing/answer', { method: 'POST', body: fields }).catch(() => undefined);
  if (!reply?.ok) {
    part('verdict').textContent = say('unmarked');
    return;
  }
  const told = await reply.json();
  const verdict = told.unclear ?? (told.right ? say('right', told.answer) : told.written ? say('wrong', told.answer) : say('answer', told.answer));
  part('verdict').textContent = verdict;
  part('verdict').className = told.right ? 'verdict right' : 'verdict';
  part('rows').hidden = Boolean(told.unclear);
}

part('start').addEventListener('click', () => void show());
part('again').addEventListener('click', () => {
  part('verdict').textContent = '';
  part('rows').hidden = true;
  void show();
});
part('answer-form').addEventListener('submit', (event) => {
  event.preventDefault();
  void mark(/** @type {HTMLFormElement} */ (event.currentTarget));
});
part('whole-screen').addEventListener('click', () => void document.documentElement.requestFullscreen?.().catch(() => undefined));
