/** What proves an ion, in a few words for the table of evidence. */
import type { Proof } from "../../engine/deduction/proof.ts";
import { list } from "../sentence.ts";

/**
 * "certain from a(ii) and b(ii)"; another sample's tests are named with it, and the statement of the paper that does the rest stands at the
 * end.
 */
export function wordProof({ places, statement, several }: Proof, sample: string): string {
  const named = places.map((place) => (place.sample === sample ? place.cell : `${place.cell} for ${place.sample}`));
  const from = named.length > 0 ? ` from ${list(named)}` : "";
  const way = several ? `, for example${from}` : from;
  if (statement) return `certain${way}${named.length > 0 ? ", as" : " as"} the paper says: ${statement}`;
  return named.length > 0 ? `certain${way}` : "certain: the paper allows no other";
}
