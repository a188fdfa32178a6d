/** Parts of a practical that have a page of their own for a frame of another site. */

export const FRAMED = {
  record: "Protokoll und Auswertung",
  bench: "Plan des Arbeitsplatzes",
  order: "Reihenfolge der Arbeit",
  practice: "Blindes Üben",
  class: "Vorbereitungsblatt",
};
