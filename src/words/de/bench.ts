/** What the plan of a bench says of tubes, liquids, kit and checks. Volumes and masses come as text with a decimal point, in cm3 and g. */
import { list, OR } from "./language.ts";

/** Behind the label of a tube. */
export const KEPT = { filtrate: "Filtrat", residue: "Rückstand" };
export const LIMEWATER = "Kalkwasser";
export const WATCH_GLASS = "Uhrglas";
/** What is added to reach a mark. */
export const ofSample = (cm3: string, sample: string) => `${cm3} cm3 von ${sample}`;
export const drops = (count: number, reagent: string) => `${count} Tropfen ${reagent}`;
export const volume = (cm3: string, reagent: string) => `${cm3} cm3 ${reagent}`;
export const inExcess = (reagent: string) => `${reagent} im Überschuss, höchstens`;
export const FILTRATE = "Filtrat, höchstens";

/** Of a sample. */
const OF = { solution: "Lösung", solid: "Feststoff" };
type Form = keyof typeof OF;
export const needed = (amounts: readonly { amount: string; of: Form }[]) =>
  amounts.map(({ amount, of }) => `${amount} ${OF[of]}`).join(" und ") || "nichts";
export const setOut = (amounts: readonly { amount: string; of: Form; kept: string }[]) =>
  amounts.map(({ amount, of, kept }) => `${amount} ${OF[of]}, davon ${kept} zurückbehalten`).join("; ") || "nichts";

/** Warnings, behind the part. */
export const inPart = (part: string, warning: string) => `Teil ${part}: ${warning}`;
export const HARD_GLASS =
  "Ein Feststoff und dann eine Lösung werden in einem Glas erhitzt, es muss deshalb aus Hartglas (Borosilicat) sein.";
export const givenAsSolid = (cm3: string, sample: string) =>
  `Er braucht ${cm3} cm3 von ${sample}, das als Feststoff gegeben ist. Löse zuerst etwas davon.`;
export const givenAsSolution = (g: string, sample: string) =>
  `Er braucht ${g} g von ${sample}, das als Lösung gegeben ist. Frag nach dem Feststoff.`;
export const noAmount = (amount: string) => `Die Aufgabe nennt keine Menge der Probe; ${amount} sind geplant.`;
/** @param solid cm3 of it that the solid takes up, where there is any */
export const tooFullToHeat = (cm3: string, solid: string | undefined, cell: string, limit: string, tube: string) =>
  `Beim Erhitzen in ${cell} können die Gläser ${cm3} cm3 enthalten${solid === undefined ? "" : `, davon ${solid} cm3 Feststoff`}, mehr als die sichere Füllung von ${limit} cm3 ` +
  `(ein Zehntel: ${tube}). Nimm weniger von der Probe, gib nicht mehr zu als nötig, oder nimm ein größeres Glas.`;
export const tooMuchSolid = (g: string, cm3: string, cell: string, limit: string, tube: string) =>
  `${g} g Feststoff füllen beim Erhitzen in ${cell} etwa ${cm3} cm3, mehr als die sichere Füllung von ` +
  `${limit} cm3 (ein Fünftel: ${tube}). Nimm weniger.`;
export const tooFull = (cm3: string, tube: string, brim: string) =>
  `Die Versuche brauchen bis zu ${cm3} cm3, aber es passen nur ${brim} cm3 hinein (${tube}). Nimm ein größeres Glas.`;
export const tooFullToShake = (cm3: string, tube: string) =>
  `Die Gläser können ${cm3} cm3 enthalten, mehr als die Hälfte (${tube}), zu voll zum Schütteln. Nimm ein größeres Glas.`;
/** @param dry a solid or a paper, of which pieces are taken */
export const wrongAmount = (reagent: string, dry: boolean) =>
  `${reagent}: gefunden ${dry ? "Tropfen oder ein Volumen" : "Stücke"}, erwartet ${dry ? "wird eine Zahl von Stücken" : "werden Tropfen oder ein Volumen"}. Nichts davon wird bereitgestellt.`;
interface NoExcess {
  planned: string;
  reagent: string;
  alkali: number;
  sampleCm3: string;
  salt: number;
  acid: boolean;
  least: string;
}
export const noExcess = ({ planned, reagent, alkali, sampleCm3, salt, acid, least }: NoExcess) =>
  `${planned} cm3 ${reagent} mit ${alkali} mol/dm3 sind kein Überschuss für ` +
  `${sampleCm3} cm3 einer Probe mit ${salt} mol/dm3. Ein Aluminiumsalz ${acid ? "und die Säure im Glas brauchten" : "brauchte"} ${least} cm3. ` +
  "Nimm weniger von der Probe, verdünne sie, oder nimm stärkere Lauge.";

/** Cautions with figures in them. */
export const stronger = (strength: number, usual: number, limits: readonly string[]) =>
  `Mit ${strength} mol/dm3 stärker als die üblichen ${usual} mol/dm3, frag deshalb erst deine Lehrkraft.${limits.length > 0 ? ` Grenzen: ${limits.join("; ")}.` : ""}`;
