/** A paper that says more of its samples than any should. */

const ions = {
  cations: ["NH4+", "Na+", "K+", "Mg^2+", "Ca^2+", "Ba^2+", "Zn^2+", "Al^3+", "Pb^2+", "Cu^2+", "Fe^2+", "Fe^3+"],
  anions: ["Cl-", "Br-", "I-", "NO3-", "NO2-", "SO4^2-", "SO3^2-", "S2O3^2-", "CO3^2-", "CrO4^2-"],
};
/** Every sample another choice of salts, as after an observation or two. */
export const uneven = (s: number, salt: number) => (salt * 7 + s * 5) % 11 > 3;

const said = {
  inAll: { cations: 6, anions: 5 },
  differ: [
    { samples: ["A", "B", "C"], ion: "cation" },
    { samples: ["B", "D", "F"], ion: "cation" },
    { samples: ["B", "G", "H"], ion: "cation" },
    { samples: ["C", "E", "G", "H"], ion: "anion" },
    { samples: ["A", "D", "H"], ion: "anion" },
  ],
  contains: [
    { ion: "NH4+", samples: ["A", "C", "E", "G"], count: 1 },
    { ion: "Cl-", samples: ["B", "C", "D"] },
    { ion: "Zn^2+", samples: ["C", "D", "E"] },
    { ion: "SO4^2-", samples: ["E", "F"], count: 1 },
    { ion: "Ca^2+" },
  ],
};

export const HOSTILE = { ions, letters: "ABCDEFGH", said };
