/** The conclusion on one sample in a sentence, as the trade says it. */
import * as say from "#words/conclude.ts";
import { list, OR } from "#words/language.ts";
import type { PredictionTable, SaltEntry } from "../../engine/bench/prediction-table.ts";
import type { Agreement, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { type IonNames, saltWords, withName } from "../names.ts";

/** When every sample fits salts of its own, but no choice of them obeys the paper: which statement fails, and who could mend it. */
function notTogether({ samples }: Agreement, sample: string): string {
  const reasons = samples.flatMap(({ ions }) => ions.flatMap(({ reasons: all }) => all));
  const clash = reasons.find((reason) => reason.by === "not together");
  if (!clash) return say.nothingAgrees(sample);
  const isOfOthers = clash.samples.length > 0 && !clash.samples.includes(sample);
  return isOfOthers ? say.waitsUntil(sample, clash.samples) : say.fitsAlone(sample, clash.statement);
}

/** Its own tests may decide a sample while another is still to be put right. */
function waiting(
  table: PredictionTable,
  names: IonNames,
  sample: string,
  alone: readonly number[],
  stuck: string[],
): string {
  const salts = alone.map((one) => table.salts[one]);
  const formulas = salts.map(({ formula }) => formula);
  const own = () => {
    if (salts.length === 1) return say.ALONE.holds(sample, saltWords(salts[0], names), formulas[0]);
    return salts.length > FEW ? say.ALONE.oneOf(sample, salts.length) : say.ALONE.mayBe(sample, formulas);
  };
  return say.butFirst(own(), stuck);
}

/** Above this many, ions are counted and not named; and salts. */
const NAMED = 6;
const FEW = 4;

const unique = (ions: string[]) => [...new Set(ions)];

/**
 * @param stuck samples whose own observations fit no salt: decides whose fault it is when nothing fits.
 * @param alone salts that fit the observations of this sample, whatever the others hold.
 * @returns a sentence with formulas in mhchem notation: "K holds zinc sulfate, ZnSO4: Zn^2+ and SO4^2-."
 */
export function headline(
  table: PredictionTable,
  names: IonNames,
  conclusion: Agreement,
  { sample, salts }: SampleConclusion,
  stuck: string[],
  alone: readonly number[],
): string {
  if (conclusion.assignments === 0) {
    if (stuck.includes(sample)) return say.fitsNothing(sample);
    if (stuck.length > 0) return waiting(table, names, sample, alone, stuck);
    return notTogether(conclusion, sample);
  }
  const left = salts.map((salt) => table.salts[salt]);
  if (left.length === 1) {
    const [{ formula, cations, anions }] = left;
    return say.holdsSalt(sample, saltWords(left[0], names), formula, [...cations, ...anions]);
  }
  const [cations, anions] = [ionsLeft(left, "cations", names), ionsLeft(left, "anions", names)];
  if (cations.settled) return say.holdsIon(sample, cations.words, anions.are);
  if (anions.settled) return say.holdsIon(sample, anions.words, cations.are);
  const { set } = table.samples.find(({ label }) => label === sample) ?? table.samples[0];
  const all = left.length === table.sets[set].salts.length;
  return say.stillOpen(sample, left.length, all, [cations.are, anions.are]);
}

interface IonsLeft {
  /** Every salt left holds these ions and no others of the kind. */
  settled: boolean;
  /** "the cation is", "the anions are", and the words. */
  are: string;
  /**
   * "calcium (Ca^2+) or magnesium (Mg^2+)"; "one of 7" when there are many; of samples with several ions of the kind
   * "aluminium (Al^3+), with sodium (Na+) or potassium (K+)", "two of sodium (Na+), potassium (K+) and zinc (Zn^2+)".
   */
  words: string;
}

function ionsLeft(left: readonly SaltEntry[], kind: "cations" | "anions", names: IonNames): IonsLeft {
  const ions = unique(left.flatMap((salt) => salt[kind]));
  const inAll = ions.filter((ion) => left.every((salt) => salt[kind].includes(ion)));
  const rest = ions.filter((ion) => !inAll.includes(ion));
  const sizes = [...new Set(left.map((salt) => salt[kind].length))];
  const several = left.some((salt) => salt[kind].length > 1);
  const named = (which: string[]) => which.map((ion) => withName(ion, names));
  const inWords = () => {
    if (rest.length === 0) return list(named(ions));
    if (inAll.length > 0) {
      return say.withOthers(named(inAll), rest.length > NAMED ? say.outOf([1], rest.length) : list(named(rest), OR));
    }
    if (ions.length > NAMED) return say.outOf(sizes, ions.length);
    return several ? say.outOf(sizes, named(ions)) : list(named(ions), OR);
  };
  const words = inWords();
  return { settled: rest.length === 0, are: say.left(kind, several, words), words };
}
