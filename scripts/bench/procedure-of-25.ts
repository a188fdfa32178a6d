/** An invented procedure of 25 tests for one solution of any salt: long, and of every kind that solves equilibria. */
import { type Procedure, procedure } from "../../src/engine/practical.ts";

const take = { take: "1 cm3" };
const add = (reagent: string, volume = "1 cm3") => ({ add: reagent, volume });
const drops = (reagent: string) => ({ add: reagent, drops: 5 });
const excess = (reagent: string) => ({ add: reagent, until: "in excess" });
const gas = (how: string) => ({ testGas: how });
const warm = { warm: true };

const parts: [title: string, tests: unknown[][]][] = [
  ["Sodium hydroxide", [[take, drops("NaOH(aq)")], [excess("NaOH(aq)")], [warm, gas("damp red litmus")]]],
  ["Ammonia", [[take, drops("NH3(aq)")], [excess("NH3(aq)")]]],
  ["Silver nitrate", [[take, add("HNO3(aq)")], [add("AgNO3(aq)")], [excess("NH3(aq)")]]],
  ["Hydrochloric acid", [[take, add("HCl(aq)"), gas("limewater")], [add("BaCl2(aq)")]]],
  ["Barium nitrate", [[take, add("Ba(NO3)2(aq)")], [add("HNO3(aq)")]]],
  [
    "Aluminium foil",
    [
      [take, add("NaOH(aq)", "2 cm3")],
      [{ add: "Al(s)", pieces: 1 }, warm, gas("damp red litmus")],
    ],
  ],
  ["Sodium carbonate", [[take, add("Na2CO3(aq)")], [add("HCl(aq)", "2 cm3")]]],
  ["Acid, warm", [[take, add("HCl(aq)"), warm, gas("acidified manganate(VII) paper")]]],
  ["Flame", [[{ flame: true }]]],
  ["Sulfuric acid", [[take, add("H2SO4(aq)")]]],
  ["Potassium iodide", [[take, excess("KI(aq)")]]],
  ["Lead nitrate", [[take, add("Pb(NO3)2(aq)")]]],
  ["Manganate(VII)", [[take, drops("acidified KMnO4(aq)")]]],
  ["Chromate", [[take, add("K2CrO4(aq)")]]],
  ["Chlorine water", [[take, add("Cl2(aq)")]]],
  ["Boiling", [[take, add("NaOH(aq)"), { boil: "2 min" }]]],
];

export const procedureOf25: Procedure = procedure.parse(
  parts.map(([title, tests], index) => ({
    label: "abcdefghijklmnopqrstuvwxyz"[index],
    title,
    tests: tests.map((steps) => ({ steps })),
  })),
);
