/** Terms under a finger: the first tap shows the meaning, the next one follows the link; Escape puts it away. */

const OPEN = "open";

export function startTerms(document: Document): void {
  const closeAll = (besides?: Element) => {
    for (const one of document.querySelectorAll(`.term.${OPEN}`)) if (one !== besides) one.classList.remove(OPEN);
  };
  let touched = false;
  document.addEventListener("pointerdown", ({ pointerType }) => {
    touched = pointerType === "touch";
  });
  document.addEventListener("click", (event) => {
    const term = (event.target as Element).closest(".term");
    closeAll(term ?? undefined);
    const first = term && !term.classList.contains(OPEN);
    if (!first || !touched) return;
    term.classList.add(OPEN);
    event.preventDefault();
  });
  document.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape") return;
    closeAll();
    for (const one of document.querySelectorAll(".term")) one.classList.add("away");
  });
  // What was put away may come again with the next hover or focus.
  for (const wake of ["pointerover", "focusin"])
    document.addEventListener(wake, (event) => {
      (event.target as Element).closest?.(".term")?.classList.remove("away");
    });
}
