/** A line on a kept page which says that the course has changed since. */
import { FETCH_IT, KEPT_PAGE } from "#words/keep.ts";

/** Where a page's own content begins, in every page of the course. */
const BEFORE = '<main id="content"';

/** @param base the course's whole address */
export const noticeLine = (base: string): string =>
  `<p class="newer" role="status">${KEPT_PAGE} <a href="${base}keep/">${FETCH_IT}</a>.</p>`;

/** The page, with the line in it where it is wanted and the page has a place for it. */
export async function withNotice(page: Response, wanted: boolean, base: string): Promise<Response> {
  if (!wanted || !page.headers.get("Content-Type")?.startsWith("text/html")) return page;
  const html = await page.text();
  const headers = new Headers(page.headers);
  // The text is another length now, and no longer packed.
  for (const name of ["Content-Length", "Content-Encoding"]) headers.delete(name);
  return new Response(html.replace(BEFORE, noticeLine(base) + BEFORE), { status: page.status, headers });
}
