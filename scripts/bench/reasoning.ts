/** Deduction where it is hardest: long procedures, many samples, every proof of a conclusion, and a general-purpose solver beside it. */
import load from "highs";
import type { PredictionTable, TableRecord } from "../../src/engine/bench/prediction-table.ts";

import { nextTests } from "../../src/engine/deduction/next-test.ts";
import { type Proof, proofOfIon } from "../../src/engine/deduction/proof.ts";
import { createPredictor, createSolver, deduce, phrase, tabulate } from "../../src/engine/index.ts";
import { type Procedure, statement } from "../../src/engine/practical.ts";
import { clashesWithout, coverModel, leastCover } from "../../tests/engine/deduction/least-cover.ts";
import { procedureOf25 } from "./procedure-of-25.ts";
import { median, quantile, rounded, say, times } from "./timing.ts";

const ROUNDS = { records: 5, largest: 11, proofs: 5, next: 11, milp: 3 };
const RECORDS = 200;
const SEED = 25;

/** Predictions for so many solutions of 0.1 mol/dm3. */
function tableOf(letters: string, paper: object, parts: Procedure): PredictionTable {
  const samples = [...letters].map((label) => ({
    label,
    given: "solution" as const,
    concentration: { molPerDm3: 0.1 },
    salt: "ZnSO4",
  }));
  return tabulate({ samples, paper: statement.parse(paper), parts }, createPredictor(createSolver()), phrase).table;
}

/** Random numbers from 0 to below `n`, always the same ones (Park and Miller's generator). */
function chance(): (n: number) => number {
  let state = SEED;
  return (n) => {
    state = (state * 48271) % 2147483647;
    return state % n;
  };
}

/** Records as a class may have them: of salts drawn for the samples, some of the cells filled with what these salts show. */
function records(table: PredictionTable, draw: (n: number) => number, filled: () => number): TableRecord[] {
  return Array.from({ length: RECORDS }, () =>
    Object.fromEntries(
      table.samples.map(({ label, set: of }) => {
        const set = table.sets[of];
        const row = draw(set.salts.length);
        const cells = table.cells.map((cell, c) => ({ id: cell.id, reading: set.main[row][c], at: draw(1e6) }));
        const done = cells.sort((a, b) => a.at - b.at).slice(0, filled());
        return [label, Object.fromEntries(done.flatMap(({ id, reading }) => (reading < 0 ? [] : [[id, reading]])))];
      }),
    ),
  );
}

/** One observation of a record misread: as the next thing the cell may show. */
function withSlip(table: PredictionTable, record: TableRecord, draw: (n: number) => number): TableRecord {
  const places = Object.entries(record).flatMap(([label, row]) => Object.keys(row).map((id) => ({ label, id })));
  const slip = places[draw(places.length)];
  if (!slip) return record;
  const readings = table.cells.find(({ id }) => id === slip.id)?.readings.length ?? 1;
  const misread = (record[slip.label][slip.id] + 1) % readings;
  return { ...record, [slip.label]: { ...record[slip.label], [slip.id]: misread } };
}

/** Every ion that the record proves of a sample. */
function certain(
  table: PredictionTable,
  record: TableRecord,
): { s: number; kind: "cations" | "anions"; ion: string }[] {
  return deduce(table, record).samples.flatMap(({ ions }, s) =>
    ions.flatMap(({ ion, kind, standing }) => (standing === "certain" ? [{ s, kind: `${kind}s` as const, ion }] : [])),
  );
}

const proofsOf = (
  table: PredictionTable,
  record: TableRecord,
  ions: ReturnType<typeof certain>,
): (Proof | undefined)[] => ions.map(({ s, kind, ion }) => proofOfIon(table, record, s, kind, ion));

