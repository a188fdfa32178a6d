/**
 * Debian's chemeq, a parser of chemical equations in C, as a second judge of balance. Its manual says that "OK" speaks of elements and
 * charges; version 2.23 answers OK to `Fe^3+ -> Fe^2+`, so charges are added up here from the count it prints for every substance (-e).
 */
import { spawnSync } from "node:child_process";

/** Whether the program is on the PATH. */
export const hasChemeq = spawnSync("chemeq", ["-v"], { timeout: 10_000 }).status === 0;

/** What chemeq finds amiss in an equation of ours (mhchem notation), or undefined when elements and charges agree. */
export function imbalanceByChemeq(equation: string): string | undefined {
  const input = inItsNotation(equation);
  const { stdout, status } = spawnSync("chemeq", ["-ce"], { input: `${input}\n`, encoding: "utf8", timeout: 10_000 });
  const [elements = "", charges = ""] = stdout.trim().split("\n");
  if (status !== 0 || elements !== "OK") return `${input}: ${elements}`;
  const [left, right] = charges.split(";").map(chargeOf);
  return Math.abs(left - right) < ROUNDING ? undefined : `${input}: charge ${left} / ${right}`;
}

/** Rounding of fractional coefficients. */
const ROUNDING = 1e-9;

/** The sum of a side as chemeq counts it: `2 Fe^3+|2*3, SO4^2-|1*-2` is 4. */
const chargeOf = (side: string): number =>
  side
    .split(", ")
    .map((substance) => substance.slice(substance.lastIndexOf("|") + 1).split("*"))
    .reduce((sum, [count, charge]) => sum + fraction(count) * Number(charge), 0);

function fraction(count: string): number {
  const [over, under = "1"] = count.split("/");
  return Number(over) / Number(under);
}

/**
 * chemeq marks solids `_s` and gases `_g`, takes square brackets outermost only, and puts `^` before every charge. It has no water of
 * crystallisation: that is written as a group, or beside the substance where half a molecule goes with each.
 */
export const inItsNotation = (equation: string): string =>
  equation
    .split(/ (?:=|->) /)
    .map((side) => side.split(" + ").map(term).join(" + "))
    .join(" -> ");

function term(text: string): string {
  const [, count = "", formula] = /^([\d./]+)? *(.*)$/.exec(text.trim()) as RegExpExecArray;
  const coefficient = count === "0.5" ? "1/2" : count;
  const [, bare, state] = /^(.*?)(?:\((s|g|aq|l)(?:, [^()]*)?\))?$/.exec(formula) as RegExpExecArray;
  const suffix = state === "s" || state === "g" ? `_${state}` : "";
  const half = /^(.*)\*0\.5H2O$/.exec(bare);
  if (half) return `${coefficient} ${half[1]}${suffix} + ${coefficient || 1}/2 H2O`.trim();
  // Round brackets that begin a substance would be read as those of a constant, so an outermost pair stays square.
  const plain = bare
    .replace(/(?<!^)\[([^\]]*)\]/g, "($1)")
    .replace(/\*(\d*)([^*]+)$/, "($2)$1")
    .replace(/(?:\^(\d+))?([+-])$/, "^$1$2");
  return `${coefficient} ${plain}${suffix}`.trim();
}
