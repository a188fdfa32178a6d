/** The search form: asks the index and lists what it finds, grouped by kind of page. Without script the form stays hidden. */
import { ask, isEmpty } from "./ask.ts";
import { loadIndex } from "./pagefind.ts";
import { addressOf, fillIn, questionIn } from "./question-address.ts";
import { sectionsOf } from "./show-found.ts";
import { told } from "./told.ts";
import { walkByKeys } from "./walk.ts";

export function startSearch(document: Document): void {
  const form = document.querySelector<HTMLFormElement>("#search");
  const status = document.querySelector<HTMLElement>("#found");
  const results = document.querySelector<HTMLElement>("#results");
  if (!form || !status || !results) throw new Error("search page: found no form or no place for results");
  const field = form.elements.namedItem("q") as HTMLInputElement;
  /** Counts the questions, so that a slow answer never overwrites a newer one. */
  let asked = 0;

  const answer = async () => {
    const question = questionIn(form);
    asked += 1;
    const mine = asked;
    window.history.replaceState(null, "", addressOf(question, window.location.href));
    if (isEmpty(question)) {
      status.textContent = "";
      results.replaceChildren();
      return;
    }
    status.textContent = "Searching …";
    try {
      const index = await loadIndex(form.dataset.base ?? "/");
      const { terms, groups } = await ask(index, question);
      const sections = await sectionsOf(document, groups);
      if (mine !== asked) return;
      status.textContent = told(
        groups.reduce((sum, { count }) => sum + count, 0),
        question,
        terms,
      );
      results.replaceChildren(...sections);
    } catch {
      if (mine === asked) {
        results.replaceChildren();
        status.textContent = "The search index could not be loaded. The list below holds every page.";
      }
    }
  };

  fillIn(form, document.location.search);
  const narrow = form.querySelector("details");
  if (narrow) narrow.open = [...narrow.querySelectorAll("select")].some(({ value }) => value !== "");
  form.hidden = false;
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void answer();
  });
  for (const select of form.querySelectorAll("select")) select.addEventListener("change", () => void answer());
  walkByKeys(document, field, results);
  if (!isEmpty(questionIn(form))) void answer();
}
