// @ts-check
// One performance of a showing on a stage: measures the screen, draws and looks at everything
// beforehand, counts in, and runs. Whoever asks is told what was really shown.

import { beadWriter } from './beads.js';
import { figureWriter } from './figures.js';
import { fieldOf, isSafe, tallestRow, UNKNOWN_FIELD } from './flash.js';
import { layers } from './layers.js';
import { measureRefresh } from './refresh.js';
import { Run } from './run.js';
import { schedule } from './schedule.js';
import { COUNT_MARKS, countIn, FlashLook } from './showing.js';

/** @typedef {import('./flash.js').Field} Field */
/** @typedef {import('./schedule.js').Schedule} Schedule */
/** What is shown: times in milliseconds, widths in centimetres and NaN where nobody told.
 * @typedef {{texts: readonly string[], period: number, shown: number, anySize: boolean, beads: boolean,
 *   screenWidth: number, nearest: number}} Asked */
/** What came of it: why it broke off, or the run, whether its true times were safe, and whether it counts.
 * @typedef {{broken: '' | 'unsafe' | 'hidden' | 'resized' | 'stopped', run?: Run,
 *   refresh: import('./refresh.js').Refresh, safe: boolean, exact: boolean}} Performed */

/** What a person sees at a glance of a screen held in the hands, in CSS pixels: a tablet or a telephone. @type {Field} */
const IN_HAND = { width: 314, height: 235 };
const SMALL_SCREEN = 1280;

/** The page changes no sooner than a second after the last number, so that it is not counted with them. */
const REST = 1000;

/** @param {Asked} asked @returns {Field} */
function field(asked) {
  if (!Number.isNaN(asked.nearest)) {
    return fieldOf(asked.nearest * 10, asked.screenWidth * 10, screen.width, screen.height);
  }
  return Math.max(screen.width, screen.height) < SMALL_SCREEN ? IN_HAND : UNKNOWN_FIELD;
}

/** Everything drawn and looked at before the first number. @param {HTMLElement} stage @param {Asked} asked @param {number} hertz */
function ready(stage, asked, hertz) {
  const { texts } = asked;
  const room = { width: stage.clientWidth * 0.94, height: stage.clientHeight * 0.8 };
  const style = getComputedStyle(stage);
  const seen = field(asked);
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

/** Runs a schedule over layers. Stops where the page is hidden or its size changes, Escape is pressed
 * or the stage is touched. @param {HTMLElement} stage
 * @param {Schedule} plan @param {readonly HTMLCanvasElement[]} shown @returns {Promise<{run: Run, broken: Performed['broken']}>} */
function play(stage, plan, shown) {
  return new Promise((tell) => {
    /** @type {Performed['broken']} */
    let broken = '';
    const run = new Run(plan, (number, seen) => {
      const layer = shown[number];
      if (layer) {
        layer.style.opacity = seen ? '1' : '0';
      }
    });
    const stopping = new AbortController();
    /** @param {'hidden' | 'resized' | 'stopped'} why */
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

/** @param {HTMLElement} stage @param {Asked} asked @param {() => void} begins told right before the count-in
 * @returns {Promise<Performed>} */
export async function perform(stage, asked, begins) {
  document.body.classList.add('on-stage');
  await document.fonts.load('700 100px "Desk Gothic"', '0123456789');
  const refresh = await measureRefresh();
  const made = ready(stage, asked, refresh.hertz);
  /** @param {Performed['broken']} broken @returns {Performed} */
  const leave = (broken) => {
    stage.replaceChildren();
    document.body.classList.remove('on-stage');
    return { broken, refresh, safe: broken !== 'unsafe', exact: false };
  };
  if (!made.safe) {
    return leave('unsafe');
  }
  if (document.hidden) {
    return leave('hidden');
  }
  begins();
  const counted = await play(stage, countIn(refresh.hertz), made.marks);
  const showing = counted.broken ? counted : await play(stage, made.plan, made.numbers);
  if (showing.broken) {
    return leave(showing.broken);
  }
  await wait(REST);
  const { run } = showing;
  const safe = isSafe(made.look.at(run.told).verdict);
  return { ...leave(''), run, safe, exact: run.account().exact && safe };
}
