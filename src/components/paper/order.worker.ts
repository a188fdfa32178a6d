/** The order of work for a paper. Apart from the rest of the worker: it is asked for when a reader opens it. */
import type { Predictor } from "../../engine/bench/predictor.ts";
import { DEFAULT_TUBES } from "../../engine/constants/glassware.ts";
import { tubeWorkOf } from "../../engine/planning/order-of-work/tube-work.ts";
import { rackedOf } from "../../engine/planning/rack-places.ts";
import { planUsualBench } from "../../engine/planning/usual-bench.ts";
import { wordTurn } from "../prepare/order/order-words.ts";
import type { Order } from "./paper-work.types.ts";
import { plainTable, readWritten } from "./work-out.worker.ts";

/** Minutes a paper allows where it does not say. */
const ALLOWED = 60;

/** @returns undefined where no test of the paper is whole */
export function orderOf(written: unknown, predictor: Predictor): Order | undefined {
  const { paper } = readWritten(written);
  if (!paper || paper.parts.length === 0) return undefined;
  const plan = planUsualBench(paper, plainTable(paper, predictor), DEFAULT_TUBES);
  const full = tubeWorkOf(paper);
  const letters = paper.parts.map(({ label }) => label);
  return {
    work: full.map((one) => ({ ...one, turns: one.turns.map(({ steps: _, ...turn }) => turn) })),
    letters,
    words: Object.fromEntries(
      letters.map((letter, part) => {
        const turns = full.find((one) => one.part === part)?.turns ?? [];
        return [letter, turns.map((turn) => wordTurn(turn, plan))];
      }),
    ),
    allowed: paper.minutes ?? ALLOWED,
    // The patient proof takes seconds: here the quick one is enough.
    proved: [],
    racked: [...plan.tubes, ...plan.limewater].map(rackedOf),
  };
}
