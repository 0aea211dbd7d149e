// @ts-check
// Enter goes on to the next field instead of sending the form; after the last one it goes to
// the button that sends it.

for (const list of document.querySelectorAll("[data-next-field]")) {
  const fields = [...list.querySelectorAll("input")];
  fields.forEach((field, index) => {
    field.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || event.isComposing) {
        return;
      }
      event.preventDefault();
      const next = fields[index + 1];
      if (next) {
        next.focus();
        next.select();
      } else {
        field.form?.querySelector("button")?.focus();
      }
    });
  });
  fields.find((field) => field.value === "")?.focus({ preventScroll: true });
}
