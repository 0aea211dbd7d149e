// @ts-check
// A button beside a password shows what is typed, and hides it again.

for (const button of document.querySelectorAll("button[data-shows]")) {
  const field = document.getElementById(button.getAttribute("data-shows") ?? "");
  if (field instanceof HTMLInputElement && button instanceof HTMLButtonElement) {
    button.hidden = false;
    button.addEventListener("click", () => {
      const shown = field.type === "text";
      field.type = shown ? "password" : "text";
      button.setAttribute("aria-pressed", String(!shown));
    });
    // A field that shows its text would be kept by the browser as one of the plain ones.
    field.form?.addEventListener("submit", () => {
      field.type = "password";
    });
  }
}
