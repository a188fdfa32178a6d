/** The islands that also have a page of their own, made to stand in a frame of another site: `/embed/<practical>/<name>/`. */
import { FRAMED } from "#words/framed.ts";

/** Pages in here are made to be shown in a frame of another site. */
export const FRAMED_FOLDER = "embed";

export const FRAMED_PAGES = [
  { name: "record", title: FRAMED.record },
  { name: "bench", title: FRAMED.bench },
  { name: "order", title: FRAMED.order },
  { name: "practice", title: FRAMED.practice },
  { name: "class", title: FRAMED.class },
] as const;

export type FramedName = (typeof FRAMED_PAGES)[number]["name"];

export const framedPath = (practical: string, name: FramedName): string => `/${FRAMED_FOLDER}/${practical}/${name}/`;
