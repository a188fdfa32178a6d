/** Where tubes are emptied, and how. */
import type { Waste } from "../../engine/constants/reagents.ts";
import { AND, list } from "./language.ts";

const WASTES: Readonly<Partial<Record<Waste, string>>> = {
  barium: "Barium",
  silver: "Silber",
  lead: "Blei",
  "chromium(VI)": "Chrom(VI)",
  "heavy metal": "Schwermetalle",
  "copper or zinc": "Kupfer oder Zink",
};
const name = (of: Waste) => WASTES[of] ?? of;

export const SOLID_WASTE = "Feststoffabfall";
export const bottle = (of: Waste) => `Abfallflasche für ${name(of)}`;
/** One beside the usual one, for these parts. */
export const bottleFor = (of: Waste, parts: readonly string[]) =>
  `Abfallflasche für ${name(of)} aus ${parts.length > 1 ? "den Teilen" : "Teil"} ${list(parts)}`;
export const SULFATE_STANDS = "Das Sulfat, das darin steht, ist für das Barium.";
export const AMMONIA =
  "Darin ist Ammoniak, und in diese Flasche kommt Silber: Gieß es in die Säure, die dort steht, sobald du aufgeschrieben hast, was zu sehen war.";
export const SINK =
  "Säure und Lauge neutralisieren, dann mit viel Wasser in den Ausguss, wenn deine Lehrkraft es sagt.";
export const AT_ONCE =
  "Gleich in den Ausguss, ein Glas nach dem anderen, mit viel Wasser, wo deine Lehrkraft es erlaubt.";
export const WET_SOLID = "Nass, in den Feststoffabfall, nicht in den Ausguss.";
export const ownBottle = (what: string, reason: string) =>
  `Eine eigene Flasche: In der anderen kämen zusammen: ${what}; ${reason}.`;
export const alsoHolds = (others: readonly Waste[]) =>
  `Kann auch ${others.map(name).join(` ${AND} `)} enthalten: Schreib es auf die Flasche.`;
export const notThere = (absent: readonly Waste[], present: readonly Waste[]) =>
  `In Wahrheit kommt dort kein ${list(absent.map(name))} hinein: Die Aufgabe stellt es zur Wahl, deshalb steht die Flasche trotzdem da.${present.length > 0 ? ` Wirklich enthält sie ${list(present.map(name))}.` : ""}`;

/** What stands in a bottle before the first tube, and why. */
export const putIn = (amounts: readonly string[]) => `Gib vor dem ersten Glas ${list(amounts)} hinein.`;
export const FOR_AMMONIA = "Ammoniak, das nur angesäuert bei Silber stehen darf";
export const FOR_BARIUM = "Barium, das als harmloses Sulfat ausfällt";

/** What is emptied besides tubes of a sample. */
export const LIMEWATER_TUBES = "Gläser mit Kalkwasser";
export const USED_PAPERS = "benutzte Papiere";
export const USED_DICHROMATE = "benutzte Dichromatpapiere";
export const USED_COBALT = "benutzte Cobaltchloridpapiere";
/** Why a bottle stands there. */
export const MAY_HOLD = "was die Proben enthalten können";
