/** The engine in a worker: draws a curve for every question, in the order they come. */
import { changedCurve } from "../../../engine/bench/changed-curve.ts";
import { createSolver } from "../../../engine/equilibrium/solve.ts";
import { type CurveAnswer, question } from "./curve-message.ts";

const solve = createSolver();

self.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  // What cannot be read throws, and reaches the page as the worker's error.
  const { id, source, change } = question.parse(data);
  const reply: CurveAnswer = { id, answer: changedCurve(source, change, solve) };
  self.postMessage(reply);
});
