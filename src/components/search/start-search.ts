/** The search form: asks the index and lists what it finds, grouped by kind of page. Without script the form stays hidden. */
import * as say from "#words/search.ts";
import { ask, isEmpty, type Question } from "./ask.ts";
import { nearest, wordsKnown } from "./nearest.ts";
import { loadIndex } from "./pagefind.ts";
import { addressOf, fillIn, questionIn } from "./question-address.ts";
import { sectionsOf } from "./show-found.ts";
import { told } from "./told.ts";
import { walkByKeys } from "./walk.ts";

/** What pages, ions and reagents are called, as the page of search lists them. */
const namesIn = (document: Document): string[] =>
  [...document.querySelectorAll("#search option, .columns a")].map(({ textContent }) => textContent ?? "");

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
    status.textContent = say.SEARCHING;
    try {
      const index = await loadIndex(form.dataset.base ?? "/");
      const found = async (of: Question) => {
        const { terms, groups } = await ask(index, of);
        const sections = await sectionsOf(document, groups);
        return {
          sections,
          says: told(
            groups.reduce((sum, { count }) => sum + count, 0),
            of,
            terms,
          ),
        };
      };
      const exactly = await found(question);
      const meant = exactly.sections.length === 0 ? nearest(question.q, wordsKnown(namesIn(document))) : undefined;
      const instead = meant === undefined ? undefined : await found({ ...question, q: meant });
      if (mine !== asked) return;
      const shown = instead && instead.sections.length > 0 ? instead : exactly;
      status.textContent = shown === exactly ? exactly.says : say.instead(question.q, shown.says);
      results.replaceChildren(...shown.sections);
    } catch {
      if (mine === asked) {
        results.replaceChildren();
        status.textContent = say.NOT_LOADED;
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
