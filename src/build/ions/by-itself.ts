/** An ion before any test: the colour of its solution, what universal indicator says, and its flame. */
import { saltOf } from "../../engine/bench/salt.ts";
import { step } from "../../engine/practical/step.ts";
import type { Colour, Part } from "../../engine/practical.ts";
import { predictor } from "../predictor.ts";
import { isCation, TRIED_AT } from "./tried.ts";

export interface ByItself {
  /** The salt whose solution this is, mhchem. */
  salt: string;
  solution?: Colour;
  pH?: number;
  /** Of the indicator paper. */
  paper?: Colour;
}

/** The common partners, in the order in which a store is likely to have a soluble salt of them. */
const PARTNER = { cation: "NO3-", anion: "Na+" } as const;

const LOOK: Part = {
  label: "a",
  title: "by itself",
  tests: [{ steps: [step.parse({ take: "1 cm3" }), step.parse({ indicator: "universal indicator" })] }],
};

export function byItself(ion: string): ByItself {
  const salt = isCation(ion) ? saltOf(ion, PARTNER.cation) : saltOf(PARTNER.anion, ion);
  const seen = predictor.predict({ ions: salt.ions, molPerDm3: TRIED_AT }, [LOOK]).get("a");
  return {
    salt: salt.formula,
    solution: seen?.solution,
    pH: seen?.events.find(({ kind }) => kind === "indicator")?.pH,
    paper: seen?.readings[0]?.indicator,
  };
}
