import { describe, expect, test } from "vitest";
import { heatRegardless, heatSolid } from "../../../../src/engine/bench/heat/heat-solid.ts";
import { UnknownSolidError } from "../../../../src/engine/bench/heat/looks.ts";
import { gasOverHeated, heatReadings } from "../../../../src/engine/bench/read-heat.ts";
import { BURNER, HEAT_GATES, MELT_GATE } from "../../../../src/engine/constants/heating.ts";
import { salts } from "../../../../src/engine/constants/salts.ts";
import { SUBSTANCES } from "../../../../src/engine/constants/thermochemistry/index.ts";
import { isBalanced, parseEquation } from "../../../../src/engine/formula/equation.ts";
import { FormulaError } from "../../../../src/engine/formula/parse.ts";

const solids = [
  ...new Set([
    ...salts.map(({ formula }) => formula),
    ...SUBSTANCES.filter(({ state }) => state === "s").map(({ formula }) => formula),
  ]),
];

describe("every solid of the store and of the constants", () => {
  test.each(solids)("%s: what happens gently happens strongly too", (formula) => {
    const gently = heatSolid(formula, "gently");
    const strongly = heatSolid(formula, "strongly");
    const happens = (one: typeof gently) => one.stages.filter((stage) => stage.happens).map((stage) => stage.equation);
    expect(happens(strongly)).toEqual(expect.arrayContaining(happens(gently)));
    expect([...strongly.gases, ...strongly.otherGases]).toEqual(
      expect.arrayContaining([...gently.gases, ...gently.otherGases]),
    );
    expect(strongly.melts || !gently.melts).toBe(true);
  });

  test.each(solids)("%s: stages are balanced and within reach of the flame when they happen", (formula) => {
    for (const how of ["gently", "strongly"] as const) {
      for (const { equation, celsius, happens } of heatSolid(formula, how).stages) {
        expect(isBalanced(parseEquation(equation))).toBe(true);
        if (happens) expect(celsius).toBeLessThanOrEqual(BURNER[how].celsius);
      }
    }
  });
});

test("every solid of the store is refused or told the whole of", () => {
  for (const { formula } of salts) {
    for (const how of ["gently", "strongly"] as const) {
      const { refused, unsure } = heatSolid(formula, how);
      expect(refused === undefined ? unsure : [], formula).toEqual([]);
    }
  }
});

// Textbook trends of group 2, and handbook temperatures (temperature.test.ts).
describe("salts of strontium", () => {
  test("the carbonate outlasts the burner", () => {
    expect(heatSolid("SrCO3", "strongly")).toMatchObject({ gases: [], residue: { formula: "SrCO3", cold: "white" } });
  });
  test("the nitrate stays over a gentle flame, and leaves the oxide under brown gas and oxygen over a strong one", () => {
    expect(heatSolid("Sr(NO3)2", "gently").gases).toEqual([]);
    const strongly = heatSolid("Sr(NO3)2", "strongly");
    expect(strongly.gases.toSorted()).toEqual(["NO2", "O2"]);
    expect(strongly).toMatchObject({ melts: true, residue: { formula: "SrO", cold: "white" } });
  });
  test("the hydroxide gives up its water over a strong flame only", () => {
    expect(heatSolid("Sr(OH)2", "gently").gases).toEqual([]);
    expect(heatSolid("Sr(OH)2", "strongly").gases).toEqual(["H2O"]);
  });
  // CRC Handbook, physical constants, from memory: the hexahydrate loses four molecules of water near 61 C and the rest by 200 C.
  test("the hydrated chloride dries", () => {
    expect(heatSolid("SrCl2*6H2O", "gently")).toMatchObject({ gases: ["H2O"], residue: { formula: "SrCl2" } });
  });
});

// Textbook, from memory: black copper(II) bromide loses bromine and leaves white copper(I) bromide.
test("copper(II) bromide loses bromine over a strong flame", () => {
  expect(heatSolid("CuBr2", "strongly")).toMatchObject({ otherGases: ["Br2"], residue: { formula: "CuBr" } });
});

