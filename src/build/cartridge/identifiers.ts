/** Identifiers that stay the same from one export to the next, so that a platform knows what it has already. */

/** A practical's name, or a path of names, as part of an XML name: "year-9/shed" becomes "year-9.shed". */
export const nameOf = (slug: string): string => slug.replace(/\//g, ".").replace(/[^\w.-]/g, "_");

/**
 * An ion as part of an identifier; some platforms choke on the signs of a charge.
 *
 * @example ionIdentifier("SO4^2-") // "SO4_2n"
 */
export const ionIdentifier = (ion: string): string =>
  ion.replace("^", "_").replace(/\+$/, "p").replace(/-$/, "n").replace(/[^\w]/g, "_");

/** Names that stand more than once, each told once. */
export function repeated(names: Iterable<string>): string[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const name of names) (seen.has(name) ? twice : seen).add(name);
  return [...twice];
}
