// @ts-check
// The count of a round by raised hands: pure functions, and a form that notes it. Other ways of
// answering can send their count as the event `call-hands` with the number in `detail`, or all
// notes so far as the event `call-notes`.

/** @typedef {{ call: number, hands: number }} Note */

/** What a note settles: the places of those who dropped out at it.
 * @param {Note[]} notes @param {number} at
 * @returns {[number, number] | undefined} the first and the last place, if any is settled */
export function settled(notes, at) {
  const before = at > 0 ? notes[at - 1].hands : 0;
  const hands = notes[at].hands;
  return at > 0 && hands > 0 && hands < before ? [hands + 1, before] : undefined;
}

/** The most hands that the next note can have; nothing bounds the first.
 * @param {Note[]} notes @param {boolean} isRound */
export function most(notes, isRound) {
  const standing = notes.filter((note) => note.hands > 0);
  return isRound && standing.length > 0 ? standing[standing.length - 1].hands : 999;
}

/** @param {string} round @param {Record<string, string>} words @param {() => number} call */
export function keepTally(round, words, call) {
  const isRound = round !== "none";
  const place = `call-hands ${location.pathname}${location.search}`;
  const form = /** @type {HTMLFormElement | null} */ (document.querySelector(".call-count"));
  const field = /** @type {HTMLInputElement} */ (document.querySelector("#hands"));
  const wrong = /** @type {HTMLElement} */ (document.querySelector("#hands-note"));
  /** @type {Note[]} */
  let notes = JSON.parse(sessionStorage.getItem(place) ?? "[]");

  /** @param {number} hands */
  function note(hands) {
    const bound = most(notes, isRound);
    if (!Number.isInteger(hands) || hands < 0 || hands > bound) {
      wrong.textContent = words["hands.wrong"].replace("{0}", String(bound));
      field.setAttribute("aria-invalid", "true");
      return;
    }
    wrong.textContent = "";
    field.removeAttribute("aria-invalid");
    field.value = "";
    notes = [...notes, { call: call(), hands }];
    show();
  }

  function show() {
    sessionStorage.setItem(place, JSON.stringify(notes));
    const list = /** @type {HTMLElement} */ (document.querySelector(".call-tally"));
    list.replaceChildren(...notes.map((_, at) => line(at)));
    const outcome = /** @type {HTMLElement} */ (document.querySelector(".call-outcome"));
    outcome.textContent = isRound && notes.length > 1 ? ending() : "";
  }

  /** @param {number} at */
  function line(at) {
    const { call: number, hands } = notes[at];
    const key = !isRound ? "hands.right" : at === 0 ? "hands.begin" : "hands.left";
    const item = document.createElement("li");
    item.textContent = words[key].replace("{0}", String(number)).replace("{1}", String(hands));
    const places = round === "best" ? settled(notes, at) : undefined;
    if (places) {
      const [first, last] = places.map(String);
      const text = words[first === last ? "hands.place" : "hands.places"];
      item.append(" (", text.replace("{0}", first).replace("{1}", last), ")");
    }
    return item;
  }

  function ending() {
    const hands = notes[notes.length - 1].hands;
    if (hands === 0) {
      return words["hands.nobody"].replace("{0}", String(most(notes, isRound)));
    }
    return hands === 1 ? words["hands.one"] : "";
  }

  form?.addEventListener("submit", (event) => {
    event.preventDefault();
    const written = field.value.normalize("NFKC").trim();
    note(/^\d{1,3}$/.test(written) ? Number(written) : Number.NaN);
  });
  document.querySelector(".call-forget")?.addEventListener("click", () => {
    notes = [];
    show();
  });
  document.addEventListener("call-notes", (event) => {
    notes = /** @type {CustomEvent} */ (event).detail;
    show();
  });
  document.addEventListener("call-hands", (event) => note(Number(/** @type {CustomEvent} */ (event).detail)));
  show();
}
