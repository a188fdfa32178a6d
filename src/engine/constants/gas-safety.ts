/**
 * Each gas a school practical may give off: what it can do to a person, how it is shown, what stands ready before it comes.
 * Sources read: the boards' gas tables (tests), CLEAPSS Student Safety Sheet 30 (ammonia). "from memory": CLEAPSS sheets not read again.
 */
export interface GasSafety {
  name: string;
  /** 0: can harm in class amounts; 1: unpleasant or a burning risk; 2: no hazard of its own in a test-tube. */
  rank: 0 | 1 | 2;
  /** A caution in one or two plain sentences. */
  hazard: string;
  /** How it is shown. */
  test: string;
  /** What to have ready, as it stands between "have" and "ready". */
  have: string;
  /** The way of testing in a procedure that shows this gas; absent where the eye is enough or the procedure knows none. */
  shownBy?: GasTestName;
  /** Other ways that show it as well. */
  alsoShownBy?: readonly GasTestName[];
  /** What the eye finds without any test: a colour, or a white smoke. */
  seenAs?: "colour" | "smoke";
  source: string;
}

type GasTestName =
  | "damp red litmus"
  | "damp blue litmus"
  | "limewater"
  | "glowing splint"
  | "lighted splint"
  | "acidified manganate(VII) paper"
  | "acidified dichromate(VI) paper"
  | "rod with hydrochloric acid"
  | "rod with ammonia"
  | "anhydrous copper(II) sulfate"
  | "cobalt(II) chloride paper";

type GasFormula =
  | "NH3"
  | "CO2"
  | "SO2"
  | "H2"
  | "O2"
  | "Cl2"
  | "NO2"
  | "HCl"
  | "H2O"
  | "SO3"
  | "HBr"
  | "HI"
  | "H2S"
  | "Br2"
  | "I2";

/** The bottle or paper of the reagent list a way of testing needs, whose cautions go for the test as well. */
export const TEST_REAGENTS: Readonly<Partial<Record<GasTestName, string>>> = {
  limewater: "Ca(OH)2(aq)",
  "acidified manganate(VII) paper": "acidified KMnO4(aq)",
  "acidified dichromate(VI) paper": "K2Cr2O7 paper",
  "anhydrous copper(II) sulfate": "CuSO4(s)",
  "cobalt(II) chloride paper": "CoCl2 paper",
};

