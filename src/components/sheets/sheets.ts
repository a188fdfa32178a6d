/** The sheets that are printed for one practical, in the order in which they are needed. */
export const SHEETS = [
  {
    slug: "bench-card",
    name: "Bench card",
    about: "one side, for the bench: rack, fill marks, bottles, order of work, waste",
  },
  { slug: "labels", name: "Tube labels", about: "to cut out and put on the tubes" },
  { slug: "record", name: "Record sheet", about: "blank, to be filled in by hand" },
  { slug: "marks", name: "Mark sheet", about: "for the teacher; it names the salts" },
] as const;

export type SheetSlug = (typeof SHEETS)[number]["slug"];
