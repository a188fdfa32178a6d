/** A gas led through limewater: the cloud it makes there, and whether more gas clears it again. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { CLEARS_AGAIN, GAS_EVIDENCE } from "../practical/gases.ts";
import type { GasSeen, Step } from "../practical.ts";
import { type Amounts, addAmounts, amountsOf } from "./amounts.ts";
import type { EquationWriter } from "./net-ionic.ts";
import { reagentComponents } from "./operations.ts";
import type { BenchEvent } from "./prediction.ts";
import { fates } from "./read-precipitate.ts";
import { look, type SolidSeen } from "./sight.ts";
import { MOLAR_VOLUME_DM3 } from "./trace.ts";
import { emptyTube, pour, settle, takeGas } from "./tube.ts";

const LED = ["CO2(g)", "SO2(g)"] as const;
type Led = (typeof LED)[number];

/** What was seen in limewater. */
export interface LimewaterSeen {
  inExcess: boolean;
  /** The gas of which more came. */
  gas: "CO2" | "SO2";
  /** The solid when there was most of it; undefined when none came. */
  cloud: SolidSeen | undefined;
  /** Part of it that has dissolved at the end, 0 to 1, and what is left, g/dm3. */
  dissolved: number;
  leftGramsPerDm3: number;
  /** For the events: what was brought together, and the amounts after each portion of gas. Empty where nothing came down. */
  together: Amounts;
  course: readonly Amounts[];
}

/** Portions of gas for one mole of calcium: the cloud is fullest at one, and has gone when it goes at all at two or three. */
const PORTIONS = 8;
/** Portions after which no more gas is followed: beyond five moles for one of calcium nothing more is seen to change. */
const MOST_PORTIONS = 40;
/** Less gas than this, mol, is none. */
const NO_GAS = 1e-9;

const CM3_PER_MOL = MOLAR_VOLUME_DM3 * 1000;
const KELVIN = 273.15;

/**
 * What comes out of a delivery tube of one gas, mol. It mixes with the air of the tube and pushes the mixture out (a vessel kept well mixed,
 * in which the air falls off exponentially); the air of a tube that is warmed swells and takes along what stands in it; steam takes all.
 * @param leaves of this gas from the liquid or solid, mol; `all`: gas of every kind, mol
 * @param atm its pressure over the liquid at rest
 */
export function ledOut({ leaves, all, atm }: { leaves: number; all: number; atm: number }, celsius: number): number {
  if (celsius >= TEMPERATURE.boil.value) return leaves;
  const air = BENCH_PRACTICE.airInTube.value / CM3_PER_MOL;
  const pushed = all > 0 ? leaves * (1 - (air / all) * (1 - Math.exp(-all / air))) : 0;
  const swollen = 1 - (TEMPERATURE.room.value + KELVIN) / (celsius + KELVIN);
  return pushed + atm * air * swollen;
}

/**
 * Leads gas through limewater in small portions, each at equilibrium; above one atmosphere it bubbles through unused.
 * @param mol what comes out of the delivery tube
 * @throws NoEquilibrium when the solver gives up
 */
