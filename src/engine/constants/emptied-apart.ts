/** What never stands in a beaker or bottle with just anything else when tubes are emptied. Defer to the teacher in charge and the local rules. */

export interface EmptiedApart {
  /** A tube with any of these: as reagents bring it or the sample may hold it. */
  holds: readonly string[];
  /** Only where it holds one of these as well. */
  beside?: readonly string[];
  /**
   * What is added to it in the tube first, and what that takes away: what the row is about, or the acid, where the tube holds any. `leaves`:
   * what is in the tube then.
   */
  first?: { adds: string; says: string; takes: "it" | "acid"; leaves?: readonly string[] };
  /** Why it is emptied by itself, in plain sentences. Absent where `first` says it. */
  because?: string;
  source: string;
}

const THIOSULFATE = ["S2O3^2-"];
const PLENTY =
  "common practice, no source; that equal volumes are plenty follows from the strengths of the two bottles";

export const EMPTIED_APART: readonly EmptiedApart[] = [
  {
    holds: ["Cl2"],
    first: {
      adds: "sodium thiosulfate",
      says: "First, in a fume cupboard or at an open window, add as much sodium thiosulfate as there is liquid: chlorine comes off until then.",
      takes: "it",
      leaves: THIOSULFATE,
    },
    source: PLENTY,
  },
  {
    holds: ["I2"],
    first: {
      adds: "sodium thiosulfate",
      says: "First add as much sodium thiosulfate as there is liquid, and see that the brown has gone.",
      takes: "it",
      leaves: THIOSULFATE,
    },
    source: PLENTY,
  },
  {
    holds: ["I2"],
    beside: ["NH3", "NH4+"],
    because:
      "With ammonia it may hold a dark solid that explodes once it is dry: keep it wet, do not rub it, and empty it at once, with your teacher.",
    source: "nitrogen triiodide, which thiosulfate reduces: from memory (school safety notes)",
  },
  {
    holds: ["SCN-", "[Fe(CN)6]^4-", "[Fe(CN)6]^3-"],
    first: {
      adds: "solid sodium carbonate",
      says: "It holds acid itself: first add solid sodium carbonate, a little at a time, until nothing more fizzes.",
      takes: "acid",
    },
    because: "No acid goes down with it: thiocyanate and hexacyanoferrates can give off a very toxic gas with acid.",
    source:
      "suppliers' safety data sheets of the potassium salts, read: contact with acid may set very toxic gas free; the sink and the carbonate: common practice",
  },
  {
    holds: ["MnO4-"],
    because: "No hydrochloric acid goes down with it: manganate(VII) can turn that into chlorine.",
    source: "from memory (common school safety advice); the sink for drops of it: common practice",
  },
  {
    holds: ["SO3^2-", "S2O3^2-"],
    because:
      "Do it as soon as you have looked, at an open window or in a fume cupboard: acid sets sulfur dioxide free from sulfite and thiosulfate.",
    source: "from memory (CLEAPSS; EUH031 of CLP: contact with acids liberates toxic gas)",
  },
  {
    holds: ["NO2-"],
    because: "Do it as soon as you have looked, in a fume cupboard: acid sets nitrogen dioxide free from nitrite.",
    source: "from memory (CLEAPSS; CLP)",
  },
];
