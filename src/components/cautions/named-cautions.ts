/** Cautions that a page names in its frontmatter. */
import { type CollectionEntry, getCollection } from "astro:content";

/**
 * @param page path of the page that names them, for the error
 * @throws when there is no such caution
 */
export async function namedCautions(ids: readonly string[], page: string): Promise<CollectionEntry<"cautions">[]> {
  const known = await getCollection("cautions");
  return ids.map((id) => {
    const found = known.find((one) => one.id === id);
    if (found) return found;
    throw new Error(
      `${page}: cautions: found "${id}", expected the name of a file in src/content/cautions: ${known.map((one) => one.id).join(", ")}.`,
    );
  });
}

/** The cautions on gases. */
export async function gasCautions(gases: readonly string[]): Promise<CollectionEntry<"cautions">[]> {
  const known = await getCollection("cautions");
  return known.filter(({ data }) => data.covers.some((one) => gases.includes(one)));
}
