/** Pages of tests, and the tables on them. */

/** The list of all tests. */
export const TESTS = "Nachweise";
export const DESCRIPTION =
  "Die Nachweise für Kationen, Anionen und Gase im Reagenzglas: wie man sie durchführt, was sie zeigen, was täuscht.";
export const ABOUT =
  "Für jeden Nachweis eine Seite: warum er gelingt, wie man ihn durchführt, was du siehst, was dich täuschen kann und wie du es aufschreibst.";
export const ORDER = "Reihenfolge der Nachweise";
export const CARBONATE_FIRST =
  "Bei Anionen prüfe zuerst auf Carbonat, dann auf Sulfat, dann auf die Halogenide: Carbonat und Sulfat können auch die späteren Gläser trüben.";
export const FOR_THE = { cation: "Für das Kation", anion: "Für das Anion", other: "Gase, Feststoffe und Papiere" };

/** One test. */
export const KIND = { cation: "Ionennachweis", anion: "Ionennachweis", other: "Nachweis" };
/** Before ions; before reagents. */
export const FINDS = "· findet";
export const NEEDS = "· braucht";
export const CAUTIONS = "Sicherheit";
export const WHY_DROPS = "Warum, Tropfen für Tropfen";
export const FALSE_RESULTS = "Falsche Ergebnisse, berechnet";
export const FOR_ADVANCED = "Für gelöste Proben der erweiterten Liste:";

/** What a test shows for every ion. */
export const ADVANCED_ONLY = "Nur auf der erweiterten Liste";
export const PARTNER = { sodium: "Natriumsalz", chloride: "Chlorid oder Sulfat", nitrate: "Nitrat" };
export const KINDS = { cation: "Kationen", anion: "Anionen" };
export const ION = "Ion";
export const HAPPENS = "Was geschieht";
export const ALL_OTHERS = "Alle anderen:";
/** Before a strength. */
export const workedOutFor = (partner: string) => `Berechnet für das ${partner} jedes Ions mit`;
/** A stage of a test as its heading in a table, where it has no words of its own. */
export const asHeading = (title: string) => title;

/** Gases. */
export const GASES_CAPTION = "Gase, ihre Nachweise und woher sie kommen";
export const GAS = "Gas";
export const TEST = "Nachweis";
export const GIVEN_OFF = "Entsteht im Reagenzglas aus";
export const HEATED = "Aus so vielen Feststoffen der Sammlung, erhitzt";
/** The same on a phone, beside each entry. */
export const IN_A_TUBE = "Im Reagenzglas";
export const HEATED_SHORT = "Feststoffe der Sammlung, die es erhitzt abgeben";
export const FROM_METAL = "jedem, wenn ein Metall auf Säure oder heiße Lauge trifft";
export const NONE = "keinem";

/** Heated solids. */
export const notHeated = (names: string) =>
  `Berechnet für trockene Feststoffe. Im Unterricht nicht erhitzt, oder nicht bekannt: ${names}.`;

/** Universal indicator. */
export const INDICATOR_CAPTION = "Universalindikator, von sauer bis alkalisch";
export const PAPER = "Papier";
export const IONS = "Ionen";
export const range = (values: readonly string[]) => values.join(" bis ");
/** Before a strength. */
export const INDICATOR_FOR = "Berechnet für Nitrate der Kationen und Natriumsalze der Anionen mit";

/** Powders. */
export const POWDERS_CAPTION = "Pulver in Säure, dann in Lauge";
export const POWDER = "Pulver";
export const POWDER_HEADS = ["Salzsäure", "Natronlauge im Überschuss", "Salpetersäure, dann Ammoniak im Überschuss"];
/** Around a mass and a volume. */
export const POWDERS_FOR = { mass: "Berechnet für", in: "davon in", water: "Wasser." };
