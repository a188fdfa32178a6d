/** The sheet that every page is written on. */

/** After the name of the site, where a page is the first. */
export const SUBTITLE = "Salze analysieren, Schritt für Schritt";
export const SKIP = "Zum Inhalt springen";
export const SITE = "Seiten";
export const LANGUAGES = "Sprache";
export const ROOMS = {
  practicals: "Versuche",
  ionTests: "Nachweise",
  ions: "Ionen",
  method: "Vorgehen",
  cautions: "Sicherheit",
  paper: "Eigene Aufgabe",
  search: "Suche",
};
/** The line under every page; then the two links in it. */
export const FOOT =
  "Was deine Lehrkraft sagt und was an deiner Schule gilt, geht allem auf diesen Seiten vor. Proben, Orte und Personen in den Versuchen sind erfunden.";
export const KEEP = "Kurs auf diesem Gerät behalten";
export const OR_PRINT = " oder";
export const PRINT = "alles drucken";

/** A page that stands in a frame of another site. */
export const framedTitle = (what: string, practical: string, course: string) =>
  `${what}: ${practical}, im Rahmen · ${course}`;
export const FROM_WALKTHROUGH = "Aus der Anleitung";
export const framedFoot = (course: string) =>
  `, ${course}. Schutzbrille auf; deine Lehrkraft und die Regeln deiner Schule gehen vor.`;
