/** The reasoning behind a conclusion and the predictions it reasons from, which a page loads when its reader first turns to the record. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { type Later, useLater } from "../later.ts";

type Reasoning = typeof import("./Conclusion.tsx") & { table: PredictionTable };

export interface Loading extends Pick<Later<Reasoning>, "failed" | "load"> {
  /** Absent until it has come. */
  reasoning: Reasoning | undefined;
}

/** @throws Error when the predictions or the program cannot be fetched */
async function fetchReasoning(predictionsAt: string): Promise<Reasoning> {
  const [program, answer] = await Promise.all([import("./Conclusion.tsx"), fetch(predictionsAt)]);
  if (!answer.ok) throw new Error(`${predictionsAt}: ${answer.status}`);
  return { ...program, table: (await answer.json()) as PredictionTable };
}

/** @param predictionsAt address of the practical's table of predictions */
export function useConclusion(predictionsAt: string): Loading {
  const { module, failed, load } = useLater<Reasoning>(() => fetchReasoning(predictionsAt));
  return { reasoning: module, failed, load };
}
