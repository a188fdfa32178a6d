/** The steps of a procedure as instructions. Amounts come as text, formulas in mhchem notation. */
import type { Indicator } from "../../engine/constants/indicators.ts";
import type { GasTest } from "../../engine/practical.ts";
import { list } from "./language.ts";

/** Usual school names, no source. */
const REAGENTS: Readonly<Record<string, string>> = {
  "NaOH(aq)": "Natronlauge",
  "NH3(aq)": "Ammoniaklösung",
  "HCl(aq)": "verdünnte Salzsäure",
  "HNO3(aq)": "verdünnte Salpetersäure",
  "H2SO4(aq)": "verdünnte Schwefelsäure",
  "CH3COOH(aq)": "verdünnte Ethansäure",
  "AgNO3(aq)": "Silbernitratlösung",
  "BaCl2(aq)": "Bariumchloridlösung",
  "Ba(NO3)2(aq)": "Bariumnitratlösung",
  "KI(aq)": "Kaliumiodidlösung",
  "K2CrO4(aq)": "Kaliumchromatlösung",
  "Na2CO3(aq)": "Natriumcarbonatlösung",
  "KSCN(aq)": "Kaliumthiocyanatlösung",
  "NH4Cl(aq)": "Ammoniumchloridlösung",
  "Na2S2O3(aq)": "Natriumthiosulfatlösung",
  "K4[Fe(CN)6](aq)": "Kaliumhexacyanidoferrat(II)-lösung",
  "K3[Fe(CN)6](aq)": "Kaliumhexacyanidoferrat(III)-lösung",
  "FeSO4(aq)": "frisch angesetzte Eisen(II)-sulfatlösung",
  "Pb(NO3)2(aq)": "Blei(II)-nitratlösung",
  "KMnO4(aq)": "Kaliumpermanganatlösung",
  "acidified KMnO4(aq)": "angesäuerte Kaliumpermanganatlösung",
  "acidified K2Cr2O7(aq)": "angesäuerte Kaliumdichromatlösung",
  "acidified H2O2(aq)": "angesäuerte Wasserstoffperoxidlösung",
  "H2O2(aq)": "Wasserstoffperoxidlösung",
  "Cl2(aq)": "Chlorwasser",
  "I2(aq)": "Iod-Kaliumiodid-Lösung",
  "MgSO4(aq)": "Magnesiumsulfatlösung",
  "Na2SO3(aq)": "frisch angesetzte Natriumsulfitlösung",
  "Ca(OH)2(aq)": "Kalkwasser",
  "K2Cr2O7 paper": "angesäuertes Kaliumdichromatpapier",
  "CoCl2 paper": "Cobalt(II)-chlorid-Papier",
  "litmus paper": "Lackmuspapier, rot und blau",
  "universal indicator": "Universalindikatorlösung",
  "starch solution": "Stärkelösung, 1 %",
  "CuSO4(s)": "wasserfreies Kupfer(II)-sulfat",
  "Al(s)": "Aluminiumfolie",
  "Zn(s)": "Zinkgranalien",
  "H2O(l)": "destilliertes oder entionisiertes Wasser",
};
/** A reagent's name; the constants have it in English. */
export const reagentName = (id: string, name: string): string => REAGENTS[id] ?? name;

/** Of which samples a part takes: "Lösung P", "jeder Lösung"; with their letters. */
const FORM = { solid: "Feststoff", solution: "Lösung" };
export const one = (form: "solid" | "solution", letter: string) => `${FORM[form]} ${letter}`;
export const each = (form: "solid" | "solution") => (form === "solid" ? "jedem Feststoff" : "jeder Lösung");
export const letters = (all: readonly string[]) => ` (${list(all)})`;

