import { expect, test } from "vitest";
import { mayBe, sameSight } from "../../../src/engine/bench/agreement.ts";
import type { Observation } from "../../../src/engine/practical.ts";

const white: Observation = { precipitate: { colour: "white", amount: "plain" } };
const faint: Observation = { precipitate: { colour: "white", amount: "slight" } };
const trace: Observation = { precipitate: { colour: "white", amount: "trace" } };
const brown: Observation = { precipitate: { colour: "brown", amount: "plain" } };
const redBrown: Observation = { precipitate: { colour: "red-brown", amount: "plain" } };
const none: Observation = { none: true };
const remains: Observation = { fate: "remains" };
const dissolves: Observation = { fate: "dissolves", solution: "colourless" };
const ammonia: Observation = { gas: { formula: "NH3", evidence: "damp red litmus turns blue" } };
const milky = (formula: "CO2" | "SO2"): Observation => ({ gas: { formula, evidence: "limewater turns milky" } });
const clears: Observation = { gas: { formula: "CO2", evidence: "limewater turns milky, then clear in excess" } };
const noGas: Observation = { none: true, gas: false };

/** Can who recorded the first have had the second before them? And is it so when the first is a reading picked from a list? */
test.each<[recorded: Observation, predicted: Observation, may: boolean, same: boolean]>([
  [white, white, true, true],
  [white, none, false, false],
  [none, white, false, false],
  [none, none, true, true],
  [none, remains, true, true], // a precipitate that merely stays is no change
  [remains, none, false, false],
  [none, dissolves, false, false],
  [none, ammonia, false, false],
  [none, { flame: "yellow" }, false, false],
  [none, { effervescence: true }, false, false],
  [none, { solution: "brown" }, false, false],
  [white, faint, true, true], // how thick a precipitate was is nobody's proof,
  [faint, trace, true, true],
  [white, trace, false, false], // but nobody takes for plain what is at the limit of sight
  [trace, white, true, true],
  [white, brown, false, false],
  [brown, redBrown, true, true], // boards use both words
  [{ precipitate: false }, white, false, false],
  [{ precipitate: false }, none, true, true],
  [dissolves, remains, false, false],
  [{ fate: "partly dissolves" }, dissolves, false, false],
  [remains, white, true, false], // more of the same colour hides that it is new; picked from a list they differ
  [{ solution: "colourless" }, { solution: "yellow" }, false, false],
  [{ solution: "colourless" }, white, true, false],
  [ammonia, ammonia, true, true],
  [ammonia, noGas, false, false],
  [{ gas: false }, ammonia, false, false],
  [{ gas: false }, noGas, true, true],
  [milky("CO2"), milky("SO2"), true, true], // the evidence is the same
  [ammonia, milky("CO2"), false, false],
  [milky("SO2"), clears, true, false], // who writes no more than milky may have seen it clear; picked from a list they differ
  [clears, milky("CO2"), false, false],
  [{ indicator: "red" }, { indicator: "red" }, true, true],
  [{ indicator: "red" }, { indicator: "blue" }, false, false],
  [{ indicator: "red" }, none, false, false],
  [none, { indicator: "purple" }, false, false],
  [white, { ...white, indicator: "red" }, true, false],
  [{ effervescence: true }, none, false, false],
  [{ effervescence: false }, { effervescence: true }, false, false],
  [white, { ...white, effervescence: true }, true, false], // not mentioned: not looked at; in a list: did not happen
  [{ flame: "yellow" }, { flame: "yellow" }, true, true],
  [{ flame: "yellow" }, { flame: false }, false, false],
  [{ flame: false }, { flame: false }, true, true],
  [{ flame: false }, { flame: "lilac" }, false, false],
  [{ residue: { hot: "yellow" } }, { residue: { hot: "yellow", cold: "white" } }, true, true],
  [{ residue: { hot: "yellow" } }, { residue: { hot: "white" } }, false, false],
])("%j against %j: %s, picked %s", (recorded, predicted, may, same) => {
  expect(mayBe(recorded, predicted)).toBe(may);
  expect(sameSight(recorded, predicted)).toBe(same);
});
