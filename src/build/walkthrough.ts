/** Works out all that a walkthrough page shows of one practical. */
import { interference } from "../engine/bench/interference.ts";
import type { PredictionTable } from "../engine/bench/prediction-table.ts";
import { recordInTable } from "../engine/bench/record-in-table.ts";
import { formKey, type Tabulation } from "../engine/bench/tabulate.ts";
import {
  HEAT_OPENS,
  LOCAL_SOLIDS,
  SEEN_FIRST,
  SLOW_SOLIDS,
  SOLID_TO_SOLID,
} from "../engine/constants/kinetic-gates.ts";
import { LATER_LOOKS } from "../engine/constants/later-looks.ts";
import { STARCH } from "../engine/constants/starch.ts";
import { certificate } from "../engine/deduction/certificate.ts";
import { furtherPredictions } from "../engine/deduction/further-predictions.ts";
import { deduce, type Practical, phrase, planUsualBench, purposes, tabulate } from "../engine/index.ts";
import { answerOf } from "./answer.ts";
import { curvesOf } from "./curves.ts";
import { department } from "./department/department.ts";
import { keyOf } from "./department/key.ts";
import { houseParts, houseTests } from "./department/standard-tests.ts";
import { cache, predictor } from "./predictor.ts";
import type { NamedGate, Walkthrough } from "./walkthrough.types.ts";

export type { NamedGate, Walkthrough } from "./walkthrough.types.ts";

/** Worked out once for each practical, though several of its pages ask; each page gets a copy of its own, so the text is the key. */
const known = new Map<string, Walkthrough>();
/** Kept in memory at a time; pages are written kind by kind, so of a long course each comes back from its file once for each kind. */
const MOST = 300;

/** Predicts, deduces and plans. Throws what the engine throws for a procedure it cannot carry out; the content check words that. */
export function walkthrough(practical: Practical): Walkthrough {
  const key = keyOf(practical);
  const before = known.get(key);
  if (before) return before;
  const one = { practical, ...cache.recall("walkthrough", key, () => workOut(practical)) };
  known.set(key, one);
  if (known.size > MOST) known.delete(known.keys().next().value as string);
  return one;
}

function workOut(practical: Practical): Omit<Walkthrough, "practical"> {
  const { table, predictions, borders } = tabulate(practical, predictor, phrase);
  const record = recordInTable(table, practical.record, phrase);
  const answers = Object.fromEntries(practical.samples.map(({ label, salt }) => [label, salt]));
  const predicted = Object.fromEntries(
    practical.samples.map((sample) => {
      const salt = answerOf(table, sample)?.formula ?? "";
      return [sample.label, Object.fromEntries(predictions.get(formKey(sample))?.get(salt) ?? [])];
    }),
  );
  const acted = new Set(
    Object.values(predicted).flatMap((cells) => Object.values(cells).flatMap(({ gates }) => gates)),
  );
  return {
    table,
    record,
    conclusion: deduce(table, record),
    certificate: certificate(table, record),
    purposes: purposes(table),
    plan: planUsualBench(practical, table, department().tubes),
    answers,
    predicted,
    gates: namedGates(acted),
    interference: interference(practical, predictor.solve),
    borderline: bordersOf(practical, table, borders),
    curves: curvesOf(practical, predictor.solve),
    further: furtherPredictions(
      practical,
      table,
      predictor,
      houseTests().map((test) => houseParts(practical.samples, [test])),
    ),
  };
}

/** The cells of each true salt whose reading another strength or constant would change. */
function bordersOf(
  { samples }: Practical,
  table: PredictionTable,
  borders: Tabulation["borders"],
): Walkthrough["borderline"] {
  return Object.fromEntries(
    samples.map((sample) => {
      const near = borders.get(formKey(sample))?.get(answerOf(table, sample)?.formula ?? "");
      const mine = table.cells.filter(({ samples }) => samples.includes(sample.label)).map(({ id }) => id);
      return [sample.label, Object.fromEntries([...(near ?? [])].filter(([id]) => mine.includes(id)))];
    }),
  );
}

/** Solids that fall where a drop lands: those still there when the tube is looked at, and those that shaking takes. */
const lingering = LOCAL_SOLIDS.filter(({ dissolves }) => dissolves === "slowly");
const passing = LOCAL_SOLIDS.filter(({ dissolves }) => dissolves === "when shaken");

/** The gates that acted, with name and source. */
export function namedGates(ids: ReadonlySet<string>): NamedGate[] {
  const named = (gates: readonly Omit<NamedGate, "slow">[], slow: boolean) =>
    gates.flatMap(({ id, name, source }) => (ids.has(id) ? [{ id, slow, name, source }] : []));
  return [
    ...named([...SLOW_SOLIDS, ...SEEN_FIRST, ...LATER_LOOKS, ...lingering, SOLID_TO_SOLID], true),
    ...named([...HEAT_OPENS, ...passing, STARCH], false),
  ];
}
