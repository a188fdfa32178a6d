/** Prepare: what is set out, where it stands, what is checked. Volumes come as text, without their unit. */

export const HEADING = "Vorbereiten";
export const ABOUT = "zehn Minuten, die dreißig sparen";
export const CAUTIONS = "Vorsicht am ganzen Arbeitsplatz";
export const TAKE_CARE = "Vorsicht";
export const ALL_CAUTIONS = "Alles zur Sicherheit";

export const SET_OUT_HEADING = "Bereitstellen";
export const WHAT = "Was";
export const USED = "Verbraucht";
export const SET_OUT = "Bereitgestellt";
/** Before its letter. */
export const SAMPLE = "Probe";
export const pieces = (count: number) => `${count} kleine Stücke`;
interface Margins {
  spare: string;
  least: string;
  excess: string;
  times: string;
  timesNeutral: string;
  drop: string;
}
/** @param spare per cent; the volumes in cm3 */
export const margins = ({ spare, least, excess, times, timesNeutral, drop }: Margins) =>
  `Von jedem Reagenz wird ${spare} % mehr bereitgestellt, als verbraucht wird, mindestens ${least} cm³; von jeder Probe bleibt ein Drittel ` +
  `zurück. „Im Überschuss“ zählt als ${excess} cm³, bei einer größeren Probe als das ${times}-Fache davon, oder als das ${timesNeutral}-Fache dessen, was ` +
  `die Säure oder Lauge im Reagenzglas neutralisiert; ein Tropfen als ${drop} cm³. Papiere und Späne sind ohne Reserve gezählt.`;

export const TUBES = "Reagenzgläser, alle im selben Maßstab";
export const TUBES_NEED_SCRIPT = "Andere Gläser lassen sich nur mit JavaScript wählen; dies sind gängige Größen.";
export const HEIGHTS =
  "Die Höhen sind innen vom Boden an gemessen. In Klammern: von der dünnsten bis zur dicksten Wand, mit der es solche Gläser gibt, aus der Erinnerung und nicht gemessen. Um sicher zu sein, gib mit einer Spritze 1 cm³ Wasser in eines deiner Gläser, markiere, wo es steht, und verschiebe die anderen Marken um ebenso viel.";
export const PLACES = "Wo jedes Glas steht";
/** Before a warning. */
export const MIND = "Beachte:";

export const GASES = "Gase, auf die du gefasst sein musst";
export const GAS_HEADS = { gas: "Gas", tests: "Versuche", from: "Aus", have: "Bereithalten" };
export const EMPTIED = "Wohin jedes Glas geleert wird";
export const EMPTIED_ABOUT =
  "Gläser mit Lauge zuerst, Gläser mit Säure zuletzt und immer nur wenig, und im Abzug, wenn ein Sulfit dabei sein kann: Säure setzt Gas aus dem frei, was schon in der Flasche ist. Lass eine Abfallflasche offen, bis nichts mehr sprudelt.";
export const WASTE_HEADS = { tubes: "Gläser", into: "Wohin", how: "Wie" };

export const ORDER = "Reihenfolge der Arbeit";
/** Before how long it takes. */
export const FOR_ONE = "Für eine Person mit einem Brenner:";
export const ORDER_LINK = "Die Reihenfolge der Arbeit, Minute für Minute";
/** Before the names of the sheets. */
export const TO_PRINT = "Zum Drucken:";
/** The name of a sheet within a sentence. */
export const within = (name: string) => name;
export const CHECK = "Prüfe, bevor du beginnst";
