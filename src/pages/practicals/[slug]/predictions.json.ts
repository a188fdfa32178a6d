/** A practical's table of predictions. A walkthrough fetches it when its reader turns to the record, for the conclusion to follow. */

import { getCollection } from "astro:content";
import type { APIRoute } from "astro";
import { walkthrough } from "../../../build/walkthrough.ts";
import { islandTable } from "../../../components/record/island-table.ts";

export async function getStaticPaths() {
  const entries = await getCollection("practicals");
  return entries.map(({ id, data }) => ({
    params: { slug: id },
    props: { table: islandTable(walkthrough(data).table) },
  }));
}

export const GET: APIRoute = ({ props }) => Response.json(props.table);
