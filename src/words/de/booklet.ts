/** The whole course as one document. */

export const TITLE = "Der ganze Kurs zum Drucken";
export const DESCRIPTION =
  "Alle Anleitungen, Nachweise, Ionen, das Vorgehen und die Sicherheit als ein Dokument, mit Inhalt und Seitenzahlen.";
export const wholeCourse = (course: string) => `${course}: der ganze Kurs`;
export const ABOUT =
  "Alle Seiten des Kurses als ein Dokument. Drücke auf den Knopf und warte, bis alle da sind; dann drucke aus deinem Browser, auf Papier oder in eine Datei. Es ist lang: Wähle beim Drucken einzelne Seiten, oder drucke eine Anleitung von ihrer eigenen Seite.";
export const NEEDS_SCRIPT =
  "Um die Seiten zusammenzustellen, braucht es JavaScript. Drucke sonst jede Seite unten für sich.";
export const PUT_TOGETHER = "Alle Seiten hier zusammenstellen";
export const COMES_FIRST =
  "Deine Lehrkraft und die Regeln deiner Schule gehen allem vor, was hier steht. Die Anleitungen nennen ihre Salze.";
export const CONTENTS = "Inhalt";
export const WORDS = "Wörter";
export const GLOSSARY = "Glossar";
export const howFar = (pages: number, of: number) =>
  pages < of ? `${pages} von ${of} Seiten …` : `Alle ${of} Seiten sind da. Drucke sie aus deinem Browser.`;
export const NOT_WHOLE =
  "Eine Seite ließ sich nicht laden, das Dokument ist deshalb nicht vollständig. Prüfe die Verbindung, lade diese Seite neu, und drücke noch einmal auf den Knopf.";
