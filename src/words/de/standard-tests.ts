/** The standard tests by name. Usual school words, no source. */

const TITLES: Readonly<Record<string, string>> = {
  "sodium-hydroxide": "Natronlauge",
  ammonia: "Ammoniaklösung",
  ammonium: "Warme Lauge",
  nitrate: "Lauge und Aluminiumfolie",
  sulfate: "Bariumnitrat",
  sulfite: "Bariumnitrat, dann Säure",
  "sulfuric-acid": "Verdünnte Schwefelsäure",
  iodide: "Kaliumiodid",
  carbonate: "Verdünnte Säure",
  flame: "Flammenfärbung",
  "carbonate-or-not": "Natriumcarbonat",
  hydrogencarbonate: "Magnesiumsulfat",
  "acid-then-alkali": "Säure, dann Natronlauge",
  "acid-then-ammonia": "Säure, dann Ammoniaklösung",
  halide: "Silbernitrat",
  thiocyanate: "Kaliumthiocyanat",
  "hexacyanoferrate-ii": "Kaliumhexacyanidoferrat(II)",
  "hexacyanoferrate-iii": "Kaliumhexacyanidoferrat(III)",
  manganate: "Angesäuertes Permanganat",
  nitrite: "Säure, dann Kaliumiodid",
  "chlorine-water": "Chlorwasser",
  lead: "Blei(II)-nitrat",
  chromate: "Kaliumchromat",
};
/** The constants have it in English. */
export const testTitle = (id: string, title: string): string => TITLES[id] ?? title;
/** A title within a sentence. */
export const inSentence = (title: string): string => title;
