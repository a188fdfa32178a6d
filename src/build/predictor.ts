/** One predictor for a whole run of the build: what is predicted for one page is there for the next. */
import { createPredictor } from "../engine/bench/predictor.ts";
import { createSolver } from "../engine/equilibrium/solve.ts";

export const predictor = createPredictor(createSolver());