/** The largest space: six samples of the advanced list, nothing recorded, and a paper that ties the samples together. */
function largest() {
  say("deduce: six samples, advanced list, empty record");
  const ions = { cations: "advanced", anions: "advanced" };
  const share = [{ samples: ["A", "B", "C"], ion: "cation" }];
  const shareBoth = [...share, { samples: ["D", "E", "F"], ion: "anion" }];
  const everyTwo = ["cation", "anion"].map((ion) => ({ samples: [..."ABCDEF"], ion }));
  const table = tableOf("ABCDEF", ions, procedureOf25.slice(0, 2));
  const papers = [
    { ...ions, share },
    { ...ions, share, inAll: { cations: 4 } },
    { ...ions, inAll: { cations: 4, anions: 4 } },
    { ...ions, share: shareBoth },
    { ...ions, differ: shareBoth },
    { ...ions, share: shareBoth, inAll: { cations: 4, anions: 4 } },
    { ...ions, differ: everyTwo },
  ].map((paper) => ({ ...table, paper: statement.parse(paper) }));
  const [shareMs, shareInAllMs, inAllMs, bothMs, bothDifferMs, bothInAllMs, everyTwoDifferMs] = times(
    ROUNDS.largest,
    papers.map((paper) => () => deduce(paper, {})),
  ).map(rounded);
  return { shareMs, shareInAllMs, inAllMs, bothMs, bothDifferMs, bothInAllMs, everyTwoDifferMs };
}

export async function benchReasoning() {
  const three = tableOf("ABC", { cations: "school", anions: "school" }, procedureOf25);
  const draw = chance();
  const some = records(three, draw, () => 1 + draw(25));
  // Every second one has a slip in it: then most fit nothing, and what to repeat must be found.
  const all = some.flatMap((record) => [record, withSlip(three, record, draw)]);
  say(`deduce: ${all.length} records of three samples and 25 tests`);
  const conclusions = times(
    ROUNDS.records,
    all.map((record) => () => deduce(three, record)),
  );
  const decided = some
    .map((record) => ({ record, ions: certain(three, record) }))
    .filter(({ ions }) => ions.length > 0);
  say(`proofs: of all ions of ${decided.length} of these records`);
  const proofs = times(
    ROUNDS.proofs,
    decided.map(
      ({ record, ions }) =>
        () =>
          proofsOf(three, record, ions),
    ),
  );
  say("next tests: the same records");
  const next = times(
    ROUNDS.next,
    some.map((record) => () => nextTests(three, record)),
  );
  return {
    records25: { medianMs: rounded(median(conclusions)), p99Ms: rounded(quantile(conclusions, 0.99)) },
    sixSamples: largest(),
    proofs: { medianMs: rounded(median(proofs)), p99Ms: rounded(quantile(proofs, 0.99)) },
    nextTests: { medianMs: rounded(median(next)), p99Ms: rounded(quantile(next, 0.99)) },
    ...(await againstSolver()),
  };
}

/** The same proofs by the solver, on a table small enough to write all assignments down: its time in units of ours. */
async function againstSolver() {
  const highs = await load();
  const table = tableOf("AB", { cations: "school", anions: "school" }, procedureOf25);
  const draw = chance();
  const questions = records(table, draw, () => 6 + draw(10))
    .slice(0, 20)
    .flatMap((record) =>
      certain(table, record)
        .slice(0, 1)
        .map((one) => ({ record, ...one })),
    );
  say(`solver: ${questions.length} proofs by HiGHS`);
  const models = questions.flatMap(({ record, s, kind, ion }) => {
    // Equal rows ask the same; the solver is not to be charged for them.
    const rows = new Map(clashesWithout(table, record, s, kind, ion).map((row) => [row.join(), row]));
    const model = coverModel([...rows.values()]);
    return model === undefined ? [] : [{ record, s, kind, ion, model }];
  });
  for (const { record, s, kind, ion, model } of models) {
    const found = proofOfIon(table, record, s, kind, ion)?.places.length;
    const least = leastCover(highs, model);
    if (found !== least) throw new Error(`${found} observations prove ${ion}, and the solver needs ${least}`);
  }
  const own = times(
    ROUNDS.milp,
    models.map(
      ({ record, s, kind, ion }) =>
        () =>
          proofOfIon(table, record, s, kind, ion),
    ),
  );
  const solver = times(
    ROUNDS.milp,
    models.map(
      ({ model }) =>
        () =>
          leastCover(highs, model),
    ),
  );
  return { solverToProof: rounded(median(solver.map((ms, q) => ms / own[q]))) };
}
