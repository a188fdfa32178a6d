/** The page before and the page after. */

interface Around {
  /** What the two are. */
  both: string;
  before: string;
  after: string;
}

export const PRACTICAL: Around = {
  both: "Voriger und nächster Versuch",
  before: "Voriger Versuch",
  after: "Nächster Versuch",
};
export const METHOD: Around = { both: "Vorige und nächste Seite", before: "Vorige Seite", after: "Nächste Seite" };
export const TEST: Around = {
  both: "Voriger und nächster Nachweis",
  before: "Voriger Nachweis",
  after: "Nächster Nachweis",
};
export const ION: Around = { both: "Voriges und nächstes Ion", before: "Voriges Ion", after: "Nächstes Ion" };
