/**
 * Starts the islands of a walkthrough that was taken away as one file. A page opened from disk may load no modules, so all of it is bundled into
 * one script, and what Astro's own loader does on a host is done here: each island's properties are read and its component takes the page over.
 */
import startPreact from "@astrojs/preact/client.js";
import type { ComponentType } from "preact";
import { startTerms } from "../method/start-terms.ts";
import OtherTubes from "../prepare/OtherTubes.tsx";
import RecordAndConclusion from "../record/RecordAndConclusion.tsx";

const COMPONENTS: Record<string, unknown> = { OtherTubes, RecordAndConclusion };

/** How Astro writes a property: what kind of value it is, then the value; lists and plain values are all that islands here are given. */
type Written = [kind: number, value: unknown];
const LIST = 1;

function read([kind, value]: Written): unknown {
  if (kind === LIST) return (value as Written[]).map(read);
  if (typeof value !== "object" || value === null) return value;
  return readAll(value as Record<string, Written>);
}

const readAll = (written: Record<string, Written>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(written).map(([name, value]) => [name, read(value)]));

/** Parts of the page that an island shows as they were built. */
const slotsOf = (island: Element): Record<string, string> =>
  Object.fromEntries(
    [...island.querySelectorAll("astro-slot")].map((slot) => [slot.getAttribute("name") ?? "default", slot.innerHTML]),
  );

function start(island: HTMLElement): void {
  const { name } = JSON.parse(island.getAttribute("opts") ?? "{}") as { name: string };
  const component = COMPONENTS[name] as ComponentType | undefined;
  if (!component) throw new Error(`The island ${name} is not in this file.`);
  const props = readAll(JSON.parse(island.getAttribute("props") ?? "{}"));
  startPreact(island)(component, props, slotsOf(island), { client: "load" });
  island.removeAttribute("ssr");
}

for (const island of document.querySelectorAll<HTMLElement>("astro-island")) start(island);
startTerms(document);
