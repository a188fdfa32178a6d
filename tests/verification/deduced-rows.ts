/**
 * The boards' published rows as worked examples for deduction: what a row prints is recorded, and what `deduce` leaves over the engine's
 * predictions is held against the ions that the rows themselves leave.
 */

import type { PredictionTable } from "../../src/engine/bench/prediction-table.ts";
import { createPredictor } from "../../src/engine/bench/predictor.ts";
import { recordInTable } from "../../src/engine/bench/record-in-table.ts";
import { tabulate } from "../../src/engine/bench/tabulate.ts";
import { ION_LISTS, type IonList } from "../../src/engine/constants/ions.ts";
import { deduce } from "../../src/engine/deduction/deduce.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { cellsOf, type Observation, type Procedure, procedure, statement } from "../../src/engine/practical.ts";
import { phrase } from "../../src/engine/wording/phrase.ts";
import { type Comparison, comparison } from "./comparison.ts";
import {
  asRecorded,
  BOARD_TABLE,
  leftByNotes,
  type PublishedSight,
  sightsOf,
  type Variant,
  variantsOf,
} from "./published-sights.ts";
import { NO_STRENGTH_GIVEN } from "./qualitative.ts";
import type { PublishedRow } from "./qualitative-rows.ts";
import type { Steps } from "./qualitative-steps.ts";
import { reference } from "./reference.ts";

const SOURCE = "tests/reference/qualitative-tables.json (boards' published notes and textbooks)";

/** Rows that are recorded together, the kind of ion they tell, and what the paper allows. */
export interface Example {
  name: string;
  kind: "cation" | "anion";
  of: (row: PublishedRow) => boolean;
  paper: IonList;
  /** The samples' strength is left open, as the rows leave it; without it they are 0.1 mol/dm3. */
  open?: true;
}

const alkali = ({ section }: PublishedRow): boolean => section === "cation-alkali";
const confirming = (reagent: string) => (row: PublishedRow) =>
  alkali(row) || (row.section === "confirmatory" && row.reagent === reagent);
/** They speak of mixtures: of what misleads there. */
const FALSE_POSITIVES = ["Q115", "Q116"];

const anionTest = ({ section, id }: PublishedRow): boolean => section === "anion" && !FALSE_POSITIVES.includes(id);
const inOneTable = (row: PublishedRow): boolean => anionTest(row) && row.sources.includes(BOARD_TABLE);

const { school, advanced } = ION_LISTS;
/** With all cations some of these tests have more different sights than a table holds. */
const alkaliSalts: IonList = { ...advanced, cations: ["Li+", "Na+", "K+"] };

export const EXAMPLES: readonly Example[] = [
  { name: "alkalis, school list", kind: "cation", of: alkali, paper: school },
  { name: "alkalis, advanced list", kind: "cation", of: alkali, paper: advanced },
  { name: "alkalis and iodide, school list", kind: "cation", of: confirming("KI(aq)"), paper: school },
  { name: "alkalis and iodide, advanced list", kind: "cation", of: confirming("KI(aq)"), paper: advanced },
  { name: "alkalis and sulfuric acid, school list", kind: "cation", of: confirming("dilute H2SO4"), paper: school },
  { name: "anion tests of one board, school list", kind: "anion", of: inOneTable, paper: school },
  { name: "all anion tests, school list", kind: "anion", of: anionTest, paper: school },
  { name: "all anion tests, advanced list of alkali metals", kind: "anion", of: anionTest, paper: alkaliSalts },
  {
    name: "all anion tests, advanced list of alkali metals, strength left open",
    kind: "anion",
    of: anionTest,
    paper: alkaliSalts,
    open: true,
  },
];

/** One recorded variant, and the ions left: by deduction and by the notes (undefined where these say too little). */
export interface Deduced {
  variant: Variant;
  /** The rows recorded. */
  rows: string;
  verdicts: { ion: string; left: boolean; byNotes: boolean | undefined }[];
}

const GIVEN = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;

const predictor = createPredictor(createSolver());

