/** What proves an ion, in a few words for the table of evidence. */
import { certain } from "#words/conclude.ts";
import type { Proof } from "../../engine/deduction/proof.ts";

/**
 * "certain from a(ii) and b(ii)"; another sample's tests are named with it, and the statement of the paper that does the rest stands at the
 * end.
 */
export function wordProof({ places, statement, several }: Proof, sample: string): string {
  const from = places.map((place) => (place.sample === sample ? { cell: place.cell } : place));
  return certain(from, several, statement);
}
