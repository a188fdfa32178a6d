/** The button that puts the course together, and what it says meanwhile. Without script it stays hidden. */
import { howFar, NOT_WHOLE } from "#words/booklet.ts";

export function startBooklet(document: Document): void {
  const contents = document.querySelector<HTMLElement>("#contents");
  const body = document.querySelector<HTMLElement>("#chapters");
  const button = document.querySelector<HTMLButtonElement>("#put-together");
  const status = document.querySelector<HTMLElement>("#how-far");
  if (!contents || !body || !button || !status) throw new Error("booklet: found no contents, or no place for chapters");
  button.hidden = false;
  button.addEventListener("click", async () => {
    button.disabled = true;
    try {
      const { putTogether } = await import("./put-together.ts");
      const onDone = (chapters: number, of: number) => {
        status.textContent = howFar(chapters, of);
      };
      await putTogether({ contents, body, onDone });
      document.documentElement.dataset.booklet = "whole";
    } catch {
      status.textContent = NOT_WHOLE;
    }
  });
}
