/** The question in the address, so that it can be sent to somebody, and in the form. */
import type { Question } from "./ask.ts";
import { FACETS } from "./facets.ts";

const NAMES = ["q", "kind", ...FACETS] as const;

/** What the form holds now. */
export function questionIn(form: HTMLFormElement): Question {
  const data = new FormData(form);
  return Object.fromEntries(NAMES.map((name) => [name, String(data.get(name) ?? "").trim()])) as Question;
}

/** Puts what the address says into the form. A value the form does not offer is left out. */
export function fillIn(form: HTMLFormElement, search: string): void {
  const asked = new URLSearchParams(search);
  for (const name of NAMES) {
    const field = form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement;
    field.value = asked.get(name) ?? "";
    if (field instanceof HTMLSelectElement && field.selectedIndex < 0) field.value = "";
  }
}

/** The address with the question in it. */
export function addressOf(question: Question, address: string): string {
  const url = new URL(address);
  for (const name of NAMES) {
    if (question[name]) url.searchParams.set(name, question[name]);
    else url.searchParams.delete(name);
  }
  return url.href;
}
