/** Standard tests whose result would be false for some salt of the advanced list, worked out once for all pages on tests and ions. */
import { type Interference, interference } from "../../engine/bench/interference.ts";
import { saltOf } from "../../engine/bench/salt.ts";
import { ION_LISTS } from "../../engine/constants/ions.ts";
import { STANDARD_TESTS } from "../../engine/constants/standard-tests.ts";
import { remembering } from "../../engine/equilibrium/remembering.ts";
import { housePart } from "../department/standard-tests.ts";
import { predictor } from "../predictor.ts";
import { isCation, TRIED_AT } from "./tried.ts";

export interface FalseResult extends Interference {
  /** The standard test. */
  test: string;
}

/** The tests in which a false result is known of and looked for; the others of the list repeat what these do. */
const LOOKED_AT = ["sodium-hydroxide", "ammonia", "carbonate", "nitrate", "halide", "sulfate", "sulfite"];

let found: FalseResult[] | undefined;

/** In the order of the list; what misleads in several stages of a test stands at the first. */
export function falseResults(): FalseResult[] {
  found ??= lookForThem();
  return found;
}

/** Those that concern salts of one ion, with just these salts. */
export function falseResultsOf(ion: string): FalseResult[] {
  const { cations, anions } = ION_LISTS.advanced;
  const mine = new Set((isCation(ion) ? anions : cations).map((other) => formulaOf(ion, other)));
  return falseResults()
    .map((one) => ({ ...one, salts: one.salts.filter(({ salt }) => mine.has(salt)) }))
    .filter(({ salts }) => salts.length > 0);
}

const formulaOf = (ion: string, other: string): string =>
  (isCation(ion) ? saltOf(ion, other) : saltOf(other, ion)).formula;

function lookForThem(): FalseResult[] {
  const tests = STANDARD_TESTS.filter(({ id }) => LOOKED_AT.includes(id));
  const practical: Parameters<typeof interference>[0] = {
    samples: [{ label: "A", given: "solution", concentration: { molPerDm3: TRIED_AT } }],
    paper: {
      cations: [...ION_LISTS.advanced.cations],
      anions: [...ION_LISTS.advanced.anions],
      share: [],
      differ: [],
      same: [],
      contains: [],
    },
    parts: tests.map((test) => housePart(test, test.id, "solution")),
  };
  const all = interference(practical, remembering(predictor.solve)).map((one) => ({
    ...one,
    test: one.cell.replace(/\(\w+\)$/, ""),
  }));
  return all.filter((one, n) => all.findIndex(({ test, kind }) => test === one.test && kind === one.kind) === n);
}
