/** Puts the marks of what was practised into the lists and the map. */
import { read } from "../progress.ts";
import { practisedWords } from "./practised-words.ts";

export function showPractised(document: Document): void {
  for (const place of document.querySelectorAll<HTMLElement>("[data-practised]")) {
    const found = read(place.dataset.practised ?? "");
    place.hidden = found === undefined;
    place.textContent = found ? `✓ ${practisedWords(found)}` : "";
  }
}
