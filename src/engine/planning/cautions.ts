/** The cautions for a whole bench, most serious first, each said once. */
import { said } from "#words/constants.ts";
import { ACTION_CAUTIONS, type Caution, SAMPLE_CAUTIONS } from "../constants/bench-cautions.ts";
import { GAS_SAFETY } from "../constants/gas-safety.ts";
import type { GivenOff, Part, Statement } from "../practical.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "./tube-choice.ts";

type Ranked = Pick<Caution, "rank" | "text">;

/** A reagent's caution with the reagent's id. */
export type ReagentCaution = Ranked & { id: string };

/** Cautions for reagents, and for unsafe tests and what melts (given ranked), for ions the samples may hold, for gases that may come, and for what is done. */
export function benchCautions(
  { parts, paper }: { parts: readonly Part[]; paper: Pick<Statement, "cations" | "anions"> },
  reagents: readonly ReagentCaution[],
  byTest: readonly Ranked[],
  gases: readonly GivenOff[],
): string[] {
  const steps = parts.flatMap(stepsOf);
  const foilInAlkali = parts.some((part) => adds(part, ALUMINIUM) && stepsOf(part).some(heatsLiquid));
  const silver = (part: Part) => adds(part, "AgNO3(aq)") || paper.cations.includes("Ag+");
  const actions: (Ranked | false)[] = [
    parts.some((part) => adds(part, "NH3(aq)") && silver(part)) && ACTION_CAUTIONS.silverInAmmonia,
    steps.some(heatsLiquid) && ACTION_CAUTIONS.heatLiquid,
    foilInAlkali && ACTION_CAUTIONS.foilInAlkali,
    steps.some(heatsSolid) && ACTION_CAUTIONS.heatSolid,
    parts.some((part) => leads(part) && stepsOf(part).some((step) => heatsLiquid(step) || heatsSolid(step))) &&
      ACTION_CAUTIONS.suckBack,
    steps.some((step) => heatsLiquid(step) || heatsSolid(step) || step.do === "flame") && ACTION_CAUTIONS.flame,
  ];
  const all: Ranked[] = [
    ACTION_CAUTIONS.goggles,
    ...byTest,
    ...actions.filter((one): one is Ranked => one !== false),
    ...[...paper.cations, ...paper.anions].flatMap((ion) => SAMPLE_CAUTIONS[ion] ?? []),
    ...reagents.filter(({ id }) => !(foilInAlkali && id === ALUMINIUM)),
    ...gases.map((gas) => ({ rank: GAS_SAFETY[gas].rank, text: GAS_SAFETY[gas].hazard })),
  ];
  const inOrder = all.sort((a, b) => a.rank - b.rank).map(({ text }) => text);
  return [...new Set([...inOrder, ACTION_CAUTIONS.deference.text])].map(said);
}

const leads = (part: Part): boolean => stepsOf(part).some((step) => step.do === "lead through");
const ALUMINIUM = "Al(s)";
const adds = (part: Part, reagent: string): boolean =>
  stepsOf(part).some((step) => step.do === "add" && step.reagent === reagent);
