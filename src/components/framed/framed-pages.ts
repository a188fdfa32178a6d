/** The islands that also have a page of their own, made to stand in a frame of another site: `/embed/<practical>/<name>/`. */

/** Pages in here are made to be shown in a frame of another site. */
export const FRAMED_FOLDER = "embed";

export const FRAMED_PAGES = [
  { name: "record", title: "Record and conclusion" },
  { name: "bench", title: "Bench plan" },
  { name: "order", title: "Order of work" },
  { name: "practice", title: "Blind practice" },
  { name: "class", title: "Preparation sheet" },
] as const;

export type FramedName = (typeof FRAMED_PAGES)[number]["name"];

export const framedPath = (practical: string, name: FramedName): string => `/${FRAMED_FOLDER}/${practical}/${name}/`;
