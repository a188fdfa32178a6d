/** The curves of an ion while a reagent is added. Volumes and parts come as text; formulas in mhchem notation. */
import { list } from "./language.ts";

export const pageTitle = (practical: string) => `Kurven: ${practical}`;
export const pageAbout = (practical: string) =>
  `Wo die Ionen von „${practical}“ bei jedem Tropfen sind: fest oder gelöst.`;
export const BACK_TO_WALKTHROUGH = "Zurück zur Anleitung";
export const LEAD =
  "Diese Bilder nennen die Ionen; sieh sie dir an, wenn dein eigenes Protokoll geschrieben ist. Jedes verfolgt ein Ion in einem Reagenzglas: wie viel davon in einem Feststoff steckt und wie viel gelöst ist, während das Reagenz hinzukommt. Ein Feststoff entsteht, sobald die Flüssigkeit mehr von seinen Ionen enthält, als gelöst bleiben können. Er verschwindet wieder, wenn das Reagenz eines dieser Ionen zu etwas bindet, das gelöst bleibt.";
export const NEEDS_SCRIPT =
  "Um eine Kurve zu ändern, braucht es JavaScript; unten steht jede, wie die Aufgabe sie vorgibt.";

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
/** "R, a(i) und a(ii): Zink, während Natronlauge hinzukommt"; of no sample of a paper just what is added to what. */
export const titleOf = (sample: string, cells: readonly string[], ion: string, reagent: string) =>
  `${sample}, ${list(cells)}: ${title(ion, reagent)}`;
export const title = (ion: string, reagent: string) => `${ion}, während ${reagent} hinzukommt`;
/** Tells the curves of a page apart. */
export const placeOf = (sample: string, cells: readonly string[]) => `${sample}, ${list(cells)}`;
export const place = (ion: string, reagent: string) => `${ion} und ${reagent}`;
export const endOf = (cell: string) => `Ende von ${cell}`;
export const FIRST_DROPS = "erste Tropfen";
/** "0.1 mol/dm3 ZnSO4 und 1 mol/dm3 Natronlauge". */
export const madeUpOf = (salt: string, reagent: string) => `${salt} und ${reagent}`;
/** Before that. */
export const DRAWN_FOR = "Gezeichnet für";
/** Along the axes. */
export const added = (reagent: string) => `cm³ ${reagent} zugegeben`;
export const amountOf = (unit: string, ion: string) => `${unit} ${ion}`;
/** Behind a species in the key. */
export const KINDS = { solid: "fest", dissolved: "gelöst" };
export const flat = (from: string, to: string) =>
  `Von ${from} bis ${to} ändert sich kaum etwas; das ist im Bild weggelassen.`;

/** Looking along it. */
export const look = (reagent: string) => `Die Kurve entlang: Tropfen ${reagent}, die zugegeben sind`;
export const SLIDE = " Schiebe, oder nimm die Pfeiltasten, um Tropfen für Tropfen weiterzugehen.";
export const OTHER = "anderes";
export const drops = (cm3: string, count: number) => `${cm3} (${count} Tropfen)`;

/** The figures. */
export const FIGURES = "Die Zahlen";
export const ofPlace = (place: string) => ` zu ${place}`;
export const figuresOf = (place: string) => `Zahlen zu ${place}`;
/** Before and behind the name of the ion. */
export const PART_OF_THE = "Anteil von";
export const IN_EACH = "in jedem Stoff";
export const DROPS = "Tropfen";

/** Changing it. */
export const CHANGE = "Ändere sie";
export const curveOf = (sample: string) => `: die Kurve von ${sample}`;
export const saltIn = (sample: string) => `Salz in ${sample}`;
export const OWN = " (das der Aufgabe)";
export const BACK_TO_OWN = "Zurück zur Vorgabe der Aufgabe";
/** Spoken. */
export const backToOwn = (madeUp: string) => `Zurück zur Vorgabe der Aufgabe: ${madeUp}.`;
export const drawnFor = (madeUp: string) => `Gezeichnet für ${madeUp}.`;
export const WORKING = "Wird berechnet…";
export const notDrawn = (why: string, madeUp: string) =>
  `Nicht gezeichnet: ${why}. Die Kurve ist noch die für ${madeUp}.`;
export const ofSample = (sample: string) => `Probe ${sample}`;
export const strengthOf = (what: string) => `Konzentration: ${what}, mol/dm³`;
export const slider = (what: string) => `Konzentration: ${what}, Schieberegler`;
export const faultStays = (fault: string) => `${fault} Die Kurve bleibt, wie sie war.`;
export const withPoint = (figure: string) => `Schreibe die Zahl mit einem Komma: ${figure}.`;
export const giveStrength = (from: string, to: string) =>
  `Gib eine Konzentration von ${from} bis ${to} mol/dm3 an, zum Beispiel ${to}.`;

/** Why there is no curve: half sentences. */
export const REFUSED = {
  tooLong: "die Berechnung hat zu lange gedauert und wurde abgebrochen",
  notStarted: "die Berechnung ließ sich nicht starten",
  unreadable: "die Berechnung gab eine Antwort, die sich nicht lesen lässt",
  failed: "die Berechnung ist gescheitert",
  notLoaded: "die Berechnung ließ sich nicht laden; lade die Seite neu, wenn das Netz wieder da ist",
};

/** What it shows. A part of the ion: all of it, or so many per cent. */
export const ALL = "alles";
/** @param at where it holds what part of the ion; `most`: no more anywhere */
export const appears = (
  reagent: string,
  from: string,
  what: string,
  at: { cm3: string; part: string; ion: string; most: boolean },
) =>
  `${capital(reagent)} macht aus ${from} ${what}, das sich kaum löst: Ein Niederschlag entsteht. Bei ${at.cm3} enthält er ${at.part} von ${at.ion}, ${at.most ? "mehr wird es nicht" : "viel mehr wird es nicht"}.`;
export const fromStart = (part: string, ion: string, what: string) =>
  `Am Anfang steckt ${part} von ${ion} im Niederschlag, ${what}.`;
export const remains = (_reagent: string) => "Mehr davon löst ihn nicht: Der Niederschlag bleibt.";
export const takesALittle = (_reagent: string, part: string, to: string) =>
  `Mehr davon macht aus einem kleinen Teil, ${part}, ${to}; für das Auge bleibt der Niederschlag.`;
export const OTHER_SPECIES = "andere Teilchen";
/** @param solid it turns into another solid, and does not dissolve; `left`: what is left of it in the end */
export const goes = (_reagent: string, what: string, to: string, solid: boolean, left: string) =>
  `Mehr davon macht aus ${what} ${to}, ${solid ? "einen anderen Feststoff" : "das gelöst bleibt: Der Niederschlag verschwindet"}. ${left}`;
export const stillInIt = (part: string, ion: string) => `Am Ende steckt noch ${part} von ${ion} darin.`;
export const noneLeft = (from: string) => `Von ${from} an ist nichts mehr davon da.`;
export const turns = (reagent: string, from: string, to: string) => ` ${capital(reagent)} macht aus ${from} ${to}.`;
export const noPrecipitate = (ion: string) => `Kein Niederschlag entsteht: ${ion} bleibt gelöst.`;
export const hardlyAny = (ion: string) => `Nie steckt mehr als ein Zwanzigstel von ${ion} in einem Niederschlag.`;
