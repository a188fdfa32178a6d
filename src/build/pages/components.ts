/** What authors may use in a page besides Markdown, as the check knows it; `Prose.astro` hands the same to the page. */
import { STANDARD_TESTS } from "../../engine/constants/standard-tests.ts";
import { FormulaError, parseFormula } from "../../engine/formula/parse.ts";

/** What is wrong with the text of an attribute: what was found, and what to do. */
export type AttributeFault = { found: string; advice: string } | undefined;

/** What of the course an attribute may name. */
export interface Named {
  ionTests: readonly string[];
  terms: readonly string[];
}

type Check = (text: string, named: Named) => AttributeFault;

const STANDARD = STANDARD_TESTS.map(({ id }) => id);

const oneOf = (what: string, names: readonly string[], text: string): AttributeFault =>
  names.includes(text) ? undefined : { found: `no such ${what}`, advice: `use one of ${names.join(", ")}` };

const formula: Check = (text) => {
  try {
    parseFormula(text);
    return undefined;
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { found: error.message, advice: "correct the formula: mhchem notation, such as SO4^2-" };
  }
};
const standard: Check = (text) => oneOf("standard test", STANDARD, text);
const standards: Check = (text) =>
  text
    .split(",")
    .map((one) => standard(one.trim(), { ionTests: [], terms: [] }))
    .find((fault) => fault !== undefined);
const kindOfIon: Check = (text) => oneOf("kind of ion", ["cation", "anion"], text);
const anything: Check = () => undefined;

interface Component {
  /** Attributes it cannot do without. */
  needs: Readonly<Record<string, Check>>;
  may?: Readonly<Record<string, Check>>;
}

export const COMPONENTS: Readonly<Record<string, Component>> = {
  Chem: { needs: { of: formula } },
  // An equation is read and balanced by `equations/`.
  Equation: { needs: { of: anything } },
  GasTests: { needs: {} },
  HeatedSolids: { needs: {} },
  IndicatorColours: { needs: {} },
  Narrowing: { needs: { salt: formula, cations: anything, anions: anything, tests: standards } },
  Powders: { needs: {} },
  Predicted: {
    needs: { test: (text, { ionTests }) => oneOf("page in src/content/ion-tests", ionTests, text) },
    may: { ions: kindOfIon },
  },
  Shown: { needs: { salt: formula, test: standard }, may: { stage: anything } },
  Sources: { needs: {}, may: { read: anything, remembered: anything } },
  Standard: { needs: { of: standard, ions: kindOfIon } },
  Term: {
    needs: { of: (text, { terms }) => oneOf("term in src/content/glossary.yaml", terms, text) },
    may: { capital: anything },
  },
};
