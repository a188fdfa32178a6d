/** One predictor for a whole run of the build, and what it and earlier runs have worked out: nothing is predicted twice. */
import type { Borderline } from "../engine/bench/borderline.ts";
import { predictSalt } from "../engine/bench/predict.ts";
import type { Prediction } from "../engine/bench/prediction.ts";
import { createPredictor } from "../engine/bench/predictor.ts";
import { createSolver } from "../engine/equilibrium/solve.ts";
import { openCache } from "./cache/cache.ts";
import { keptMemory } from "./cache/shelves.ts";

/** Opened here, beside the engine: where the engine is loaded anew after an edit, so is this, under its new version. */
export const cache = openCache();

const predicted = keptMemory<Map<string, Prediction>>(cache, "predicted");
const bordered = keptMemory<Map<string, Borderline>>(cache, "bordered");

export const predictor = createPredictor(createSolver(), { predicted, bordered }, predictSalt);

/** Writes down what was predicted, for runs to come. */
export function keepPredictions(): void {
  predicted.keep();
  bordered.keep();
}
