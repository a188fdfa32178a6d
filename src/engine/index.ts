/**
 * The engine's public face. Everything is pure: no clock, no chance, no input or output; units stand in property names.
 *
 * - `readPractical(input)`: any input to a Practical, or all its faults.
 * - `readPaper(input)`: the same for a paper whose answer is not known.
 * - `createSolver()`: chemical equilibrium, mol and kg in, mol/kg out; says so when it finds none.
 * - `predictSalt(salt, procedure, solve)`: what one salt shows at every test, with the events and numbers behind it.
 * - `createPredictor(solve)`: the same without equations unless told to, and what stands on the border of another sight, remembered.
 * - `tabulate(practical, predictor, phrase)`: the same for every salt the paper allows, as a compact table.
 * - `deduce(table, record)`: which salts remain, why the others do not, what to repeat when nothing fits; `SOMETHING_ELSE` records a sight
 *   that no salt is predicted to show.
 * - `chooseUnknowns(table, store)`: sets of unknowns that the tests decide, and how hard each is; `aboutSet` says more of one.
 * - `purposes(table)`: what each test is for.
 * - `planBench(practical, table, tubes)`: tubes, fill marks (cm3 and mm), reagents, papers, gases, cautions.
 * - `orderOfWork(practical, hands)`: who does what when, in minutes, with the proof that nothing is shorter.
 * - `prepareClass(practical, plan, size, solve)`: solutions, bottles, labels, store, waste and hazards for so many groups.
 * - `phrase(observation)`: an observation in the words of the trade.
 *
 * Each function's own comment tells its errors and the source of its method. Islands import the single room they need instead of this
 * file, so that a page loads no more than it uses.
 */
export { mayBe, sameSight } from "./bench/agreement.ts";
export { cannotBe } from "./bench/allowed-salts.ts";
export { predictSalt } from "./bench/predict.ts";
export type { BenchEvent, Prediction } from "./bench/prediction.ts";
export type { PredictionTable, TableRecord } from "./bench/prediction-table.ts";
export { createPredictor } from "./bench/predictor.ts";
export { tabulate } from "./bench/tabulate.ts";
export { aboutSet } from "./deduction/about-set.ts";
export { chooseUnknowns } from "./deduction/choose-unknowns.ts";
export type { Conclusion, Purpose } from "./deduction/conclusion.ts";
export { deduce, undecided } from "./deduction/deduce.ts";
export { purposes } from "./deduction/purposes.ts";
export { SOMETHING_ELSE } from "./deduction/something-else.ts";
export { createSolver } from "./equilibrium/solve.ts";
export type { BenchPlan } from "./planning/bench-plan.ts";
export { prepareClass } from "./planning/class/prepare-class.ts";
export { type OrderOfWork, orderOfWork } from "./planning/order-of-work/order-of-work.ts";
export { planBench } from "./planning/plan-bench.ts";
export { planUsualBench } from "./planning/usual-bench.ts";
export { readPaper, readPractical } from "./practical/faults.ts";
export { type Paper, type Practical, paper, practical } from "./practical.ts";
export { phrase } from "./wording/phrase.ts";
