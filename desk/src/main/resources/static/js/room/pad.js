// @ts-check
// The number pad: writes into the answer that is being worked on.

/** What a key writes. @type {Record<string, string>} */
const WRITES = { comma: ',', point: '.', minus: '-', remainder: ' r ' };

/**
 * @param {HTMLElement} pad
 * @param {{field: () => HTMLInputElement | undefined, moved: (move: 'before' | 'after') => void,
 *   wrote: () => void}} to
 */
export function listenToPad(pad, to) {
  pad.addEventListener('click', (event) => {
    const key = /** @type {HTMLElement} */ (event.target).closest('button')?.dataset.key;
    if (!key) return;
    if (key === 'before' || key === 'after') {
      to.moved(key);
      return;
    }
    const field = to.field();
    if (!field || field.readOnly) return;
    const { selectionStart, selectionEnd, value } = field;
    const start = selectionStart ?? value.length;
    const end = selectionEnd ?? value.length;
    if (key === 'back') {
      const from = start === end ? Math.max(0, start - 1) : start;
      field.setRangeText('', from, end, 'end');
    } else if (value.length - (end - start) < field.maxLength) {
      field.setRangeText(WRITES[key] ?? key, start, end, 'end');
    }
    to.wrote();
  });
}

/** Shows the keys that the round needs. @param {HTMLElement} pad @param {boolean} minus @param {boolean} remainder */
export function needs(pad, minus, remainder) {
  for (const [key, isNeeded] of Object.entries({ minus, remainder })) {
    /** @type {HTMLElement} */ (pad.querySelector(`[data-key=${key}]`)).hidden = !isNeeded;
  }
}
