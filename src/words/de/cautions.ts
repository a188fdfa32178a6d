/** Pages of cautions. */

export const CAUTIONS = "Sicherheit";
export const DESCRIPTION =
  "Reagenzien, Gase und Handgriffe der Salzanalyse, an denen man sich verletzen kann, und was zu tun ist.";
export const ABOUT =
  "Reagenzien in der Schule sind verdünnt, aber manche machen blind, manche sind giftig, und ein erhitztes Reagenzglas schießt heraus, was darin ist. Lies die Seite zu jedem Reagenz, das du öffnen wirst. Was deine Lehrkraft sagt und was an deiner Schule gilt, geht immer vor.";
export const WHAT_THEY_ARE_NOT = "Was diese Seiten nicht sind";
export const NO_DATA_SHEET =
  "Diese Seiten sind kein Sicherheitsdatenblatt und keine Gefährdungsbeurteilung. Deine Schule hat beides; frag danach.";
export const KINDS = { operation: "Handgriffe", reagent: "Reagenzien und Proben", gas: "Gase" };

/** One caution. */
export const titleOf = (caution: string) => `Vorsicht: ${caution}`;
export const CAUTION = "Sicherheit";
export const KIND = { operation: "Handgriff", reagent: "Reagenz", gas: "Gas" };
export const FIRST_OF_ALL = "Vor allem anderen";
export const TEACHER_DECIDES =
  "Deine Lehrkraft und die Regeln deiner Schule entscheiden. Wenn etwas schiefgeht, sag es ihr sofort.";
/** Before tests. */
export const MET_IN = "Kommt vor in";

/** Where its facts come from. */
export const readFor = (sources: string) => `Für diese Seite gelesen: ${sources}.`;
export const FROM_MEMORY = "Aus der Erinnerung, prüfe es am Sicherheitsdatenblatt deiner Schule:";
