// @ts-check
// The stage: makes a showing ready, runs it, asks for the answer, and tells what was really shown.

import { beadWriter } from './beads.js';
import { figureWriter, grouped } from './figures.js';
import { fieldOf, isSafe, tallestRow, UNKNOWN_FIELD } from './flash.js';
import { layers } from './layers.js';
import { measureRefresh } from './refresh.js';
import { Run } from './run.js';
import { schedule } from './schedule.js';
import { COUNT_MARKS, countIn, FlashLook } from './showing.js';

/** @typedef {import('./flash.js').Field} Field */
/** @typedef {import('./schedule.js').Schedule} Schedule */

/** What a person sees at a glance of a screen held in the hands, in CSS pixels: a tablet or a telephone. @type {Field} */
const IN_HAND = { width: 314, height: 235 };
const SMALL_SCREEN = 1280;

/** The page changes no sooner than a second after the last number, so that it is not counted with them. */
const REST = 1000;

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
const { texts, ...asked } = {
  texts: (stage.dataset.numbers ?? '').split(' '),
  period: Number(stage.dataset.period),
  shown: Number(stage.dataset.shown),
  anySize: stage.dataset.anySize === 'true',
  beads: stage.dataset.look === 'frame',
  screenWidth: parseFloat(stage.dataset.screenWidth ?? ''),
  nearest: parseFloat(stage.dataset.nearest ?? ''),
};

/** @param {string} name @param {...(string | number)} values */
const say = (name, ...values) =>
  (part('showing-words').dataset[name] ?? '').replace(/\{(\d)\}/g, (_, i) => String(values[Number(i)] ?? ''));

/** @param {number} value */
const tenths = (value) => value.toFixed(1);

/** @returns {Field} */
function field() {
  if (!Number.isNaN(asked.nearest)) {
    return fieldOf(asked.nearest * 10, asked.screenWidth * 10, screen.width, screen.height);
  }
  return Math.max(screen.width, screen.height) < SMALL_SCREEN ? IN_HAND : UNKNOWN_FIELD;
}

/** Everything drawn and looked at before the first number. @param {number} hertz */
function ready(hertz) {
  const room = { width: stage.clientWidth * 0.94, height: stage.clientHeight * 0.8 };
  const style = getComputedStyle(stage);
  const seen = field();
  const tallest = asked.anySize ? Infinity : tallestRow(seen);
  const write = asked.beads ? beadWriter : figureWriter;
  const numbers = write(texts, tallest, room, style.color);
  const marks = figureWriter(COUNT_MARKS, tallestRow(seen), room, style.color);
  const look = new FlashLook({ numbers, marks }, texts, style.backgroundColor, seen);
  const plan = schedule({ hertz, period: asked.period, shown: asked.shown, count: texts.length, anySize: asked.anySize });
  stage.replaceChildren();
  return {
    look,
    plan,
    safe: [look.planned(plan), look.counted()].every((found) => isSafe(found.verdict)),
    numbers: layers(stage, texts, numbers),
    marks: layers(stage, COUNT_MARKS, marks),
  };
}

/** Runs a schedule over layers. Stops where the page is hidden or its size changes, or Escape is pressed.
 * @param {Schedule} plan @param {readonly HTMLCanvasElement[]} shown @returns {Promise<{run: Run, broken: string}>} */
function play(plan, shown) {
  return new Promise((tell) => {
    let broken = '';
    const run = new Run(plan, (number, seen) => {
      const layer = shown[number];
      if (layer) {
        layer.style.opacity = seen ? '1' : '0';
      }
    });
    const stopping = new AbortController();
    /** @param {string} why */
    const stop = (why) => {
      broken ||= why;
      run.stop();
    };
    const { signal } = stopping;
    document.addEventListener('visibilitychange', () => document.hidden && stop('hidden'), { signal });
    window.addEventListener('resize', () => stop('resized'), { signal });
    window.addEventListener('keydown', (event) => event.key === 'Escape' && stop('stopped'), { signal });
    stage.addEventListener('click', () => stop('stopped'), { signal });
    /** @param {number} now */
    const frame = (now) => {
      run.frame(now);
      if (run.ended) {
        stopping.abort();
        tell({ run, broken });
      } else {
        requestAnimationFrame(frame);
      }
    };
    requestAnimationFrame(frame);
  });
}

/** @param {number} millis */
const wait = (millis) => new Promise((go) => setTimeout(go, millis));

async function show() {
  document.body.classList.add('on-stage');
  status.textContent = say('ready');
  part('after').hidden = true;
  await document.fonts.load('700 100px "Desk Gothic"', '0123456789');
  const refresh = await measureRefresh();
  const made = ready(refresh.hertz);
  if (!made.safe) {
    leave(say('unsafe'));
    return;
  }
  status.textContent = '';
  const counted = await play(countIn(refresh.hertz), made.marks);
  const showing = counted.broken ? counted : await play(made.plan, made.numbers);
  if (showing.broken) {
    leave(say(showing.broken));
    return;
  }
  await wait(REST);
  stage.replaceChildren();
  tellAccount(showing.run, refresh, isSafe(made.look.at(showing.run.told).verdict));
  leave('');
  part('before').hidden = true;
  part('after').hidden = false;
  part('answer').focus();
}

/** @param {string} why */
function leave(why) {
  stage.replaceChildren();
  document.body.classList.remove('on-stage');
  status.textContent = why;
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
