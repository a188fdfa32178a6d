/** Parts of a practical that have a page of their own for a frame of another site. */

export const FRAMED = {
  record: "Record and conclusion",
  bench: "Bench plan",
  order: "Order of work",
  practice: "Blind practice",
  class: "Preparation sheet",
};
