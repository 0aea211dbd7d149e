// @ts-check
// The keys of the player. They act only while the player has the focus (WCAG 2.2, 2.1.4), and never
// where a key has a use of its own, such as space on a button.

/** @type {Record<string, string>} */
const KEYS = { ' ': 'play', ArrowRight: 'step', ArrowLeft: 'back', Home: 'start', End: 'end' };

/** @param {HTMLElement} root @param {Record<string, () => void>} acts */
export function takeKeys(root, acts) {
  root.addEventListener('keydown', (event) => {
    const act = KEYS[event.key];
    const own = event.key === ' ' ? 'button, a, input, select' : 'select';
    if (!act || event.ctrlKey || event.altKey || event.metaKey) return;
    if (/** @type {Element} */ (event.target).closest(own)) return;
    event.preventDefault();
    acts[act]();
  });
}
