/** A written paper, small enough to be worked out at once. */
export const TWO_JARS = {
  title: "Two jars",
  samples: [{ label: "P", given: "solution", concentration: "0.1 mol/dm3" }],
  paper: { cations: ["Zn^2+", "Cu^2+", "Mg^2+"], anions: ["Cl-", "SO4^2-"] },
  parts: [
    {
      label: "a",
      title: "Alkali",
      tests: [
        { steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }] },
        { steps: [{ add: "NaOH(aq)", until: "in excess" }] },
      ],
    },
    { label: "b", title: "Barium", tests: [{ steps: [{ take: "1 cm3" }, { add: "Ba(NO3)2(aq)", volume: "1 cm3" }] }] },
  ],
};
