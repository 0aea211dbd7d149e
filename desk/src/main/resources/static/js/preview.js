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
    form.addEventListener("input", () => {
      clearTimeout(waiting);
      waiting = window.setTimeout(() => show(form), PAUSE);
    });
    form.querySelectorAll("[data-without-script]").forEach((part) => part.toggleAttribute("hidden", true));
  }
}

/** @param {HTMLFormElement} form */
async function show(form) {
  running?.abort();
  running = new AbortController();
  const wish = new URLSearchParams();
  for (const [name, value] of new FormData(form)) {
    wish.append(name, String(value));
  }
  const address = `${form.action}?${wish}`;
  try {
    const reply = await fetch(address, { signal: running.signal });
    const page = new DOMParser().parseFromString(await reply.text(), "text/html");
    document.querySelectorAll("[data-live]").forEach((part) => renew(part, page));
    keepAddress(address);
  } catch {
    // Stopped by the next change, or the server is gone; the buttons of the form still tell.
  }
}

/**
 * @param {Element} part
 * @param {Document} page
 */
function renew(part, page) {
  const fresh = page.getElementById(part.id);
  if (!fresh || fresh.innerHTML === part.innerHTML) {
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
