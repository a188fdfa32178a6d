/** How little can be seen, felt or smelt: the limits between "something" and "no visible change". */
export interface Limit {
  value: number;
  unit: "g/dm3" | "1" | "atm" | "cm3" | "cm" | "drops";
  source: string;
}

/**
 * The limits of sight for solids were fixed before any prediction was compared with a published table, and a study of 138 published
 * observations gave the same score for any value of `visible` from 0.0003 to 0.5 g/dm3: nothing hangs on its exact value.
 */
export const VISIBILITY = {
  /** Below this nothing is seen by anyone. */
  unseen: { value: 0.03, unit: "g/dm3", source: "a third of `visible`: our choice of the doubtful range" },
  /** A faint cloudiness. */
  visible: {
    value: 0.1,
    unit: "g/dm3",
    source: "common practice, no source; turbidity of fine precipitates, from memory",
  },
  /** From here nobody misses it. */
  certain: { value: 0.3, unit: "g/dm3", source: "three times `visible`: our choice of the doubtful range" },
  /** Called a precipitate rather than a faint one. */
  plain: { value: 0.5, unit: "g/dm3", source: "common practice, no source" },
  /** Absorbance through the tube at which a solution looks coloured. */
  absorbance: {
    value: 0.03,
    unit: "1",
    source: "from memory: a tint is seen against white from an absorbance of some hundredths",
  },
  /** A colour is told to have gone where the liquid, only diluted, would stand this many times above `absorbance`. */
  plainlyColoured: {
    value: 10,
    unit: "1",
    source: "our choice: what is ten times as strong as the faintest tint nobody overlooks, and so misses when it goes",
  },
  /** Part of a colour that must go, dilution aside, for the liquid to be called paler or colourless though the rest has kept its name. */
  fades: {
    value: 1 / 3,
    unit: "1",
    source: "our choice: beside the tube as it was, a third less is seen; a dilution alone is not told",
  },
  /** Part of a precipitate that must have dissolved before anyone sees that it has. */
  dissolvesBelow: {
    value: 0.25,
    unit: "1",
    source: "our choice: a stirred solid cannot be judged by eye to better than a quarter",
  },
  /** Part of a precipitate that must have dissolved for that to be told as an event. */
  worthAnEvent: {
    value: 0.25,
    unit: "1",
    source: "our choice: as `dissolvesBelow`, the least that a person would notice",
  },
  /** From here what is left is called less than there was; between the two either is right. */
  partlyFrom: { value: 0.5, unit: "1", source: "our choice: half of it gone is plain to see" },
  /** Part of a precipitate that must go again within a count of drops for the count to matter. */
  goesAgain: {
    value: 0.1,
    unit: "1",
    source: "our choice: less is no change to see, so a hand that stops earlier sees the same",
  },
  /** Whole drops after which a precipitate is in sight, at most, for it to be missed where the next drops take it again. */
  passing: {
    value: 2,
    unit: "drops",
    source: "our choice: drops come a second apart, and the tube is shaken and looked at after a few",
  },
  /** Light path: the bore of a 16 mm tube. */
  path: { value: 1.4, unit: "cm", source: "a 16 mm tube with 1 mm wall" },
  /** Gas set free at once that is seen as bubbles. */
  bubbles: { value: 0.2, unit: "cm3", source: "common practice, no source" },
  /** Ammonia above the liquid that turns damp red litmus blue. */
  ammonia: {
    value: 1e-4,
    unit: "atm",
    source: "from memory: some tens of ppm are smelt and turn damp litmus within a minute",
  },
  /** Sulfur dioxide above the liquid that takes the colour from manganate(VII) paper. */
  sulfurDioxide: { value: 1e-5, unit: "atm", source: "from memory: about 10 ppm" },
  /** Chlorine above the liquid that bleaches damp litmus. */
  chlorine: {
    value: 1e-3,
    unit: "atm",
    source: "from memory: some hundreds of ppm bleach damp litmus within a minute",
  },
  /** Bromine above a hot liquid that nobody should breathe in. */
  bromine: {
    value: 3e-4,
    unit: "atm",
    source:
      "a hundred times the 3 ppm that are immediately dangerous to life or health (NIOSH, from memory), for what leaves a tube is thinned before it is breathed: our choice, by which chlorine (10 ppm) has its limit above",
  },
  /** The same of iodine. */
  iodine: {
    value: 2e-4,
    unit: "atm",
    source:
      "a hundred times the 2 ppm that are immediately dangerous to life or health (NIOSH, from memory): as bromine",
  },
  /** Nitrogen monoxide set free that turns damp blue litmus red, as the dioxide it makes with air. */
  nitrogenMonoxide: {
    value: 0.05,
    unit: "cm3",
    source:
      "reckoned: in 15 cm3 of air half of it turns to dioxide in a minute, with 7e3 dm6/(mol2 s) for d[NO]/dt = -2 k [O2] [NO]^2 (from memory)",
  },
  /** Nitrogen monoxide set free that browns visibly in the air of a tube, as the dioxide it makes there. */
  brownFumes: {
    value: 0.6,
    unit: "cm3",
    source:
      "our choice: three parts in a hundred of the 20 cm3 of air of a tube; one in a hundred of nitrogen dioxide is brown through 1.5 cm (from memory)",
  },
  /** Hydrogen or oxygen that a splint shows at the mouth of a tube. */
  splint: { value: 2, unit: "cm3", source: "common practice, no source: a tenth of a test tube" },
  /** Carbon dioxide drawn off that clouds 1 cm3 of limewater. */
  limewater: {
    value: 0.3,
    unit: "cm3",
    source: "stoichiometry: 1 cm3 of 0.02 mol/dm3 limewater takes 0.5 cm3; half of it shows",
  },
  /** Carbon dioxide set free that may redden damp blue litmus: it dissolves slowly and the red is faint, so a hand may find it or not. */
  carbonDioxideOnLitmus: {
    value: 0.4,
    unit: "cm3",
    source:
      "log K of its rows here: water under 0.0066 atm of it has pH 5, where litmus is red; that is 0.13 cm3 in the 20 cm3 of air of a tube, and three times as much lets a good part get away",
  },
} as const satisfies Record<string, Limit>;
