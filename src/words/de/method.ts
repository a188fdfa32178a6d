/** Method, the glossary, and the worked example of ions that become fewer. */

export const METHOD = "Vorgehen";
export const DESCRIPTION =
  "Wie man eine Aufgabe liest, vorbereitet, protokolliert, auswertet und sich die Zeit einteilt.";
export const ABOUT =
  "Was in jedem Versuch gleich ist: wie die Arbeit gemacht wird und mit welchen Worten man sie aufschreibt. Fünf kurze Seiten, jede mit einem berechneten Beispiel.";
/** Before the link to it. */
export const ALL_TERMS = "Alle Fachwörter auf einer Seite: das";
export const GLOSSARY_LINK = "Glossar";

export const GLOSSARY = "Glossar";
export const GLOSSARY_DESCRIPTION = "Die Fachwörter der Salzanalyse, jedes in ein oder zwei Sätzen.";
export const GLOSSARY_ABOUT =
  "Wörter mit einer gepunkteten Linie darunter führen überall im Kurs hierher. Zeige auf eines oder tippe es an, dann steht seine Bedeutung daneben.";
/** Before other names of a term. */
export const ALSO = ", auch:";

/** Which ions are left after each test. */
export const LEFT_CAPTION = "Ionen, die nach jedem Nachweis übrig sind";
export const TEST = "Nachweis";
export const RECORDED = "Protokolliert";
export const LEFT = { cations: "Übrige Kationen", anions: "Übrige Anionen" };
export const BEFORE_FIRST = "Vor dem ersten Nachweis";
export const LEFT_FOR =
  "Berechnet über alle Salze dieser Ionen, die sich lösen, mit den üblichen Konzentrationen der Flaschen.";
