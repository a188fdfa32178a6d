/** What a practical's rack is drawn from. A walkthrough fetches it when its reader chooses other tubes than the planned ones. */

import { getCollection } from "astro:content";
import type { APIRoute } from "astro";
import { walkthrough } from "../../../build/walkthrough.ts";
import { drawnRack } from "../../../components/prepare/rack.ts";

export async function getStaticPaths() {
  const entries = await getCollection("practicals");
  return entries.map(({ id, data }) => ({ params: { slug: id }, props: { rack: drawnRack(walkthrough(data).plan) } }));
}

export const GET: APIRoute = ({ props }) => Response.json(props.rack);