/** @param salts by formula; `more` of them are only counted */
export function melt(salts: readonly string[], more: number): string {
  const named = list([...salts, ...(more > 0 ? [`${more} weitere`] : [])]);
  return `Von dem, was eine trocken erhitzte Probe sein kann, ${salts.length > 1 ? "schmelzen" : "schmilzt"} ${named}: Halte das Glas waagerecht, sobald es flüssig wird, damit nichts Heißes zur Mündung läuft.`;
}
/** What a sample may be that a test is unsafe on: salts by name; ions that may be in many. */
interface Unsafe {
  salts: readonly string[];
  ions: readonly string[];
}
function mayBe({ salts, ions }: Unsafe): string {
  const be = salts.length > 0 ? [`${list(salts, OR)} sein`] : [];
  const hold = ions.length > 0 ? [`${list(ions, OR)} enthalten`] : [];
  return [...be, ...hold].join(" oder ");
}
const DONE = {
  flame: "was in der Klasse nicht in die Flamme kommt",
  "heat solid": "was in der Klasse nicht trocken erhitzt wird",
};
export const unsafe = (samples: readonly string[], step: keyof typeof DONE, what: Unsafe) =>
  `${list(samples)} ${samples.length > 1 ? "können" : "kann"} ${mayBe(what)}, ${DONE[step]}. Frag deine Lehrkraft, bevor du damit beginnst.`;
export const unsafeCaution = (what: Unsafe, reason: string) =>
  `Eine Probe kann ${mayBe(what)}. ${reason} Frag erst deine Lehrkraft.`;
export const bringsTogether = (what: string, reason: string) =>
  `Hier kommen zusammen: ${what}; ${reason}. Frag deine Lehrkraft, bevor du damit beginnst.`;

/** Liquids that no step adds. */
export const BESIDES = {
  leadThrough: "Kalkwasser, um ein Gas hindurchzuleiten",
  limewater: "Kalkwasser",
  "acidified manganate(VII) paper": "angesäuertes Kaliumpermanganat, für Papier",
  "acidified dichromate(VI) paper": "angesäuertes Kaliumdichromat, für Papier",
  "rod with hydrochloric acid": "konzentrierte Salzsäure, für den Stab, mit deiner Lehrkraft",
  "rod with ammonia": "konzentrierte Ammoniaklösung, für den Stab, mit deiner Lehrkraft",
  wire: "verdünnte Salzsäure, für den Draht",
};
/** What is made harmless before a tube is emptied, and what brought it. */
export const HALOGENS = {
  chlorine: { name: "das Chlor", because: "Chlorwasser" },
  iodine: { name: "das Iod", because: "Iodlösung" },
};
export const thiosulfateFor = (halogen: string) =>
  `Natriumthiosulfatlösung, für ${halogen}, bevor diese Gläser geleert werden`;
export const putInto = (reagent: string, bottle: string) => `${reagent}, vor dem ersten Glas hineinzugeben (${bottle})`;
/** Behind what no step asks for. */
export const IN_CASE = ", für alle Fälle";
export const FLAME_TEST = "Flammenfärbung";

/** Gases: why a way of testing stands ready. */
export const askedFor = (places: readonly string[]) => `verlangt in ${places.join(", ")}`;
export const inCaseGives = (cells: readonly string[], gas: string) => `falls ${cells.join(" oder ")} ${gas} ergibt`;
export const NOT_ASKED = "kein Schritt verlangt es";
export const andMore = (count: number) => `und ${count} weitere`;

/** Checks before the first test. */
export const CHECKS = {
  read: "Alle Versuche bis zum Ende lesen, bevor du beginnst.",
  goggles: "Schutzbrille auf, und sie bleibt auf, bis alles gespült ist.",
  tubes: "Gläser sauber, mit entionisiertem Wasser gespült.",
  dryTubes: "Gläser sauber, mit entionisiertem Wasser gespült; die Gläser zum Erhitzen von Feststoffen auch trocken.",
  burner: (holder: boolean) => `Brenner und Anzünder ausprobiert${holder ? ", Halter neben dem Brenner" : ""}.`,
  labels:
    "Jedes Glas mit Probe und Teil beschriftet, bevor es gefüllt wird, von links nach rechts in der Reihenfolge der Versuche.",
  marks: "Füllmarken an den Gläsern.",
  gases: (kit: readonly string[], papers: boolean) =>
    `${list(kit)} für die Gase in Reichweite${papers ? ", Papiere noch nicht feucht" : ""}.`,
  waste: "Abfallflaschen und Becherglas am Platz, und bekannt: Sieh nach, wohin jedes Glas geleert wird.",
  keepBack: "Ein Drittel jeder Probe zurückbehalten, bis das Protokoll geschrieben ist.",
};
export const GAS_KIT = {
  papers: "Papiere",
  splints: "Späne",
  rods: "Stäbe",
  copperSulfate: "wasserfreies Kupfersulfat",
  limewater: "Kalkwasser",
  delivery: "Ableitungsrohre",
};

/** Behind what could spoil an observation. */
export const plannedFor = (minutes: number) => `Dafür eingeplant: ${minutes} min.`;
