/**
 * The keyboard: from the field down into what was found, up again, Escape back to the field; "/" goes to the field. Enter is the browser's.
 * Keys that belong to something else, a list of choices or a text being typed, stay with it.
 */
export function walkByKeys(document: Document, field: HTMLInputElement, results: HTMLElement): void {
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
    const at = document.activeElement;
    const inResults = results.contains(at);
    const nowhere = at === null || at === document.body || at.id === "content";
    if (event.key === "/" && (inResults || nowhere)) {
      event.preventDefault();
      field.select();
      field.focus();
      return;
    }
    if (event.key === "Escape" && inResults) {
      event.preventDefault();
      field.focus();
      return;
    }
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step === undefined || !(inResults || at === field)) return;
    const stops = [field, ...results.querySelectorAll<HTMLElement>("a, button:not([hidden])")];
    const next = stops[stops.indexOf(at as HTMLElement) + step];
    if (!next) return;
    event.preventDefault();
    next.focus();
  });
}