/** Every variant of every ion of a list, recorded and concluded from. */
export function deduced({ kind, of, paper, open }: Example): Deduced[] {
  const ions: readonly string[] = paper[`${kind}s`];
  const variants = ions.map((ion) => variantsOf(ion, of));
  const others: readonly string[] = paper[kind === "cation" ? "anions" : "cations"];
  const company = others.flatMap((ion) => sightsOf(ion, () => true));
  const tubes = tubesOf(variants.flat(2).flatMap(({ sights }) => sights));
  const parts = procedure.parse(
    tubes.map((steps, index) => ({
      label: "abcdefghijklmnopqrstuvwxyz"[index],
      title: "test",
      tests: steps.map((each) => ({ steps: each })),
    })),
  );
  const { table } = tabulate(
    {
      samples: [{ label: "A", ...(open ? NO_STRENGTH_GIVEN : GIVEN) }],
      paper: statement.parse(paper),
      parts,
    },
    predictor,
    phrase,
  );
  return variants.flat().flatMap((variant) => {
    const record = recordOf(variant, tubes, parts);
    if (record === undefined) return [];
    const left = ionsLeft(table, record, kind);
    return [
      {
        variant,
        rows: [...new Set(variant.sights.map(({ row }) => row.id))].join("+"),
        verdicts: ions.map((ion, at) => ({
          ion,
          left: left.has(ion),
          byNotes: ion === variant.ion ? true : leftByNotes(variant, variants[at], company),
        })),
      },
    ];
  });
}

/** The tests of all sights, each tube once and to its end. */
function tubesOf(sights: readonly PublishedSight[]): Steps[] {
  const all = [...new Map(sights.map(({ steps }) => [JSON.stringify(steps), steps])).values()];
  return all.filter((steps) => !all.some((other) => other.length > steps.length && begins(other, steps)));
}
const begins = (tube: Steps, steps: Steps): boolean =>
  JSON.stringify(tube.slice(0, steps.length)) === JSON.stringify(steps);

/** By cell; undefined when the record has no word for one of the sights. */
function recordOf(
  { sights }: Variant,
  tubes: readonly Steps[],
  parts: Procedure,
): Record<string, Observation> | undefined {
  const cells = cellsOf(parts);
  const row: Record<string, Observation> = {};
  for (const sight of sights) {
    const seen = asRecorded(sight);
    if (seen === undefined) return undefined;
    const tube = tubes.findIndex((steps) => begins(steps, sight.steps));
    const cell = cells.find(({ part, index }) => part === parts[tube] && index === sight.steps.length - 1);
    if (!cell) throw new RangeError(`${sight.row.id} has no cell`);
    row[cell.id] = seen;
  }
  return row;
}

function ionsLeft(table: PredictionTable, record: Record<string, Observation>, kind: Example["kind"]): Set<string> {
  const own = structuredClone(table);
  const { samples } = deduce(own, recordInTable(own, { A: record }, phrase));
  return new Set(
    samples[0].ions.flatMap((one) => (one.kind === kind && one.standing !== "impossible" ? [one.ion] : [])),
  );
}

const reasons = reference<Record<string, string>>("known-differences-deduction.json");

/** Ion by ion: whether deduction leaves what the notes leave. */
export function compareDeduced(example: Example): Comparison {
  const result = comparison(`published rows recorded, ${example.name}`, SOURCE);
  for (const { variant, rows, verdicts } of deduced(example)) {
    for (const { ion, left, byNotes } of verdicts) {
      if (byNotes === undefined) {
        const cause = "verdicts: the notes do not say what the other ion, or its company, shows in one of these tests";
        result.left[cause] = (result.left[cause] ?? 0) + 1;
        continue;
      }
      result.compared++;
      if (left === byNotes) {
        result.agreed++;
        continue;
      }
      const id = `${variant.ion}: ${ion}`;
      const words = left ? "still possible, excluded by the notes" : "excluded, left by the notes";
      result.misses.push({ id, difference: `${rows} recorded: ${ion} ${words}`, reason: reasons[id] });
    }
  }
  return result;
}
