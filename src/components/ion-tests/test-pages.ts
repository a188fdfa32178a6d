/** Which page tells of which standard test. */
import { getCollection } from "astro:content";

let pages: Promise<Map<string, string>> | undefined;

const readPages = async (): Promise<Map<string, string>> =>
  new Map(
    (await getCollection("ionTests")).flatMap(({ id, data }) =>
      data.standard.map((test): [string, string] => [test, `/ion-tests/${id}/`]),
    ),
  );

/** Address of the page of a standard test, from the site's root; undefined when no page names it. */
export async function testPageOf(test: string): Promise<string | undefined> {
  pages ??= readPages();
  return (await pages).get(test);
}
