/**
 * The marks of the evidence answer: the one chosen, by tap or with the arrow keys, has its reason in the line under its table. The keys also
 * come to how each ion stands, at the end of its row, which holds its reason itself. Added to the
 * tables as they stand in the page, so that those built into it answer as well and no mark is drawn anew.
 * Keys as the grid pattern of the ARIA Authoring Practices Guide has them: one stop of the Tab key for each table, arrows, Home and End.
 */
import { mark as aboutMark } from "#words/mark-reason.ts";
import { rich } from "../sentence.ts";
import type { Recorded } from "./finding.ts";
import { reasonOfMark } from "./mark-reason.ts";

type Mark = HTMLTableCellElement;

const CELL = ".matrix td";
const MARK = `${CELL}:not(.why)`;

/** Steps over rows and columns. */
const STEPS: Record<string, readonly [down: number, right: number]> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

const tableOf = (mark: Mark) => mark.closest("table") as HTMLTableElement;
const cellOf = (target: EventTarget | null | undefined, which = CELL) =>
  target instanceof Element ? target.closest<Mark>(which) : null;
const markOf = (target: EventTarget | null | undefined) => cellOf(target, MARK);
const cellsIn = (within: Element, which = "td") => [...within.querySelectorAll<Mark>(which)].filter(isDrawn);
/** A narrow page leaves out the marks that say nothing. */
const isDrawn = (mark: Element) => mark.getClientRects().length > 0;
const stopOf = (table: Element) => table.querySelector<Mark>("td[tabindex='0']");

/** Where a key leads from a mark; undefined for another key, or at the edge. */
function next(mark: Mark, key: string): Mark | undefined {
  if (key === "Home" || key === "End") return cellsIn(mark.parentElement as Element).at(key === "Home" ? 0 : -1);
  const [down, right] = STEPS[key] ?? [0, 0];
  if (!down && !right) return undefined;
  const rows = [...tableOf(mark).rows];
  let row = rows.indexOf(mark.parentElement as HTMLTableRowElement);
  let column = mark.cellIndex;
  for (;;) {
    row += down;
    column += right;
    const cell = rows[row]?.cells[column];
    if (!cell?.matches(CELL)) return undefined;
    if (isDrawn(cell)) return cell as Mark;
  }
}

/** The Tab key stops at one mark of a table: the one chosen last, else the first that is drawn. */
function stopAt(mark: Mark | undefined, table: Element) {
  const before = stopOf(table);
  if (!mark || before === mark) return;
  before?.setAttribute("tabindex", "-1");
  mark.tabIndex = 0;
}

/**
 * Makes the marks in `section` answer from this record.
 * @param tapped what was tapped before this could answer
 * @returns takes it back: reasons given are those of a record that is no more
 */
export function answerMarks(section: HTMLElement, of: Recorded, tapped?: EventTarget | null): () => void {
  const tables = [...section.querySelectorAll(".matrix")];

  const choose = (mark: Mark) => {
    const table = tableOf(mark);
    const under = table.closest(".evidence")?.querySelector(".because");
    const { sample = "" } = table.dataset;
    const { ion = "" } = (mark.parentElement as HTMLElement).dataset;
    const test = mark.dataset.head;
    stopAt(mark, table);
    table.querySelector("[aria-selected]")?.removeAttribute("aria-selected");
    mark.setAttribute("aria-selected", "true");
    if (!under) return;
    if (test === undefined) {
      under.textContent = "";
      return;
    }
    const { word, why } = reasonOfMark(of, sample, ion, test);
    under.innerHTML = `<b>${rich(aboutMark(ion, test, word))}</b> ${rich(why)}`;
  };
  const onFocus = ({ target }: FocusEvent) => {
    const cell = cellOf(target);
    if (cell) return choose(cell);
    // The Tab key comes to a table by the region it scrolls in; on a narrow page the mark it would stop at may be left out.
    for (const table of tables) if (target instanceof Element && target.contains(table)) makeStop(table);
  };
  const onClick = ({ target }: Event) => {
    const mark = markOf(target);
    if (mark) focus(mark);
  };
  const onKey = (event: KeyboardEvent) => {
    const cell = cellOf(event.target);
    const to = cell && !event.altKey && !event.ctrlKey && !event.metaKey && next(cell, event.key);
    if (!to) return;
    event.preventDefault();
    focus(to);
  };

  for (const table of tables) {
    table.setAttribute("role", "grid");
    if (!stopOf(table)) stopAt(table.querySelector<Mark>("td") ?? undefined, table);
  }
  section.addEventListener("focusin", onFocus);
  section.addEventListener("click", onClick);
  section.addEventListener("keydown", onKey);
  const first = markOf(tapped);
  if (first && section.contains(first)) focus(first);
  return () => {
    section.removeEventListener("focusin", onFocus);
    section.removeEventListener("click", onClick);
    section.removeEventListener("keydown", onKey);
    for (const chosen of section.querySelectorAll("[aria-selected]")) chosen.removeAttribute("aria-selected");
    for (const under of section.querySelectorAll(".because")) under.textContent = "";
  };
}

function makeStop(table: Element) {
  const stop = stopOf(table);
  if (!stop || !isDrawn(stop)) stopAt(cellsIn(table, "td:not(.why)")[0], table);
}

/** Any mark can be focused, but the Tab key passes over it. */
function focus(mark: Mark) {
  if (!mark.hasAttribute("tabindex")) mark.tabIndex = -1;
  mark.focus();
}
