/**
 * Cautions of the bench that belong to an action or to an ion a sample may hold, in plain sentences. Those of reagents stand with the
 * reagents, those of gases with the gases. `rank`: 0 can blind or poison, 1 can burn, 2 harmful or irritant, 3 good order.
 */
import type { Waste } from "./reagents.ts";

export interface Caution {
  rank: 0 | 1 | 2 | 3;
  text: string;
  source: string;
}

const COMMON = "common practice, no source";

export const ACTION_CAUTIONS = {
  goggles: {
    rank: 0,
    text: "Wear goggles from the first bottle opened to the last tube washed, not only while you pour.",
    source: "from memory (CLEAPSS Student Safety Sheets 20, 21, 31)",
  },
  silverInAmmonia: {
    rank: 0,
    text: "A mixture of silver and ammonia can explode once it dries. Add acid to it as soon as you have written down what you saw, and never keep it.",
    source: "from memory (CLEAPSS Student Safety Sheet 46)",
  },
  heatLiquid: {
    rank: 1,
    text: "A heated solution can shoot out of the tube. Start with a small flame at the top of the liquid, keep the tube moving, point its mouth away from everyone.",
    source: "RSC/Nuffield Practical Chemistry, Heating substances",
  },
  heatSolid: {
    rank: 1,
    text: "Heat a solid in a dry hard-glass tube, gently first and then strongly, because many salts spit. Hold the mouth a little lower than the bottom: water that runs back cracks the hot glass, which looks like cold glass.",
    source: COMMON,
  },
  suckBack: {
    rank: 1,
    text: "Take the delivery tube out of the limewater before the heat goes, or cold liquid is sucked back into the hot tube and cracks it. Never let it get blocked.",
    source: COMMON,
  },
  foilInAlkali: {
    rank: 1,
    text: "Hot alkali with aluminium froths up and sprays. Use small pieces and take the tube off the flame once it starts.",
    source: COMMON,
  },
  flame: {
    rank: 1,
    text: "Tie hair and loose cloth back, and keep anything that burns away from the burner.",
    source: COMMON,
  },
  deference: { rank: 3, text: "Your teacher and your school's rules come first.", source: COMMON },
} as const satisfies Record<string, Caution>;

/** For ions a sample may hold, with the waste its tubes belong to; the sample is unknown, so the caution goes for all of them. */
export const SAMPLE_CAUTIONS: Readonly<Record<string, Caution & { waste: Waste }>> = {
  "Pb^2+": {
    rank: 0,
    waste: "lead",
    text: "A sample may hold lead, which is toxic and harms unborn children. Wash your hands afterwards. All of it, rinsings too, goes into the bottle marked LEAD, nothing into the sink.",
    source: "from memory (CLEAPSS Student Safety Sheet 43; CLP); waste: common practice, local rules decide",
  },
  "Ba^2+": {
    rank: 0,
    waste: "barium",
    text: "A sample may hold barium, which is toxic if swallowed. Wash your hands afterwards.",
    source: "from memory (CLEAPSS Student Safety Sheet 42; CLP)",
  },
  "Cr^3+": {
    rank: 2,
    waste: "heavy metal",
    text: "A sample may hold chromium. Wash it off your skin. It goes into the bottle marked HEAVY METALS, unless the waste list names another.",
    source: "CLEAPSS Student Safety Sheet 47; waste: common practice, local rules decide",
  },
  "Mn^2+": {
    rank: 2,
    waste: "heavy metal",
    text: "A sample may hold manganese, which is harmful as dust and poisons life in water. It goes into the bottle marked HEAVY METALS, unless the waste list names another.",
    source: "from memory (CLP: solid harmful, toxic to water life); waste: common practice, local rules decide",
  },
  "Co^2+": {
    rank: 1,
    waste: "heavy metal",
    text: "A sample may hold cobalt, which can cause cancer and allergy. Gloves, no dust, no spray. Wash your hands. It goes into the bottle marked HEAVY METALS, unless the waste list names another.",
    source: "from memory (CLP: carcinogen by inhalation, sensitiser); waste: common practice, local rules decide",
  },
  "Ni^2+": {
    rank: 1,
    waste: "heavy metal",
    text: "A sample may hold nickel, which can cause cancer and allergy. Gloves, no dust, no spray. Wash your hands. It goes into the bottle marked HEAVY METALS, unless the waste list names another.",
    source: "from memory (CLP: carcinogen by inhalation, sensitiser); waste: common practice, local rules decide",
  },
  "NO2-": {
    rank: 0,
    waste: "drain",
    text: "A sample may hold nitrite, which is toxic if swallowed. With acid it gives off brown nitrogen dioxide, which is very toxic: drops only, in a fume cupboard.",
    source: "from memory (CLEAPSS; CLP)",
  },
  "CrO4^2-": {
    rank: 0,
    waste: "chromium(VI)",
    text: "A sample may hold chromate, which is toxic and can cause cancer and allergy. Gloves, no spray. Wash your hands. It goes into the bottle marked CHROMIUM, unless the waste list names another.",
    source: "CLEAPSS Student Safety Sheet 47; waste: common practice, local rules decide",
  },
  "Ag+": {
    rank: 2,
    waste: "silver",
    text: "A sample may hold silver, which stains skin and cloth. Empty the tubes where the waste list says.",
    source: "CLEAPSS Student Safety Sheet 46, from memory; waste: common practice, local rules decide",
  },
};
