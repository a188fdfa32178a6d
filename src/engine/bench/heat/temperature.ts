/**
 * The temperature from which a reaction of heated solids can go: its gas reaches 1 atm where delta H = T delta S.
 *
 * Method: delta H and delta S at 298 K, taken as constant (the change of heat capacity is neglected), pure solids, all gases at
 * 1 atm (1 bar in the tables; the difference is below 1 K here). Reference: any textbook of thermochemistry (Ellingham's argument).
 * Validity: some tens of kelvin for changes of solids below 900 C; worse where a solid melts first or where a figure is estimated.
 * Says nothing of speed: see constants/heating.ts.
 */
import { WATER_OF_CRYSTALLISATION } from "../../constants/thermochemistry/index.ts";
import { figuresOf } from "./figures.ts";
import { makeUpOf } from "./make-up.ts";
import { gas, type HeatReaction, type Share } from "./reaction.ts";

const ZERO_CELSIUS = 273.15;
/** J/(mol K), CODATA. */
const GAS_CONSTANT = 8.314;
/** A change that goes at every temperature is said to go from here, C. */
export const ROOM = 25;

/**
 * Lowest temperature, C, of the reaction; undefined when it never goes, or when figures are missing.
 *
 * @param dilute activity of the solids on the right when they dissolve in a melt: 1 for pure solids.
 */
export function reactionTemperature(reaction: HeatReaction, dilute = 1): number | undefined {
  const enthalpy = sum(reaction, "dHf");
  if (enthalpy === undefined) return lossOfWaterOnly(reaction) ? waterTemperature() : undefined;
  const entropy = sum(reaction, "S");
  if (entropy === undefined) return enthalpy <= 0 ? ROOM : undefined;
  const dissolved = reaction.to.reduce((count, one) => count + (one.state === "s" ? one.count : 0), 0);
  const effective = entropy - dissolved * GAS_CONSTANT * Math.log(dilute);
  if (enthalpy <= 0) return ROOM;
  return effective > 0 ? (1000 * enthalpy) / effective - ZERO_CELSIUS : undefined;
}

/**
 * Pressure of each gas above pure solids at a temperature, atm, when the gases stand in the ratio of the equation; undefined when figures
 * are missing or no gas comes. A gas on the left stands at 1 atm. Same method and validity as `reactionTemperature`.
 */
export function gasPressure(reaction: HeatReaction, celsius: number): number | undefined {
  const [enthalpy, entropy] = [sum(reaction, "dHf"), sum(reaction, "S")];
  const gases = reaction.to.filter(({ state }) => state === "g").map(({ count }) => count);
  if (enthalpy === undefined || entropy === undefined || gases.length === 0) return undefined;
  const kelvin = celsius + ZERO_CELSIUS;
  const all = gases.reduce((total, count) => total + count, 0);
  return Math.exp((entropy - (1000 * enthalpy) / kelvin) / GAS_CONSTANT / all);
}

function sum(reaction: HeatReaction, figure: "dHf" | "S"): number | undefined {
  const side = (shares: readonly Share[]): number =>
    shares.reduce((total, one) => total + one.count * (figuresOf(one)[figure] ?? Number.NaN), 0);
  const difference = side(reaction.to) - side(reaction.from);
  return Number.isNaN(difference) ? undefined : difference;
}

/** True for a hydrate without figures that turns into the same salt with less water. */
function lossOfWaterOnly({ from, to }: HeatReaction): boolean {
  const left = to.filter(({ state }) => state === "s");
  return (
    from.length === 1 &&
    figuresOf(from[0]).dHf === undefined &&
    left.length === 1 &&
    to.every(({ formula, state }) => state === "s" || formula === "H2O") &&
    makeUpOf(from[0].formula).dry === makeUpOf(left[0].formula).dry
  );
}

/** Where neither side has figures, every water of crystallisation counts the same. */
function waterTemperature(): number {
  const vapour = figuresOf(gas("H2O"));
  const { dHf, S } = WATER_OF_CRYSTALLISATION;
  return (1000 * ((vapour.dHf ?? 0) - dHf.value)) / ((vapour.S ?? 0) - S.value) - ZERO_CELSIUS;
}
