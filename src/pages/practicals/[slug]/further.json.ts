/** The standard tests for the salts a practical may leave together. A walkthrough fetches it only when its own tests are at an end. */

import { getCollection } from "astro:content";
import type { APIRoute } from "astro";
import { walkthrough } from "../../../build/walkthrough.ts";
import { furtherList } from "../../../components/conclude/further-list.ts";

export async function getStaticPaths() {
  const cautions = await getCollection("cautions");
  const entries = await getCollection("practicals");
  return entries.flatMap(({ id, data }) => {
    const predictions = walkthrough(data).further;
    return predictions ? [{ params: { slug: id }, props: { list: furtherList(predictions, cautions) } }] : [];
  });
}

export const GET: APIRoute = ({ props }) => Response.json(props.list);
