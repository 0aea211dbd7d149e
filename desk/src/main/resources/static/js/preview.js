// @ts-check
// Shows the problems of a wish while it is being typed: asks the server for the page that the form
// would show, and takes the parts marked data-live from it.

const PAUSE = 250;

/** @type {number | undefined} */
let waiting;
/** @type {AbortController | undefined} */
let running;

for (const form of document.querySelectorAll("form[data-preview]")) {
  if (form instanceof HTMLFormElement) {
    form.addEventListener("input", (event) => {
      if (event.target instanceof HTMLElement && !("noPreview" in event.target.dataset)) {
        clearTimeout(waiting);
        waiting = window.setTimeout(() => show(form), PAUSE);
      }
    });
    form.addEventListener("submit", (event) => {
      if (event.submitter instanceof HTMLButtonElement && "inPlace" in event.submitter.dataset) {
        event.preventDefault();
        show(form, event.submitter);
      }
    });
    form.querySelectorAll("[data-without-script]").forEach((part) => part.toggleAttribute("hidden", true));
  }
}

/** @param {HTMLFormElement} form @param {HTMLButtonElement} [pressed] a button that asks for others */
async function show(form, pressed) {
  clearTimeout(waiting);
  running?.abort();
  running = new AbortController();
  const wish = fields(form);
  if (pressed) {
    wish.append(pressed.name, pressed.value);
  }
  try {
    const reply = await fetch(`${form.action}?${wish}`, { signal: running.signal });
    const page = new DOMParser().parseFromString(await reply.text(), "text/html");
    document.querySelectorAll("[data-live]").forEach((part) => renew(part, page));
    keepAddress(`${form.action}?${fields(form)}`);
    if (pressed && !pressed.isConnected) {
      pressedAgain(pressed)?.focus({ preventScroll: true });
    }
  } catch {
    // Stopped by the next change, or the server is gone; the buttons of the form still tell.
  }
}

/** @param {HTMLFormElement} form */
function fields(form) {
  const wish = new URLSearchParams();
  for (const [name, value] of new FormData(form)) {
    if (name !== "template") {
      wish.append(name, String(value));
    }
  }
  return wish;
}

/** The button that stands where the one that was pressed stood before.
 * @param {HTMLButtonElement} pressed */
function pressedAgain(pressed) {
  const name = CSS.escape(pressed.name);
  const again = document.querySelector(`button[name="${name}"][value="${CSS.escape(pressed.value)}"]`);
  return again instanceof HTMLElement ? again : undefined;
}

/**
 * @param {Element} part
 * @param {Document} page
 */
function renew(part, page) {
  const fresh = page.getElementById(part.id);
  const isBeingChosen = part.contains(document.activeElement) && part.querySelector("select");
  if (!fresh || isBeingChosen || fresh.innerHTML === part.innerHTML) {
    return;
  }
  part.replaceChildren(...fresh.childNodes);
  const field = document.getElementById(part.id.replace(/-note$/, ""));
  if (field instanceof HTMLInputElement) {
    if (part.textContent?.trim()) {
      field.setAttribute("aria-invalid", "true");
    } else {
      field.removeAttribute("aria-invalid");
    }
  }
}

/** The wish stays in the address, so that reloading or another language keeps it.
 * @param {string} address */
function keepAddress(address) {
  history.replaceState(null, "", address);
  const back = document.querySelector("form.languages input[name=back]");
  if (back instanceof HTMLInputElement) {
    const { pathname, search } = new URL(address, location.href);
    back.value = pathname + search;
  }
}