export const GAS_TEST: Readonly<Record<GasTest, string>> = {
  "damp red litmus": "Halte feuchtes rotes Lackmuspapier an die Mündung, ohne das Glas zu berühren.",
  "damp blue litmus": "Halte feuchtes blaues Lackmuspapier an die Mündung, ohne das Glas zu berühren.",
  limewater:
    "Zieh das Gas mit einer Pipette dicht über der Flüssigkeit auf und blase es durch Kalkwasser; wiederhole das zwei- oder dreimal.",
  "glowing splint": "Führe einen glimmenden Span in die Mündung ein.",
  "lighted splint": "Halte einen brennenden Span an die Mündung.",
  "acidified manganate(VII) paper":
    "Halte ein Papier, das mit angesäuertem Kaliumpermanganat befeuchtet ist, an die Mündung.",
  "acidified dichromate(VI) paper":
    "Halte mit der Pinzette ein Papier, das mit angesäuertem Kaliumdichromat befeuchtet ist, an die Mündung.",
  "rod with hydrochloric acid":
    "Halte mit deiner Lehrkraft einen Glasstab mit konzentrierter Salzsäure in die Nähe der Mündung.",
  "rod with ammonia":
    "Halte mit deiner Lehrkraft einen Glasstab mit konzentrierter Ammoniaklösung in die Nähe der Mündung.",
  "anhydrous copper(II) sulfate":
    "Gib ein wenig weißes, wasserfreies Kupfer(II)-sulfat auf die Tropfen an der kühlen Wand.",
  "cobalt(II) chloride paper":
    "Berühre die Tropfen an der kühlen Wand mit der Pinzette mit trockenem, blauem Cobalt(II)-chlorid-Papier.",
};

const STOPPER = "den Stopfen mit dem Ableitungsrohr";
/** Whoever heats fits the stopper first; either way the limewater must not find its way back. */
export function leadThrough(cm3: string, strength: string | undefined, inExcess: boolean, heated: boolean): string[] {
  const through = `das Gas durch ${cm3} cm3 Kalkwasser${strength ? ` (${strength})` : ""}`;
  const until = inExcess ? "solange welches kommt" : "bis du eine Veränderung siehst";
  return [
    heated
      ? `Setze vor dem Erhitzen ${STOPPER} auf und leite ${through}, ${until}.`
      : `Setze sofort ${STOPPER} auf und leite ${through}, ${until}.`,
    `Zieh das Ableitungsrohr aus dem Kalkwasser, solange noch Blasen kommen${heated ? ", und nimm erst dann die Flamme weg" : ""}.`,
  ];
}

const FORMS: Readonly<Record<Indicator, string>> = {
  litmus: "neutrales Lackmuspapier",
  "universal indicator": "Universalindikatorpapier",
};
export const indicator = (which: Indicator, _form: string) =>
  `Berühre ${FORMS[which]} mit einem Tropfen der Flüssigkeit an einem sauberen Glasstab und vergleiche die Farbe${which === "litmus" ? "" : " mit der Skala"}.`;

/** What ends the sentence on an addition: nothing fizzes; a gas is to be tested; it only fizzes. */
export const THEN_SHAKE = " und schüttle";
export const LITTLE_BY_LITTLE = ", immer nur ein wenig";
export const AFTER_FIZZING = ", immer nur ein wenig; schüttle, wenn es ausgeschäumt hat";

export function take(amount: string, sample: string, several: boolean, dry: boolean): string {
  const tube = `sauberes, ${dry ? "trockenes, " : ""}beschriftetes Reagenzglas`;
  return `Gib ${amount} von ${sample} in ${several ? `je ein eigenes ${tube}` : `ein ${tube}`}.`;
}
export const addInExcess = (what: string, most: string | undefined) =>
  `Gib tropfenweise ${what} zu und schüttle dabei, bis sich nichts mehr ändert${most === undefined ? "" : `; höchstens ${most} cm3`}.`;
export const addPieces = (count: number, what: string) =>
  `Gib ${count === 1 ? "ein kleines Stück" : `${count} kleine Stücke`} ${what} dazu.`;
export const addDrops = (count: number, what: string, then: string) =>
  `Gib ${count === 1 ? "einen Tropfen" : `${count} Tropfen`} ${what} dazu${then}.`;
export const addVolume = (cm3: string, what: string, then: string) => `Gib ${cm3} cm3 ${what} dazu${then}.`;

