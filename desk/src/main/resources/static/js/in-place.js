// @ts-check
// Sends a form and renews the parts of the page marked data-live from the reply, so that the place
// on the page and the focus stay where they are. Where that fails, the browser sends the form.

for (const form of document.querySelectorAll("form[data-in-place]")) {
  if (form instanceof HTMLFormElement) {
    form.addEventListener("submit", (event) => {
      if ("inPlace" in form.dataset) {
        event.preventDefault();
        send(form, event.submitter);
      }
    });
  }
}

/** @param {HTMLFormElement} form @param {HTMLElement | null} pressed */
async function send(form, pressed) {
  const fields = new URLSearchParams();
  for (const [name, value] of new FormData(form, pressed)) {
    fields.append(name, String(value));
  }
  try {
    const reply = await fetch(form.action, { method: "POST", body: fields });
    if (!reply.ok) {
      throw new Error(reply.statusText);
    }
    const page = new DOMParser().parseFromString(await reply.text(), "text/html");
    document.querySelectorAll("[data-live]").forEach((part) => {
      const fresh = page.getElementById(part.id);
      if (fresh && fresh.innerHTML !== part.innerHTML) {
        part.replaceChildren(...fresh.childNodes);
      }
    });
    if (pressed instanceof HTMLButtonElement && !pressed.isConnected) {
      const again = `button[name="${CSS.escape(pressed.name)}"][value="${CSS.escape(pressed.value)}"]`;
      const button = document.querySelector(again);
      if (button instanceof HTMLElement) {
        button.focus({ preventScroll: true });
      }
    }
  } catch {
    delete form.dataset.inPlace;
    form.requestSubmit(pressed);
  }
}
