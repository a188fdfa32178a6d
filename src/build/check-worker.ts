/** A thread that checks one practical after the other as it is asked: see `check-all.ts`. */
import { parentPort } from "node:worker_threads";
import type { ContentFault } from "../authoring/faults.ts";
import { checkFile } from "./check-file.ts";
import { keepPredictions } from "./predictor.ts";

export interface CheckOrder {
  path: string;
  text: string;
  pages: boolean;
}

/** Faults are plain data; an error that is none of the author's travels with its stack. */
export type CheckAnswer = { faults: ContentFault[] } | { error: unknown };

parentPort?.on("message", (order: CheckOrder | "end") => {
  if (order === "end") {
    keepPredictions();
    process.exit(0);
  }
  let answer: CheckAnswer;
  try {
    answer = { faults: checkFile(order.path, order.text, order.pages) };
  } catch (error) {
    answer = { error };
  }
  parentPort?.postMessage(answer);
});
