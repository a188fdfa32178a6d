/** Ein Gestell, das sich für andere Gläser nicht neu zeichnen ließ: kommt mit der Anleitung, anders als die übrigen Wörter des Gestells. */

export const NOT_DRAWN = "Nicht gezeichnet.";
export const PLANNED_ONES = "Oben stehen die geplanten Gläser: Prüfe die Verbindung und lade die Seite neu.";