export function leadThrough(
  { inExcess, at }: Extract<Step, { do: "lead through" }>,
  mol: Readonly<Record<"CO2" | "SO2", number>>,
  solve: Solver,
): LimewaterSeen {
  const tube = emptyTube();
  const perDm3 = reagentComponents("Ca(OH)2(aq)", at?.molPerDm3);
  pour(tube, perDm3, BENCH_PRACTICE.limewaterLed.value);
  const all = mol.CO2 + mol.SO2;
  const seen: LimewaterSeen = {
    inExcess,
    gas: mol.SO2 > mol.CO2 ? "SO2" : "CO2",
    cloud: undefined,
    dissolved: 0,
    leftGramsPerDm3: 0,
    together: new Map(),
    course: [],
  };
  if (all < NO_GAS) return seen;
  const alone = amountsOf(settle(tube, solve));
  const portion = tube.contents["Ca^2+"] / PORTIONS;
  const portions = Math.min(MOST_PORTIONS, Math.ceil(all / portion));
  const each = Math.min(portion, all / portions);
  const together: Amounts = new Map(alone);
  const course: Amounts[] = [alone];
  for (let n = 0; n < portions; n++) {
    const shares = new Map(LED.map((id): [Led, number] => [id, (each * mol[id === "CO2(g)" ? "CO2" : "SO2"]) / all]));
    for (const [id, share] of shares) takeGas(tube, id, -share);
    const result = settle(tube, solve);
    addAmounts(together, shares);
    course.push(amountsOf(result));
    const [solid] = look(result).solids.sort((a, b) => b.grams - a.grams);
    if (solid && solid.grams > (seen.cloud?.grams ?? 0)) seen.cloud = solid;
    else if (seen.cloud && !inExcess) break;
  }
  const { cloud } = seen;
  if (!cloud || cloud.gramsPerDm3 < VISIBILITY.unseen.value) return seen;
  const left = (course[course.length - 1].get(cloud.id) ?? 0) / cloud.mol;
  seen.dissolved = 1 - left;
  seen.leftGramsPerDm3 = left * cloud.gramsPerDm3;
  return { ...seen, together, course };
}

/** The cloud that formed, and its going again, each with its equation. */
export function limewaterEvents(
  { inExcess, dissolved, cloud, together, course }: LimewaterSeen,
  write: EquationWriter,
): BenchEvent[] {
  if (!cloud || course.length === 0) return [];
  const solid = course.map((amounts) => amounts.get(cloud.id) ?? 0);
  const fullest = solid.indexOf(Math.max(...solid));
  const forms: BenchEvent = {
    kind: "precipitate forms",
    where: "limewater",
    phase: cloud.id,
    gramsPerDm3: cloud.gramsPerDm3,
    equation: write(cloud.id, true, together, course[fullest]),
  };
  if (!inExcess || dissolved < VISIBILITY.worthAnEvent.value) return [forms];
  // What met when the cloud began to go: the liquid and solid at the fullest, and the gas.
  const clouded: Amounts = new Map(together);
  for (const [id, mol] of course[fullest]) if (!id.endsWith("(g)")) clouded.set(id, mol);
  // Looked at when half of it has gone: later, gas that merely dissolves outweighs the reaction.
  const half = course[solid.findIndex((mol, n) => n > fullest && mol <= cloud.mol * (1 - dissolved / 2))];
  const equation = write(cloud.id, false, clouded, half);
  return [forms, { kind: "precipitate dissolves", where: "limewater", phase: cloud.id, dissolved, equation }];
}

/**
 * What could be recorded of limewater, the likeliest first; `false` = it stays clear. A cloud that thins a good deal is called clear by one
 * and milky by another, for nobody leads gas through for the same time.
 */
export function limewaterReadings({
  inExcess,
  gas,
  cloud,
  dissolved,
  leftGramsPerDm3,
}: LimewaterSeen): (GasSeen | false)[] {
  const amount = cloud?.gramsPerDm3 ?? 0;
  const milky: GasSeen = { formula: gas, evidence: GAS_EVIDENCE.CO2 };
  const clears: GasSeen = { formula: gas, evidence: CLEARS_AGAIN };
  if (amount < VISIBILITY.unseen.value) return [false];
  if (amount < VISIBILITY.visible.value) return [false, milky];
  const fate = inExcess ? fates(dissolved, leftGramsPerDm3) : ["remains" as const];
  const ends = fate.flatMap((one) => (one === "remains" ? [milky] : one === "dissolves" ? [clears] : [milky, clears]));
  const sure = amount < VISIBILITY.certain.value ? [...ends, false as const] : ends;
  return sure.filter((one, index) => sure.indexOf(one) === index);
}