describe("salts not heated in class (the store's hazard notes; common practice)", () => {
  test.each([
    ["NH4NO3", /explode/],
    ["(NH4)2Cr2O7", /cancer/],
    ["K2CrO4", /cancer/],
    ["CoCl2*6H2O", /cancer/],
    ["NiSO4*6H2O", /cancer/],
  ])("%s", (formula, reason) => {
    for (const how of ["gently", "strongly"] as const) {
      const { refused, gases, otherGases, residue, stages } = heatSolid(formula, how);
      expect(refused).toMatch(reason);
      expect([...gases, ...otherGases]).toEqual([]);
      expect(residue?.formula).toBe(formula);
      expect(stages.filter(({ happens }) => happens)).toEqual([]);
    }
  });

  test("other ammonium salts and nitrates are heated", () => {
    for (const formula of ["NH4Cl", "KNO3", "Cu(NO3)2*3H2O"])
      expect(heatSolid(formula, "gently").refused).toBeUndefined();
  });
});

/** Textbook statements, from memory. */
describe("textbook cases", () => {
  test("blue copper(II) sulfate turns white when heated gently; only water leaves", () => {
    expect(heatSolid("CuSO4*5H2O", "gently")).toMatchObject({
      gases: ["H2O"],
      otherGases: [],
      residue: { hot: "white", cold: "white", formula: "CuSO4" },
    });
  });

  test("zinc carbonate leaves an oxide that is yellow hot and white cold", () => {
    expect(heatSolid("ZnCO3", "strongly")).toMatchObject({ gases: ["CO2"], residue: { hot: "yellow", cold: "white" } });
  });

  test("silver carbonate: carbon dioxide first, then oxygen; silver is left", () => {
    expect(heatSolid("Ag2CO3", "strongly")).toMatchObject({ gases: ["CO2", "O2"], residue: { formula: "Ag" } });
  });

  test("ammonium chloride leaves nothing and settles on the cool wall", () => {
    expect(heatSolid("NH4Cl", "strongly")).toMatchObject({
      gases: ["NH3", "HCl"],
      residue: null,
      sublimate: { colour: "white", formula: "NH4Cl" },
    });
  });

  test("sodium nitrate melts and slowly gives oxygen, never brown gas", () => {
    const outcome = heatSolid("NaNO3", "strongly");
    expect(outcome).toMatchObject({ gases: ["O2"], melts: true });
    expect(outcome.stages[0].gate).toBe(MELT_GATE.id);
  });

  test("lead(II) nitrate crackles", () => {
    expect(heatSolid("Pb(NO3)2", "strongly").crackles).toBe(true);
  });

  test("sodium carbonate only loses its water", () => {
    expect(heatSolid("Na2CO3*10H2O", "strongly")).toMatchObject({ gases: ["H2O"], residue: { formula: "Na2CO3" } });
  });

  test("the chloride of aluminium cannot be dried: hydrogen chloride leaves", () => {
    expect(heatSolid("AlCl3*6H2O", "gently")).toMatchObject({ gases: ["H2O", "HCl"], residue: { formula: "Al2O3" } });
  });

  test("blue-green copper(II) chloride goes brown as it dries, with a little hydrogen chloride, then melts dark and gives chlorine", () => {
    expect(heatSolid("CuCl2*2H2O", "gently")).toMatchObject({
      gases: ["H2O"],
      traces: ["HCl"],
      residue: { hot: "dark brown", formula: "CuCl2" },
    });
    expect(heatSolid("CuCl2*2H2O", "strongly")).toMatchObject({
      gases: ["H2O", "Cl2"],
      residue: { hot: "dark brown", cold: "white", formula: "CuCl" },
      melts: true,
    });
  });

  test("the chlorides of barium and calcium only dry", () => {
    for (const formula of ["BaCl2*2H2O", "CaCl2*6H2O"]) expect(heatSolid(formula, "strongly").traces).toEqual([]);
  });

  /** ZnCl2, LiCl and K2CO3 are deliquescent (CRC Handbook, from memory); moist zinc chloride fumes when heated, the lithium one hardly (textbooks, from memory). */
  test("salts that turn damp in air may leave drops, and zinc chloride then fumes", () => {
    expect(heatSolid("ZnCl2", "strongly")).toMatchObject({ damp: true, traces: ["HCl"] });
    expect(heatSolid("LiCl", "strongly")).toMatchObject({ damp: true, traces: [] });
    const readings = heatReadings(heatSolid("K2CO3", "strongly"));
    expect(readings.map(({ droplets }) => droplets)).toEqual([undefined, true]);
    expect(gasOverHeated(heatSolid("K2CO3", "strongly"), "cobalt(II) chloride paper")[0]).toBe(false);
    expect(gasOverHeated(heatSolid("K2CO3", "strongly"), "cobalt(II) chloride paper")[1]).toMatchObject({
      formula: "H2O",
    });
    expect(heatReadings(heatSolid("NaCl", "strongly"))).toHaveLength(1);
  });

  test("ammonium iron(II) sulfate gives ammonia before sulfur dioxide", () => {
    expect(heatSolid("(NH4)2Fe(SO4)2*6H2O", "strongly").gases).toEqual(["H2O", "NH3", "SO2"]);
  });
});

