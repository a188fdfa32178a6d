/** What a page tells the search index about itself besides its text, and how that is written into the page. */

/** Kinds of page, in the order in which results are grouped. */
export const PAGE_KINDS = ["practical", "ion test", "ion", "method", "caution"] as const;

export type PageKind = (typeof PAGE_KINDS)[number];

/** What results can be narrowed to besides the kind, in the order of the form. */
export const FACETS = ["ion", "gas", "reagent", "hazard"] as const;

export type Facet = (typeof FACETS)[number];

/**
 * What a page is about: ions and gases in mhchem (`SO4^2-`, `CO2`), reagents as steps name them (`NaOH(aq)`), hazards of `HAZARD_KINDS`.
 * Absent where a page is about none.
 */
export type Facets = { readonly [facet in Facet]?: readonly string[] };

/**
 * Kind and facets in one attribute, because a walkthrough has dozens and each byte of it is loaded on every visit. `scripts/search-index.ts`
 * spells them out for the index.
 *
 * @example facetsText("caution", { gas: ["CO2"], hazard: ["heat"] }) // "kind:caution|gas:CO2|hazard:heat"
 */
export function facetsText(kind: PageKind, facets: Facets): string {
  const pairs = FACETS.flatMap((facet) => [...new Set(facets[facet])].map((value) => `${facet}:${value}`));
  return [`kind:${kind}`, ...pairs].join("|");
}

/** The pairs of such a text: facet (or "kind") and value. */
export function readFacets(text: string): [facet: string, value: string][] {
  return text.split("|").map((pair) => {
    const at = pair.indexOf(":");
    return [pair.slice(0, at), pair.slice(at + 1)];
  });
}
