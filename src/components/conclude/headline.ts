/** The conclusion on one sample in a sentence, as the trade says it. */
import type { PredictionTable, SaltEntry } from "../../engine/bench/prediction-table.ts";
import type { Agreement, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { type IonNames, saltWords, withName } from "../names.ts";
import { list } from "../sentence.ts";

/** When every sample fits salts of its own, but no choice of them obeys the paper: which statement fails, and who could mend it. */
function notTogether({ samples }: Agreement, sample: string): string {
  const reasons = samples.flatMap(({ ions }) => ions.flatMap(({ reasons: all }) => all));
  const clash = reasons.find((reason) => reason.by === "not together");
  if (!clash) return `${sample}: nothing agrees with what the paper says.`;
  if (clash.samples.length > 0 && !clash.samples.includes(sample)) {
    return `${sample} waits until ${list(clash.samples, "or")} is put right.`;
  }
  return `By its own tests ${sample} fits some salt, but not together with the other samples: the paper says ${clash.statement}.`;
}

/** Its own tests may decide a sample while another is still to be put right. */
function waiting(
  table: PredictionTable,
  names: IonNames,
  sample: string,
  alone: readonly number[],
  stuck: string[],
): string {
  const [first] = alone;
  const salt = table.salts[first];
  const own =
    alone.length === 1
      ? `holds ${saltWords(salt, names)}, ${salt.formula}`
      : alone.length > FEW
        ? `may be one of ${alone.length} salts`
        : `may be ${list(
            alone.map((one) => table.salts[one].formula),
            "or",
          )}`;
  return `By its own tests ${sample} ${own}, but ${list(stuck)} must be put right first.`;
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
    if (stuck.includes(sample)) return `No salt the paper allows fits all that is recorded for ${sample}.`;
    if (stuck.length > 0) return waiting(table, names, sample, alone, stuck);
    return notTogether(conclusion, sample);
  }
  const left = salts.map((salt) => table.salts[salt]);
  if (left.length === 1) {
    const [{ formula, cations, anions }] = left;
    return `${sample} holds ${saltWords(left[0], names)}, ${formula}: ${list([...cations, ...anions])}.`;
  }
  const [cations, anions] = [ionsLeft(left, "cations", names), ionsLeft(left, "anions", names)];
  if (cations.settled) return `${sample} holds ${cations.words}; the ${anions.are} ${anions.words}.`;
  if (anions.settled) return `${sample} holds ${anions.words}; the ${cations.are} ${cations.words}.`;
  const { set } = table.samples.find(({ label }) => label === sample) ?? table.samples[0];
  const all = left.length === table.sets[set].salts.length ? "all " : "";
  const open = [cations, anions].map(({ are, words }) => `the ${are} ${words}`);
  return `${sample} is still open, ${all}${left.length} salts: ${open.join("; ")}.`;
}

interface IonsLeft {
  /** Every salt left holds these ions and no others of the kind. */
  settled: boolean;
  /** "cation is", "anions are". */
  are: string;
  /**
   * "calcium (Ca^2+) or magnesium (Mg^2+)"; "one of 7" when there are many; of samples with several ions of the kind
   * "aluminium (Al^3+), with sodium (Na+) or potassium (K+)", "two of sodium (Na+), potassium (K+) and zinc (Zn^2+)".
   */
  words: string;
}

const NUMBERS = ["none", "one", "two"];

function ionsLeft(left: readonly SaltEntry[], kind: "cations" | "anions", names: IonNames): IonsLeft {
  const ions = unique(left.flatMap((salt) => salt[kind]));
  const inAll = ions.filter((ion) => left.every((salt) => salt[kind].includes(ion)));
  const rest = ions.filter((ion) => !inAll.includes(ion));
  const sizes = unique(left.map((salt) => NUMBERS[salt[kind].length] ?? `${salt[kind].length}`));
  const several = left.some((salt) => salt[kind].length > 1);
  const named = (which: string[], word: string) =>
    list(
      which.map((ion) => withName(ion, names)),
      word,
    );
  const are = several ? `${kind} are` : `${kind.slice(0, -1)} is`;
  if (rest.length === 0) return { settled: true, are, words: named(ions, "and") };
  if (inAll.length > 0) {
    const others = rest.length > NAMED ? `one of ${rest.length}` : named(rest, "or");
    return { settled: false, are, words: `${named(inAll, "and")}, with ${others}` };
  }
  if (ions.length > NAMED) return { settled: false, are, words: `${list(sizes, "or")} of ${ions.length}` };
  return {
    settled: false,
    are,
    words: several ? `${list(sizes, "or")} of ${named(ions, "and")}` : named(ions, "or"),
  };
}
