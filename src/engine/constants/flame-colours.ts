/** What a cation does to a clean, roaring flame. */
export type FlameColour = {
  readonly cation: string;
  /** Colour as recorded; null where the flame shows nothing of use. */
  readonly colour: string | null;
  /** Other words that mean the same. */
  readonly alsoAccept: readonly string[];
  /** Principal emission in nm: lines of the atom, or the middle and ends of a molecular band. All from memory. */
  readonly emission: readonly { readonly nm: number | readonly [from: number, to: number]; readonly from: string }[];
  /** Cations whose flame hides this one. */
  readonly maskedBy: readonly string[];
  readonly note?: string;
  /** Where the colour comes from; the wavelengths are from memory throughout. */
  readonly source: string;
  readonly memory?: true;
};

const EDEXCEL = "Pearson Edexcel International GCSE Chemistry (4CH1) specification, flame tests";
const CAMBRIDGE = "Cambridge International 5070 Chemistry syllabus (2023), notes for qualitative analysis";
const VOGEL = "Vogel's Qualitative Inorganic Analysis, from memory";

export const flameColours: readonly FlameColour[] = [
  {
    cation: "Li+",
    colour: "red",
    alsoAccept: ["crimson"],
    emission: [
      { nm: 670.8, from: "Li" },
      { nm: 610.4, from: "Li" },
    ],
    maskedBy: ["Na+", "Sr^2+"],
    source: `${EDEXCEL}; ${CAMBRIDGE}`,
  },
  {
    cation: "Na+",
    colour: "yellow",
    alsoAccept: ["golden yellow", "orange-yellow"],
    emission: [
      { nm: 589.0, from: "Na" },
      { nm: 589.6, from: "Na" },
    ],
    maskedBy: [],
    note: "Traces are everywhere: only a strong colour that lasts counts.",
    source: EDEXCEL,
  },
  {
    cation: "K+",
    colour: "lilac",
    alsoAccept: ["violet", "pale purple"],
    emission: [
      { nm: 766.5, from: "K" },
      { nm: 769.9, from: "K" },
      { nm: 404.4, from: "K" },
    ],
    maskedBy: ["Na+", "Li+", "Ca^2+", "Sr^2+", "Ba^2+", "Cu^2+"],
    note: "Look through cobalt-blue glass, which takes out the sodium yellow.",
    source: EDEXCEL,
  },
  {
    cation: "Ca^2+",
    colour: "orange-red",
    alsoAccept: ["brick red"],
    emission: [
      { nm: [605, 635], from: "CaOH band, strongest near 622" },
      { nm: [545, 560], from: "CaOH band, strongest near 554" },
      { nm: 422.7, from: "Ca" },
    ],
    maskedBy: ["Na+", "Li+", "Sr^2+"],
    source: EDEXCEL,
  },
  {
    cation: "Sr^2+",
    colour: "red",
    alsoAccept: ["crimson", "scarlet"],
    emission: [
      { nm: [600, 690], from: "SrOH and SrCl bands" },
      { nm: 460.7, from: "Sr" },
    ],
    maskedBy: ["Na+", "Li+"],
    source: VOGEL,
    memory: true,
  },
  {
    cation: "Ba^2+",
    colour: "light green",
    alsoAccept: ["apple green", "pale green"],
    emission: [
      { nm: [485, 515], from: "BaOH band" },
      { nm: [510, 535], from: "BaCl band" },
      { nm: 553.5, from: "Ba" },
    ],
    maskedBy: ["Na+", "Cu^2+"],
    source: CAMBRIDGE,
    memory: true,
  },
  {
    cation: "Cu^2+",
    colour: "blue-green",
    alsoAccept: ["green"],
    emission: [
      { nm: [420, 460], from: "CuCl bands, with chloride" },
      { nm: [530, 555], from: "CuOH bands" },
    ],
    maskedBy: ["Na+"],
    note: "Chloride makes it bluer.",
    source: EDEXCEL,
  },
  {
    cation: "Pb^2+",
    colour: "pale blue-white",
    alsoAccept: ["livid blue", "grey-blue"],
    emission: [{ nm: 405.8, from: "Pb" }],
    maskedBy: ["Na+", "K+", "Li+", "Ca^2+", "Sr^2+", "Ba^2+", "Cu^2+"],
    note: "Toxic fumes: not a test for students. It also attacks a platinum wire.",
    source: VOGEL,
    memory: true,
  },
  {
    cation: "Zn^2+",
    colour: null,
    alsoAccept: ["faint bluish-green flashes"],
    emission: [],
    maskedBy: [],
    source: VOGEL,
    memory: true,
  },
  { cation: "Mg^2+", colour: null, alsoAccept: [], emission: [], maskedBy: [], source: VOGEL, memory: true },
  { cation: "Al^3+", colour: null, alsoAccept: [], emission: [], maskedBy: [], source: VOGEL, memory: true },
  {
    cation: "Fe^2+",
    colour: null,
    alsoAccept: ["sparks", "dull orange"],
    emission: [],
    maskedBy: [],
    source: "common practice, no source",
    memory: true,
  },
  {
    cation: "Fe^3+",
    colour: null,
    alsoAccept: ["sparks", "dull orange"],
    emission: [],
    maskedBy: [],
    source: "common practice, no source",
    memory: true,
  },
];
