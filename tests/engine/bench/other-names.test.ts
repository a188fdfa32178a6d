/** Plain names of a sight that textbooks use beside the one the engine gives: the salt must fit them. */
import { expect, test } from "vitest";
import { mayBe } from "../../../src/engine/bench/agreement.ts";
import type { Observation } from "../../../src/engine/practical.ts";
import { cm3, drops, excess, saltWith, show, take } from "./show.ts";

const precipitate = (colour: "blue" | "brick red" | "pale green" | "black"): Observation => ({
  precipitate: { colour, amount: "plain" },
});
const drop = (reagent: string) => ({ add: reagent, drops: 1 });

// Vogel and school texts, from memory.
test.each<[string, string, unknown[][], Observation]>([
  ["blue for Prussian blue", "Fe^3+", [[take, drops("K4[Fe(CN)6](aq)")]], precipitate("blue")],
  ["blue for Turnbull's blue", "Fe^2+", [[take, drops("K3[Fe(CN)6](aq)")]], precipitate("blue")],
  ["blue for the copper ammine", "Cu^2+", [[take, excess("NH3(aq)")]], { solution: "blue" }],
  ["violet for the nickel ammine", "Ni^2+", [[take, excess("NH3(aq)")]], { solution: "violet" }],
  ["brick red for silver chromate", "Ag+", [[take, cm3("K2CrO4(aq)")]], precipitate("brick red")],
  ["pale green for iron(II) hydroxide", "Fe^2+", [[take, drops("NaOH(aq)")]], precipitate("pale green")],
  ["black for manganese(IV) oxide", "Mn^2+", [[take, cm3("NaOH(aq)")], [cm3("H2O2(aq)")]], precipitate("black")],
  ["yellow for a little iodine", "I-", [[take, drop("Cl2(aq)"), cm3("H2O(l)", 9)]], { solution: "yellow" }],
  ["brown for iodine beside dichromate", "I-", [[take, drops("acidified K2Cr2O7(aq)")]], { solution: "brown" }],
])("%s", (_, ion, tests, recorded) => {
  const readings = show(saltWith(ion), ...tests).at(-1)?.readings ?? [];
  expect(readings.some((predicted) => mayBe(recorded, predicted))).toBe(true);
});

test("yellow is not said of much iodine", () => {
  const [{ readings }] = show(saltWith("I-"), [take, cm3("Cl2(aq)")]);
  expect(readings.some((predicted) => mayBe({ solution: "yellow" }, predicted))).toBe(false);
});
