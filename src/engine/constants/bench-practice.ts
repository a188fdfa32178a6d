/** Planning figures of the school bench: how much is used, how full a tube may be, how much is set out. */
export interface PracticeRow {
  value: number;
  unit: "cm3" | "g" | "1" | "cm3/g" | "mol/mol";
  source: string;
}

const COMMON = "common practice, no source";

export const BENCH_PRACTICE = {
  /** One drop from a glass dropper. Plastic pipettes give 25 to 40 drops to 1 cm3, so this errs on the large side. */
  drop: { value: 0.05, unit: "cm3", source: "USP 32 <1101>: 45 to 55 mg of water a drop; 20 drops to 1 cm3" },
  /** Taken of a sample in solution when the paper gives no volume. */
  portion: {
    value: 1,
    unit: "cm3",
    source: "RSC Learn Chemistry, Testing for negative ions: no more than about 1 cm3",
  },
  /** Taken of a solid sample when the paper gives no mass: the end of a spatula. */
  spatulaMeasure: { value: 0.3, unit: "g", source: `${COMMON}: a spatula measure is 0.2 to 0.5 g` },
  /** Taken on the very tip of a spatula: how a small mass is judged without a balance. */
  spatulaTip: { value: 0.05, unit: "g", source: `${COMMON}: the tip of a narrow spatula` },
  /** Room a loose powdered salt takes up. */
  looseSolid: { value: 1, unit: "cm3/g", source: `${COMMON}: from memory, loose powdered salts weigh near 1 g/cm3` },
  flameSolid: { value: 0.1, unit: "g", source: `${COMMON}: a few crystals on the wire` },
  flameSolution: { value: 0.25, unit: "cm3", source: `${COMMON}: five drops on a watch glass` },
  /** A piece of foil or a granule. */
  piece: { value: 0.1, unit: "g", source: `${COMMON}: a strip of foil as wide as a finger nail` },
  /** "In excess" for 1 cm3 of sample: we plan tubes for more than the 2 to 3 times its volume that are normally used. */
  excess: {
    value: 4,
    unit: "cm3",
    source: `${COMMON}: 2 to 3 times the sample and at least 1 to 2 cm3; tubes planned for 4`,
  },
  /** For samples above 1 cm3: the excess is at least this many times the sample. */
  excessTimesSample: { value: 3, unit: "1", source: `${COMMON}: 2 to 3 times the volume of the sample` },
  /** An alkali in excess over the acid in the tube, and the other way round: so many times what neutralises it. */
  excessTimesNeutral: {
    value: 1.5,
    unit: "1",
    source: `${COMMON}: half as much again as neutralises what is in the tube, so that litmus turns for good`,
  },
  /** Most that is poured to neutralise: more than the largest boiling tube holds and can still be shaken. */
  excessMost: { value: 50, unit: "cm3", source: "our choice: a boiling tube 200 x 25 mm is half full at about 36 cm3" },
  /** Alkali that takes Al^3+ through Al(OH)3 to Al(OH)4-; no other school cation needs more for one ion. */
  alkaliForAluminium: { value: 4, unit: "mol/mol", source: "Al^3+ + 4 OH- -> Al(OH)4-, stoichiometry" },
  /** Strictest published filling for heating a solid; other notes say a quarter, a third, even a half. */
  heatedSolidFill: { value: 1 / 5, unit: "1", source: "RSC/Nuffield Practical Chemistry, Heating substances" },
  /** Strictest published filling for boiling a liquid in a boiling tube. */
  heatedLiquidFill: { value: 1 / 10, unit: "1", source: "RSC/Nuffield Practical Chemistry, Heating substances" },
  /** Above this a tube cannot be shaken without a stopper. */
  shakenFill: { value: 1 / 2, unit: "1", source: COMMON },
  /** Spare over what the tests use: the generous end of 25 to 50 %. */
  spare: { value: 0.5, unit: "1", source: `${COMMON}: 25 to 50 % spare` },
  setOutStep: {
    value: 0.5,
    unit: "cm3",
    source: "our choice: what a dropper bottle or small cylinder can be filled to",
  },
  setOutLeast: { value: 2, unit: "cm3", source: `${COMMON}: 2 to 3 cm3 of a reagent for a test` },
  sampleMassStep: { value: 0.1, unit: "g", source: "our choice: what a school balance shows and a spatula can manage" },
  /** Part of a sample that stays back until the report is written. */
  keptBack: { value: 1 / 3, unit: "1", source: COMMON },
  /** Acid on a watch glass to clean a flame-test wire in. */
  wireAcid: { value: 1, unit: "cm3", source: `${COMMON}: a watch glass wetted, about 1 cm3` },
  /** Acid or sulfate that stands in a waste bottle, for each part that what is emptied into it takes. */
  standsInWaste: { value: 1.5, unit: "1", source: `${COMMON}: half as much again, so that it is plainly enough` },
  /** Limewater into which a gas is led. */
  limewaterLed: { value: 2, unit: "cm3", source: `${COMMON}: enough to dip a delivery tube into, 2 to 3 cm3` },
  /** Air above the sample that the first gas pushes out in front of it. */
  airInTube: { value: 15, unit: "cm3", source: `${COMMON}: a tube of about 20 cm3 less what is in it` },
  /** Limewater a gas is bubbled through with a dropper: little, so that little gas clouds it. */
  limewater: {
    value: 1,
    unit: "cm3",
    source: "RSC Learn Chemistry, Testing for negative ions: not more than about 1 cm3 in the second tube",
  },
} as const satisfies Record<string, PracticeRow>;
