/**
 * Starts the page. It has nothing to show before its script runs, so it does without the element that wakes an island: what it is given stands
 * as plain data beside its place.
 */
import { render } from "preact";
import OwnPaper, { type Given } from "./OwnPaper.tsx";

export function startOwnPaper(page: Document): void {
  const place = page.querySelector("#own-paper");
  const given = page.querySelector("#own-paper-given")?.textContent;
  if (place && given) render(<OwnPaper {...(JSON.parse(given) as Given)} />, place);
}
