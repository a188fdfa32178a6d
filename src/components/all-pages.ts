/** Every page of the collections, in the order in which lists print them. */
import { getCollection } from "astro:content";
import { LANGUAGE } from "#words/language.ts";
import { PAGE_KINDS as NAMES } from "#words/search.ts";
import { aboutPractical, LEVELS } from "#words/walkthrough.ts";
import { ANIONS, CATIONS } from "../engine/constants/ions.ts";
import { ionName } from "../engine/formula/ion-name.ts";
import { GASES } from "../engine/practical.ts";
import { capital } from "./capital.ts";
import { ionPath } from "./ions/ion-path.ts";
import { PAGE_KINDS, type PageKind } from "./search/facets.ts";

const isGas = (one: string): boolean => (GASES as readonly string[]).includes(one);

export interface ListedPage {
  path: string;
  title: string;
  says: string;
  note?: string;
}

export async function practicalPages(): Promise<ListedPage[]> {
  const entries = await getCollection("practicals");
  return entries
    .toSorted((a, b) => a.data.order - b.data.order)
    .map(({ id, data }) => ({
      path: `/practicals/${id}/`,
      title: data.title,
      says: data.summary,
      note: aboutPractical(LEVELS[data.level], data.minutes, data.samples.length),
    }));
}

/** The order in which kinds of tests are listed. */
const TEST_KINDS = ["cation", "anion", "other"];

/** Tests of one kind, or all tests. */
export async function ionTestPages(kind?: "cation" | "anion" | "other"): Promise<ListedPage[]> {
  const entries = await getCollection("ionTests", ({ data }) => kind === undefined || data.kind === kind);
  return entries
    .toSorted(
      (a, b) => TEST_KINDS.indexOf(a.data.kind) - TEST_KINDS.indexOf(b.data.kind) || a.data.order - b.data.order,
    )
    .map(({ id, data }) => ({
      path: `/ion-tests/${id}/`,
      title: data.title,
      says: data.summary,
      note: data.ions.join(", "),
    }));
}

/** Ions of one kind, or all, in the order of the constants. */
export async function ionPages(kind?: "cation" | "anion"): Promise<ListedPage[]> {
  const entries = await getCollection("ions");
  const order: readonly string[] = [...(kind === "anion" ? [] : CATIONS), ...(kind === "cation" ? [] : ANIONS)];
  return entries
    .filter(({ data }) => order.includes(data.ion))
    .toSorted((a, b) => order.indexOf(a.data.ion) - order.indexOf(b.data.ion))
    .map(({ data }) => ({
      path: ionPath(data.ion),
      title: `${capital(ionName(data.ion))}, ${data.ion}`,
      says: data.summary,
    }));
}

/** Cautions of one kind, or all, by title. A solution that gives its own gas off is listed with the gases as well. */
export async function cautionPages(kind?: "reagent" | "gas" | "operation"): Promise<ListedPage[]> {
  const entries = await getCollection(
    "cautions",
    ({ data }) => kind === undefined || data.kind === kind || (kind === "gas" && data.covers.some(isGas)),
  );
  return entries
    .toSorted((a, b) => a.data.title.localeCompare(b.data.title, LANGUAGE))
    .map(({ id, data }) => ({ path: `/cautions/${id}/`, title: data.title, says: data.summary, note: data.hazard }));
}

/** How to do the job, in the order of the job. */
export async function methodPages(): Promise<ListedPage[]> {
  const entries = await getCollection("method");
  return entries
    .toSorted((a, b) => a.data.order - b.data.order)
    .map(({ id, data }) => ({ path: `/method/${id}/`, title: data.title, says: data.summary }));
}

/** The pages of one kind under its name. */
export interface Shelf {
  kind: PageKind;
  name: string;
  pages: ListedPage[];
}

/** All pages that search finds, by kind. */
export async function shelves(): Promise<Shelf[]> {
  const pages: { [kind in PageKind]?: ListedPage[] } = {
    practical: await practicalPages(),
    "ion test": await ionTestPages(),
    ion: await ionPages(),
    method: await methodPages(),
    caution: await cautionPages(),
  };
  return PAGE_KINDS.flatMap((kind) => {
    const own = pages[kind];
    return own && own.length > 0 ? [{ kind, name: NAMES[kind], pages: own }] : [];
  });
}
