// @ts-check
// Puts a chosen file into the text field that it is meant for, where it can be looked at and mended.

for (const part of document.querySelectorAll("[data-with-script]")) {
  part.removeAttribute("hidden");
}

for (const chooser of document.querySelectorAll("input[type=file][data-into]")) {
  if (chooser instanceof HTMLInputElement) {
    chooser.addEventListener("change", () => read(chooser));
  }
}

/** @param {HTMLInputElement} chooser */
async function read(chooser) {
  const text = document.getElementById(chooser.dataset.into ?? "");
  const file = chooser.files?.[0];
  if (text instanceof HTMLTextAreaElement && file) {
    text.value = await file.text();
    text.focus();
  }
}
