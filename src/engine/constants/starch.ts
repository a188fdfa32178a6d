/** What starch solution shows: no reaction of the constant set, but a named gate of its own, applied where a tube is looked into. */
export const STARCH = {
  id: "starch-iodine",
  /** Reagent that brings it. */
  reagent: "starch solution",
  name: "starch turns blue-black with iodine, in the cold",
  /** Dissolved forms of iodine that count. */
  iodine: ["I2", "I3-"],
  /** Least of them that shows, mol/kg. */
  least: { value: 2e-5, source: "Vogel, on the starch-iodide reaction, from memory: about 2e-5 mol/dm3 at 20 C" },
  /** From here the colour is gone; it comes back on cooling. C. */
  fadesAt: { value: 60, source: "textbook: the blue fades on warming; the figure is common practice, no source" },
  /** Absorption coefficient, dm3 mol^-1 cm^-1. */
  absorptivity: { value: 40000, source: "visible maximum near 600 nm, from memory, good to a factor of two" },
  colour: "blue-black",
  source: "school tables of tests, from memory",
} as const;
