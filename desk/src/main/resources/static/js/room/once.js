// @ts-check
// Which showings this page began and ended, also after it was loaded again: none is shown twice by
// itself, and one that was broken off does not count.

/** @param {string} room @param {{run: number, problem: number, times: number}} turn */
const key = (room, { run, problem, times }) => `shown-${room}-${run}-${problem}-${times}`;

/** @param {string} room @param {{run: number, problem: number, times: number}} turn @returns {'' | 'begun' | 'exact' | 'spoiled'} */
export const known = (room, turn) => /** @type {any} */ (sessionStorage.getItem(key(room, turn)) ?? '');

/** @param {string} room @param {{run: number, problem: number, times: number}} turn @param {'begun' | 'exact' | 'spoiled'} how */
export const note = (room, turn, how) => sessionStorage.setItem(key(room, turn), how);
