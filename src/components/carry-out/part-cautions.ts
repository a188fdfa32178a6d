/** Which cautions belong beside a part of the procedure. */
import { SAMPLE_CAUTIONS } from "../../engine/constants/bench-cautions.ts";
import { GAS_SAFETY, TEST_REAGENTS } from "../../engine/constants/gas-safety.ts";
import { reagentRank } from "../../engine/planning/reagent-plan.ts";
import type { GivenOff, Part, Step } from "../../engine/practical.ts";

/** A caution: what it covers, and which kind it is. */
interface Covering {
  data: { covers: readonly string[]; kind: string };
}

/** A toxic gas comes before everything else: it comes unasked, and some must leave before the step. */
const TOXIC_GAS = -1;
/** Burns and the like: what is done with heat stands after what blinds or poisons, before what irritates. */
const OPERATION = 1;

/** A concentrated acid or ammonia can blind. */
const CONCENTRATED = 0;

/**
 * The cautions that cover a reagent, a verb or a gas of the part, or an ion a sample may hold, the worst hazard first.
 *
 * @param ions ions the paper allows
 * @param gases formulas of the gases that may come off in this part
 */
export function cautionsFor<One extends Covering>(
  part: Part,
  gases: readonly string[],
  ions: readonly string[],
  all: readonly One[],
): One[] {
  const steps = part.tests.flatMap((test) => test.steps);
  const ranks = new Map<string, number>([
    ...ions.flatMap((ion): [string, number][] => (SAMPLE_CAUTIONS[ion] ? [[ion, SAMPLE_CAUTIONS[ion].rank]] : [])),
    // What is told of carbon dioxide is its froth, and a dry solid has none.
    ...gases
      .filter((gas) => gas !== "CO2" || steps.some(({ do: verb }) => verb === "add"))
      .map((gas): [string, number] => [gas, gasRank(gas as GivenOff)]),
    ...steps.flatMap(reagentsOf).map((id): [string, number] => [id, reagentRank(id)]),
    ...steps.map((step): [string, number] => [step.do, OPERATION]),
    // What a rod is wetted with is concentrated: the caution goes by the way of testing.
    ...steps.flatMap((step): [string, number][] => (step.do === "test gas" ? [[step.with, CONCENTRATED]] : [])),
  ]);
  const hot = steps.some((step) => step.do === "warm" || step.do === "boil");
  const foil = steps.some((step) => step.do === "add" && step.reagent.startsWith("Al("));
  if (hot && foil) {
    ranks.set("foil in hot alkali", OPERATION);
    // The caution on foil in hot alkali says what the one on pieces of metal says, and more.
    ranks.delete("Al(s)");
  }
  const rankOf = ({ data }: One) => Math.min(...data.covers.map((one) => ranks.get(one) ?? Number.POSITIVE_INFINITY));
  return all
    .filter((one) => rankOf(one) < Number.POSITIVE_INFINITY)
    .toSorted((a, b) => rankOf(a) - rankOf(b) || KINDS.indexOf(a.data.kind) - KINDS.indexOf(b.data.kind));
}

/** The reagent a step adds, or the one its way of testing a gas or a liquid needs. */
function reagentsOf(step: Step): string[] {
  if (step.do === "add") return [step.reagent];
  if (step.do === "lead through") return ["Ca(OH)2(aq)"];
  // The wire of a flame test is cleaned in acid.
  if (step.do === "flame") return ["HCl(aq)"];
  if (step.do !== "test gas") return [];
  const id = TEST_REAGENTS[step.with];
  return id === undefined ? [] : [id];
}

/** Order of cautions that are equally serious. */
const KINDS = ["reagent", "gas", "operation"];

const gasRank = (gas: GivenOff): number => (/toxic/.test(GAS_SAFETY[gas].hazard) ? TOXIC_GAS : GAS_SAFETY[gas].rank);
