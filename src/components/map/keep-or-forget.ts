/** The buttons under the map that save the marks as a file and forget them. */
import { FORGOTTEN, NOT_FORGOTTEN } from "#words/practised.ts";
import { clear, exportAll, readAll } from "../progress.ts";
import { showPractised } from "./show-practised.ts";

export function keepOrForget(document: Document): void {
  const place = document.querySelector<HTMLElement>("#practised-all");
  const status = place?.querySelector("[role=status]");
  if (!place || !status) return;
  place.hidden = readAll().length === 0;
  place.querySelector("#practised-save")?.addEventListener("click", () => {
    const address = URL.createObjectURL(new Blob([exportAll()], { type: "application/json" }));
    const anchor = document.createElement("a");
    anchor.href = address;
    anchor.download = "ionwright-practised.json";
    anchor.click();
    URL.revokeObjectURL(address);
  });
  place.querySelector("#practised-forget")?.addEventListener("click", () => {
    status.textContent = clear() ? FORGOTTEN : NOT_FORGOTTEN;
    showPractised(document);
  });
}
