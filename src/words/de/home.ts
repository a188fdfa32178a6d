/** The front door, and the page for an address that leads nowhere. */

export const DESCRIPTION =
  "Anleitungen zur Salzanalyse in der Schule, vom Reagenzglas ohne Namen bis zu den Ionen darin. Jede chemische Aussage ist berechnet.";
export const WHICH_IONS = "Welche Ionen sind im Reagenzglas?";
export const ABOUT =
  "Du bekommst ein Salz ohne Namen und eine Liste von Versuchen. Manche trüben, was im Reagenzglas ist, manche machen es wieder klar, bei einem entweicht ein Gas. Am Ende sagst du, welches Kation und welches Anion es enthält und warum es kein anderes sein kann. Diese Seiten führen dich durch die Arbeit.";
export const BEFORE_YOU_BEGIN = "Bevor du beginnst";
export const TAKE_CARE = "Vorsicht.";
export const ONLY_IN_A_LABORATORY =
  "Führe diese Versuche nur in einem Labor durch, unter Aufsicht einer Lehrkraft. Was sie sagt und was an deiner Schule gilt, geht allem vor, was hier steht.";
export const READ_CAUTIONS = "Lies die Seiten zur Sicherheit";

export const FIVE_PARTS = "Die Arbeit in fünf Teilen";
export const PARTS = [
  ["Lesen", "was gegeben ist, was die Aufgabe dir sagt und wozu jeder Versuch dient."],
  [
    "Vorbereiten",
    "Reagenzgläser, Aufschriften, Füllmarken, Reagenzien, Papiere und Späne, bevor die erste Flasche geöffnet wird.",
  ],
  [
    "Durchführen",
    "die Versuche, ein frisches Reagenzglas nach dem anderen, mit den Hinweisen zur Sicherheit neben den Schritten.",
  ],
  [
    "Protokollieren",
    "was du gesehen hast, in Worten, die Punkte bringen: Farbe, Niederschlag, im Überschuss, ein Gas mit seinem Nachweis.",
  ],
  ["Auswerten", "welche Ionen passen, welche sich widersprechen und wo, was noch offen ist, was du wiederholst."],
] as const;
export const HOW_WORKED_OUT = "Wie es berechnet wird";
export const CHANGE_ANY =
  "In jeder Anleitung kannst du jede Beobachtung ändern. Die Auswertung wird auf deinem eigenen Gerät neu berechnet, aus dem, was jedes zugelassene Salz zeigen würde.";
export const PRACTICALS = "Versuche";
/** A link, and what it leads to. */
export const MAP = ["Karte der Versuche", ": welche Nachweise und Ionen in jedem vorkommen."] as const;

export const LOOK_UP = "Zum Nachschlagen";
export const TESTS = ["Nachweise", ": für jeden eine Seite, mit dem, was jedes Ion darin zeigt."] as const;
export const IONS = [
  "Ionen",
  ": für jedes eine Seite, mit dem, was es in jedem Nachweis zeigt und womit man es verwechselt.",
] as const;
/** The glossary is a link of its own, before the full stop. */
export const METHOD = [
  "Vorgehen",
  ": wie man eine Aufgabe liest, vorbereitet, protokolliert, auswertet und sich die Zeit einteilt; und das",
  "Glossar",
] as const;
export const CAUTIONS = ["Sicherheit", ": Reagenzien, Gase und Handgriffe, an denen man sich verletzen kann."] as const;
export const SEARCH = ["Suche", ": in allem, nach Wort, Ion oder Reagenz."] as const;

export const WHO_FOR = "Für wen das ist";
export const PEOPLE = [
  ["Wer lernt,", "liest eine Anleitung vor dem Versuch, oder danach, um zu sehen, warum."],
  [
    "Wer unterrichtet,",
    "sieht, welche Proben die Versuche wirklich unterscheiden und wohin eine falsche Beobachtung führt.",
  ],
  ["Wer die Sammlung betreut,", "findet Reagenzgläser, Volumen, was bereitgestellt wird, und den Abfall."],
  [
    "Eine Fachschaft",
    "stellt die ganze Website als einfache Dateien bereit. Nichts wird irgendwohin gesendet, niemand wird gezählt.",
  ],
] as const;

/** No page at this address. */
export const NO_PAGE = "Keine solche Seite";
export const NO_PAGE_DESCRIPTION = "Unter dieser Adresse gibt es keine Seite.";
export const NO_VISIBLE_CHANGE = "Keine sichtbare Veränderung";
export const MAY_HAVE_MOVED =
  "Unter dieser Adresse gibt es keine Seite. Sie kann umgezogen sein, oder in der Adresse fehlt ein Buchstabe.";
export const ALL_PRACTICALS = "Alle Versuche";
export const ALL_TESTS = "Alle Nachweise";
export const TO_SEARCH = "Suche";