// Class-room sheets on cobalt and nickel salts (CLP: may cause cancer by inhalation).
test.each([
  ...["CoCl2*6H2O", "Co(NO3)2*6H2O", "CoSO4*7H2O", "CoCO3", "Co(OH)2"],
  ...["NiCl2*6H2O", "Ni(NO3)2*6H2O", "NiSO4*6H2O", "NiSO4*7H2O", "NiCO3", "Ni(OH)2"],
])("%s is refused for its dust, and not for want of figures", (formula) => {
  expect(heatSolid(formula, "strongly")).toMatchObject({ refused: expect.stringContaining("cancer"), gases: [] });
});

// What heat would do, by textbooks on cobalt and nickel, from memory; never on a page.
test.each([
  ["Co(NO3)2*6H2O", "strongly", "CoO"],
  ["CoCO3", "strongly", "CoO"],
  ["Ni(NO3)2*6H2O", "strongly", "NiO"],
  ["CoSO4*7H2O", "gently", "CoSO4"],
  ["NiCl2*6H2O", "gently", "NiCl2"],
] as const)("%s heated %s would leave %s", (formula, how, left) => {
  expect(heatRegardless(formula, how).residue?.formula).toBe(left);
});

describe("what is not known is said", () => {
  test("a sulfite without figures", () => {
    expect(heatSolid("PbSO3", "strongly").unsure).toEqual(["PbSO3"]);
  });

  test("a solid without a row", () => {
    expect(() => heatSolid("SiO2", "gently")).toThrow(UnknownSolidError);
    expect(() => heatSolid("SiO2", "gently")).toThrow(/No colour for the solid "SiO2".*Add one to constants/);
  });

  test("a formula that cannot be read", () => {
    expect(() => heatSolid("CuSo4", "gently")).toThrow(FormulaError);
  });

  test("every gate speaks of a way that exists", () => {
    const known = SUBSTANCES.map(({ formula }) => formula);
    for (const { solid, product } of HEAT_GATES) {
      expect(known).toContain(solid);
      if (product !== undefined) expect(known).toContain(product);
    }
  });
});

describe("what may or may not be seen above the glass", () => {
  // NH4Cl: 40 mmHg at 245 C (CRC Handbook, from memory); school texts have the white ring above a gently heated tube.
  test.each(["NH4Cl", "NH4Br"])("a white solid above gently heated %s", (formula) => {
    expect(heatReadings(heatSolid(formula, "gently"))).toEqual([
      { residue: { hot: "white", cold: "white" } },
      { residue: { hot: "white", cold: "white" }, sublimate: "white" },
    ]);
  });
  // Vogel, from memory: white fumes of sulfur trioxide from strongly heated sulfates of iron(II) and copper(II).
  test.each(["FeSO4*7H2O", "CuSO4*5H2O"])("white fumes from strongly heated %s", (formula) => {
    expect(heatReadings(heatSolid(formula, "strongly")).map(({ fumes }) => fumes)).toEqual([undefined, "white"]);
  });
  test("nothing of the kind where no salt or gas does it", () => {
    for (const formula of ["NaCl", "Na2SO4", "CaCO3"])
      expect(heatReadings(heatSolid(formula, "strongly"))).toHaveLength(1);
  });
});