export const flame = (sample: string, several: boolean): string[] => [
  "Tauche den Draht in verdünnte Salzsäure auf einem Uhrglas und halte ihn in die rauschende Flamme; wiederhole das, bis er keine Farbe mehr gibt.",
  `Befeuchte ihn noch einmal mit der Säure und berühre damit ein wenig von ${sample} auf einem anderen Uhrglas.`,
  `Halte ihn an den Rand der rauschenden Flamme und schau sofort hin.${several ? " Reinige den Draht vor der nächsten Probe wieder." : ""}`,
];
export const SHAKE = "Schüttle das Reagenzglas vorsichtig.";
export const WARM = "Erwärme vorsichtig; halte das Reagenzglas in Bewegung, die Mündung von allen weg.";
export const boil = (time: string) =>
  `Lass ${time} lang schwach sieden; halte das Reagenzglas in Bewegung, die Mündung von allen weg.`;
export const COOL =
  "Lass das Reagenzglas auf Raumtemperatur abkühlen; wenn man es anfassen kann, hilft kaltes Wasser von außen.";
export const stand = (time: string) => `Lass es ${time} stehen.`;
const KEPT: Readonly<Record<string, string>> = { filtrate: "das Filtrat", residue: "den Rückstand" };
export const filter = (keep: string) => `Filtriere und hebe ${KEPT[keep] ?? keep} auf.`;
export const WASH =
  "Wasche den Rückstand zwei- oder dreimal mit wenig entionisiertem Wasser; das Waschwasser kommt in den Abfall.";
const HOW: Readonly<Record<string, string>> = { gently: "vorsichtig", strongly: "kräftig" };
export const heatSolid = (how: string) =>
  `Erhitze den Feststoff ${HOW[how] ?? how}, die Mündung etwas tiefer als den Boden und von allen weg; schmilzt er, halte das Reagenzglas waagerecht. Sieh ihn dir heiß an, und noch einmal kalt.`;

const GAS_TESTS: Readonly<Record<GasTest, string>> = {
  "damp red litmus": "feuchtes rotes Lackmuspapier",
  "damp blue litmus": "feuchtes blaues Lackmuspapier",
  limewater: "Kalkwasser",
  "glowing splint": "glimmender Span",
  "lighted splint": "brennender Span",
  "acidified manganate(VII) paper": "Papier mit angesäuertem Permanganat",
  "acidified dichromate(VI) paper": "Papier mit angesäuertem Dichromat",
  "rod with hydrochloric acid": "Glasstab mit konzentrierter Salzsäure",
  "rod with ammonia": "Glasstab mit konzentriertem Ammoniak",
  "anhydrous copper(II) sulfate": "wasserfreies Kupfer(II)-sulfat",
  "cobalt(II) chloride paper": "Cobalt(II)-chlorid-Papier",
};
/** What a gas is tested with, or the mark of what is missing. */
export const gasTest = (test: GasTest): string => GAS_TESTS[test] ?? test;

/** A test in a few words, one after the other. */
export const BRIEF = {
  inExcess: (name: string) => `${name} im Überschuss`,
  drops: (name: string, count: number) => `${name}, ${count} Tropfen`,
  warmed: "erwärmt",
  boiled: "zum Sieden erhitzt",
  cooled: "abgekühlt",
  leftToStand: "stehen gelassen",
  filtered: (keep: string) => `filtriert, ${keep === "filtrate" ? "das Filtrat" : "der Rückstand"}`,
  washed: "mit Wasser gewaschen",
  heated: (how: string) => `der Feststoff ${HOW[how] ?? how} erhitzt`,
  ledThrough: (inExcess: boolean) => `sein Gas durch Kalkwasser geleitet${inExcess ? ", im Überschuss" : ""}`,
  triedWith: (indicator: string) => `geprüft mit ${indicator === "litmus" ? "Lackmus" : "Universalindikator"}`,
  flame: "Flammenfärbung",
  look: "hinsehen",
  followedBy: ", dann ",
};