export const GAS_SAFETY: Readonly<Record<GasFormula, GasSafety>> = {
  Cl2: {
    name: "chlorine",
    rank: 0,
    hazard:
      "Chlorine is toxic and hurts eyes and lungs. Keep the room well aired and your face away, never mix it with ammonia, and empty the tube as soon as you have looked.",
    test: "damp blue litmus turns red, then is bleached",
    have: "damp blue litmus paper and an open window or a fume cupboard",
    shownBy: "damp blue litmus",
    source: "test: boards' gas tables; hazard from memory (CLEAPSS)",
  },
  NO2: {
    name: "nitrogen dioxide",
    rank: 0,
    hazard:
      "Nitrogen dioxide is very toxic and harms the lungs hours later. Use a fume cupboard or only a pinch in a well aired room, and do not smell it.",
    test: "seen as a brown gas",
    have: "a fume cupboard or an open window, and white paper behind the tube",
    seenAs: "colour",
    source: "test: common practice; hazard from memory (CLEAPSS)",
  },
  SO3: {
    name: "sulfur trioxide",
    rank: 0,
    hazard:
      "Sulfur trioxide is a toxic, choking white smoke that burns like the sulfuric acid it turns to. Fume cupboard only, the least amount, and stop heating when the smoke comes; anyone with asthma stays away.",
    test: "seen as a white smoke",
    have: "a fume cupboard",
    seenAs: "smoke",
    source: "from memory (CLEAPSS)",
  },
  Br2: {
    name: "bromine",
    rank: 0,
    hazard: "Bromine vapour is very toxic and burns eyes and lungs. Fume cupboard only, and do not smell it.",
    test: "seen as a red-brown vapour",
    have: "a fume cupboard, and white paper behind the tube",
    seenAs: "colour",
    source: "from memory (CLEAPSS)",
  },
  I2: {
    name: "iodine vapour",
    rank: 0,
    hazard:
      "Iodine vapour is harmful and hurts eyes and lungs. Use a fume cupboard, or only a pinch or a few drops in a well aired room, and let it settle on the cool wall.",
    test: "seen as a violet vapour",
    have: "a fume cupboard or an open window, and white paper behind the tube",
    seenAs: "colour",
    source: "from memory (CLEAPSS)",
  },
  HBr: {
    name: "hydrogen bromide",
    rank: 0,
    hazard:
      "Hydrogen bromide hurts eyes and lungs and can set off asthma. Keep the room well aired and your face away from the tube.",
    test: "damp blue litmus turns red",
    have: "damp blue litmus paper",
    shownBy: "damp blue litmus",
    source: "from memory, as hydrogen chloride (CLEAPSS)",
  },
  HI: {
    name: "hydrogen iodide",
    rank: 0,
    hazard:
      "Hydrogen iodide hurts eyes and lungs and can set off asthma. Keep the room well aired and your face away from the tube.",
    test: "damp blue litmus turns red",
    have: "damp blue litmus paper",
    shownBy: "damp blue litmus",
    source: "from memory, as hydrogen chloride (CLEAPSS)",
  },
  H2S: {
    name: "hydrogen sulfide",
    rank: 0,
    hazard:
      "Hydrogen sulfide is very toxic, and where there is most of it the nose no longer smells it. Fume cupboard only, the least amount, and do not smell it.",
    test: "lead(II) ethanoate paper turns black",
    have: "a fume cupboard",
    source: "test: textbooks; hazard from memory (CLEAPSS)",
  },
  SO2: {
    name: "sulfur dioxide",
    rank: 0,
    hazard:
      "Sulfur dioxide is toxic and can set off asthma. Use a fume cupboard or an open window and a tiny amount; anyone with asthma stays away from this test.",
    test: "acidified manganate(VII) paper turns from purple to colourless",
    have: "acidified manganate(VII) paper",
    shownBy: "acidified manganate(VII) paper",
    alsoShownBy: ["acidified dichromate(VI) paper"],
    source: "test: boards' gas tables; hazard from memory (CLEAPSS)",
  },
  NH3: {
    name: "ammonia",
    rank: 0,
    hazard: "Ammonia hurts eyes and lungs. Test it with damp litmus, never with your nose.",
    test: "damp red litmus turns blue",
    have: "damp red litmus paper",
    shownBy: "damp red litmus",
    alsoShownBy: ["rod with hydrochloric acid"],
    source: "CLEAPSS Student Safety Sheet 30; boards' gas tables",
  },
  HCl: {
    name: "hydrogen chloride",
    rank: 0,
    hazard:
      "Hydrogen chloride hurts eyes and lungs and can set off asthma. Keep the room well aired and your face away from the tube.",
    test: "damp blue litmus turns red",
    have: "damp blue litmus paper",
    shownBy: "damp blue litmus",
    alsoShownBy: ["rod with ammonia"],
    source: "from memory (CLEAPSS)",
  },
  H2: {
    name: "hydrogen",
    rank: 1,
    hazard:
      "Hydrogen burns with a pop. Move flammable liquids away. Test only a tube-full, with the lighted splint at the mouth and your face away.",
    test: "lighted splint gives a squeaky pop",
    have: "a lighted splint",
    shownBy: "lighted splint",
    source: "test: boards' gas tables; hazard from memory (CLEAPSS)",
  },
  O2: {
    name: "oxygen",
    rank: 1,
    hazard:
      "Oxygen makes things burn fiercely. Move flammable liquids away. Take the splint out as soon as it relights and do not drop it into the tube.",
    test: "glowing splint relights",
    have: "a glowing splint",
    shownBy: "glowing splint",
    source: "test: boards' gas tables; hazard from memory (CLEAPSS)",
  },
  CO2: {
    name: "carbon dioxide",
    rank: 2,
    hazard: "Fizzing can carry acid out of the tube. Add the acid a little at a time.",
    test: "limewater turns milky",
    have: "limewater",
    shownBy: "limewater",
    source: "test: boards' gas tables; hazard: common practice, no source",
  },
  H2O: {
    name: "water vapour",
    rank: 2,
    hazard:
      "Water that runs back cracks hot glass. When a dry solid is heated, keep the mouth of its tube a little lower than the bottom.",
    test: "anhydrous copper(II) sulfate turns blue",
    have: "a little anhydrous copper(II) sulfate",
    shownBy: "anhydrous copper(II) sulfate",
    alsoShownBy: ["cobalt(II) chloride paper"],
    source: "test: boards' tables; hazard: common practice, no source",
  },
};
