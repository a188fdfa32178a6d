/** Every refusal says where, what was found and what was expected. */
import { expect, test } from "vitest";
import { readPractical } from "../../../src/engine/practical/faults.ts";
import { changed, faultsOf, faultsWith, sound } from "./sound.ts";

const FIRST = ["parts", 0, "tests", 0, "steps", 0];
const ADD = ["parts", 0, "tests", 0, "steps", 1];
const CELL = ["record", "P", "a(i)"];

test("the sound practical is read whole", () => {
  const read = readPractical(sound());
  expect(read).toMatchObject({
    practical: {
      samples: [{ concentration: { molPerDm3: 0.1 } }, { given: "solid" }],
      paper: { share: [], differ: [] },
      record: { P: { "a(i)": { precipitate: { colour: "white", amount: "plain" } } } },
    },
  });
});

test("a strength that the paper does not give is about so much; of a volume that is no amount", () => {
  expect(readPractical(changed(["samples", 0, "concentration"], "about 0.1 mol/dm3"))).toMatchObject({
    practical: { samples: [{ concentration: { molPerDm3: 0.1, about: true } }, {}] },
  });
  expect(faultsWith([...FIRST, "take"], "about 1 cm3")).toContain('found "about 1 cm3"');
  expect(faultsWith(["samples", 0, "concentration"], "about")).toContain('found "about"');
});

test("units and amounts", () => {
  const told = [
    "0.1 M",
    "0.1",
    "mol/dm3",
    "0 mol/dm3",
    "-1 mol/dm3",
    "25 mol/dm3",
    "0,1 mol/dm3",
    "1e-3 mol/dm3",
    "",
  ].map((text) => faultsWith(["samples", 0, "concentration"], text));
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "samples > 0 > concentration: found the unit "M" in "0.1 M", expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found "0.1" without a unit, expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found "mol/dm3", expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found "0 mol/dm3", expected more than nothing, such as "0.1 mol/dm3"
    samples > 0 > concentration: found "-1 mol/dm3", expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found "25 mol/dm3", which is more than any school bench uses; expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found the unit ",1 mol/dm3" in "0,1 mol/dm3", expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found the unit "e-3 mol/dm3" in "1e-3 mol/dm3", expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found "", expected a concentration such as "0.1 mol/dm3""
  `);
  const others = [0.1, null, ["0.1 mol/dm3"], { molPerDm3: 0.1 }, true].map((value) =>
    faultsWith(["samples", 0, "concentration"], value),
  );
  expect(others.join("\n")).toMatchInlineSnapshot(`
    "samples > 0 > concentration: found the number 0.1, expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found nothing, expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found a list, expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found a group of entries, expected a concentration such as "0.1 mol/dm3"
    samples > 0 > concentration: found yes (true), expected a concentration such as "0.1 mol/dm3""
  `);
});

test("a solution without its concentration", () => {
  expect(faultsWith(["samples", 0, "concentration"], undefined)).toMatchInlineSnapshot(
    `"samples > 0 > concentration: found nothing, expected the concentration of the solution, such as "0.1 mol/dm3""`,
  );
});

test("units of steps", () => {
  const told = [
    faultsWith([...FIRST, "take"], "1 cc"),
    faultsWith([...FIRST, "take"], 1),
    faultsWith(ADD, { add: "NaOH(aq)", volume: "2 g" }),
    faultsWith(ADD, { add: "NaOH(aq)", volume: "99999 cm3" }),
    faultsWith(ADD, { boil: "2 minutes" }),
    faultsWith(ADD, { stand: "3 days" }),
    faultsWith(ADD, { add: "NaOH(aq)", drops: 5, at: "10 %" }),
  ];
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "parts > 0 > tests > 0 > steps > 0 > take: found "1 cc", expected a volume such as "1 cm3" or a mass such as "0.2 g"
    parts > 0 > tests > 0 > steps > 0 > take: found the number 1, expected "1 cm3" or "0.2 g"
    parts > 0 > tests > 0 > steps > 1 > volume: found the unit "g" in "2 g", expected a volume such as "1 cm3"
    parts > 0 > tests > 0 > steps > 1 > volume: found "99999 cm3", which is more than any school bench uses; expected a volume such as "1 cm3"
    parts > 0 > tests > 0 > steps > 1 > boil: found the unit "minutes" in "2 minutes", expected a time such as "2 min"
    parts > 0 > tests > 0 > steps > 1 > stand: found the unit "days" in "3 days", expected a time such as "2 min"
    parts > 0 > tests > 0 > steps > 1 > at: found the unit "%" in "10 %", expected a concentration such as "0.1 mol/dm3""
  `);
});

test("steps", () => {
  const told = [
    faultsWith(ADD, { stir: true }),
    faultsWith(ADD, "shake"),
    faultsWith(ADD, {}),
    faultsWith(ADD, { add: "NaOH(aq)", drops: 5, volume: "1 cm3" }),
    faultsWith(ADD, { add: "NaOH(aq)" }),
    faultsWith(ADD, { add: "NaOH(aq)", drops: 2.5 }),
    faultsWith(ADD, { add: "NaOH(aq)", drops: 1000 }),
    faultsWith(ADD, { add: "NaOH(aq)", until: "excess" }),
    faultsWith(ADD, { add: 5, drops: 5 }),
    faultsWith(ADD, { shake: false }),
    faultsWith(ADD, { filter: "paper" }),
    faultsWith(ADD, { heat: "hard" }),
    faultsWith(ADD, { testGas: "nose" }),
    faultsWith(ADD, { warm: true, shake: true }),
    faultsWith(["parts", 0, "tests", 0, "steps"], []),
  ];
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "parts > 0 > tests > 0 > steps > 1: found a group of entries, expected a step: one of take, add, shake, warm, boil, cool, stand, filter, wash, heat, testGas, leadThrough, indicator, flame
    parts > 0 > tests > 0 > steps > 1: found "shake", expected a step: one of take, add, shake, warm, boil, cool, stand, filter, wash, heat, testGas, leadThrough, indicator, flame
    parts > 0 > tests > 0 > steps > 1: found a group of entries, expected a step: one of take, add, shake, warm, boil, cool, stand, filter, wash, heat, testGas, leadThrough, indicator, flame
    parts > 0 > tests > 0 > steps > 1: found 2 amounts of NaOH(aq), expected one of drops, volume, pieces or until: in excess
    parts > 0 > tests > 0 > steps > 1: found 0 amounts of NaOH(aq), expected one of drops, volume, pieces or until: in excess
    parts > 0 > tests > 0 > steps > 1 > drops: found the number 2.5, expected a whole number of drops, 1 to 40
    parts > 0 > tests > 0 > steps > 1 > drops: found the number 1000, expected a whole number of drops, 1 to 40
    parts > 0 > tests > 0 > steps > 1 > until: found "excess", expected "in excess"
    parts > 0 > tests > 0 > steps > 1 > add: found the number 5, expected a reagent such as "NaOH(aq)"
    parts > 0 > tests > 0 > steps > 1 > shake: found no (false), expected true
    parts > 0 > tests > 0 > steps > 1 > filter: found "paper", expected what is kept: filtrate or residue
    parts > 0 > tests > 0 > steps > 1 > heat: found "hard", expected gently or strongly
    parts > 0 > tests > 0 > steps > 1 > testGas: found "nose", expected one of: damp red litmus, damp blue litmus, limewater, glowing splint, lighted splint, acidified manganate(VII) paper, acidified dichromate(VI) paper, rod with hydrochloric acid, rod with ammonia, anhydrous copper(II) sulfate, cobalt(II) chloride paper
    parts > 0 > tests > 0 > steps > 1: found "warm", which means nothing here; expected only the entries the guide names
    parts > 0 > tests > 0 > steps: expected at least one step"
  `);
});

test("observations", () => {
  const told = [
    faultsWith(CELL, { precipitate: "clear" }),
    faultsWith(CELL, { solution: "clear" }),
    faultsWith(CELL, { precipitate: "whitish" }),
    faultsWith(CELL, { precipitate: { colour: "white", amount: "thick" } }),
    faultsWith(CELL, { fate: "vanishes" }),
    faultsWith(CELL, { gas: "N2" }),
    faultsWith(CELL, { gas: { formula: "NH3" } }),
    faultsWith(CELL, { flame: "bright" }),
    faultsWith(CELL, { effervescence: "yes" }),
    faultsWith(CELL, { smell: "sharp" }),
    faultsWith(CELL, {}),
    faultsWith(CELL, "nothing"),
    faultsWith(CELL, ["white"]),
  ];
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "record > P > a(i) > precipitate: found "clear", which means see-through, not uncoloured; expected a colour such as "colourless" or "pale blue"
    record > P > a(i) > solution: found "clear", which means see-through, not uncoloured; expected a colour such as "colourless" or "pale blue"
    record > P > a(i) > precipitate: found "whitish", expected a colour such as "white", "pale blue" or "colourless"
    record > P > a(i) > precipitate > amount: found "thick", expected one of: plain, slight, trace
    record > P > a(i) > fate: found "vanishes", expected remains, partly dissolves or dissolves
    record > P > a(i) > gas: found "N2", expected one of NH3, CO2, SO2, H2, O2, Cl2, NO2, HCl, H2O
    record > P > a(i) > gas > evidence: found nothing, expected text
    record > P > a(i) > flame: found "bright", expected a colour such as "white", "pale blue" or "colourless"
    record > P > a(i) > effervescence: found "yes", expected true or false
    record > P > a(i): found "smell", which means nothing here; expected only the entries the guide names
    record > P > a(i): found an observation that says nothing, expected something seen, or "no visible change"
    record > P > a(i): found an observation that says nothing, expected something seen, or "no visible change"
    record > P > a(i): found "nothing", expected "no visible change" or what was seen, such as { precipitate: white } or { gas: NH3 }
    record > P > a(i): found a list, expected a group of entries"
  `);
});

test("ions, formulas and words of choice", () => {
  const told = [
    faultsWith(["paper", "cations", 0], "Zn2+"),
    faultsWith(["paper", "anions", 0], "PO4^3-"),
    faultsWith(["paper", "cations"], []),
    faultsWith(["samples", 0, "salt"], "ZnSO"),
    faultsWith(["samples", 0, "salt"], "Zn(SO4"),
    faultsWith(["samples", 0, "salt"], "Qq2"),
    faultsWith(["samples", 0, "salt"], 7),
    faultsWith(["samples", 0, "given"], "powder"),
    faultsWith(["samples", 0, "label"], "p"),
    faultsWith(["level"], "easy"),
    faultsWith(["minutes"], "20 min"),
    faultsWith(["minutes"], 1000),
    faultsWith(["order"], 1.5),
    faultsWith(["title"], "ab"),
    faultsWith(["title"], undefined),
    faultsWith(["paper", "inAll"], { cations: 0 }),
    faultsWith(["paper", "share"], [{ samples: ["P"], ion: "anion" }]),
    faultsWith(["paper", "share"], [{ samples: ["P", "Q"], ion: "metal" }]),
    faultsWith(["paper", "contains"], [{ ion: "" }]),
  ];
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "paper > cations > 0: found "Zn2+", expected a cation the engine knows: NH4+, Li+, Na+, K+, Mg^2+, Ca^2+, Sr^2+, Ba^2+, Al^3+, Cr^3+, Mn^2+, Fe^2+, Fe^3+, Co^2+, Ni^2+, Cu^2+, Zn^2+, Ag+, Pb^2+
    paper > anions > 0: found "PO4^3-", expected an anion the engine knows: CO3^2-, HCO3-, Cl-, Br-, I-, NO3-, NO2-, SO4^2-, SO3^2-, S2O3^2-, CrO4^2-, OH-, O^2-
    paper > cations: found no cations, expected at least one to choose from
    no fault
    samples > 0 > salt: Cannot read "Zn(SO4": found the end at character 7, expected ")" to close the "(" of character 3.
    samples > 0 > salt: Cannot read "Qq2": found "Qq" at character 1, expected the symbol of an element.
    samples > 0 > salt: found the number 7, expected a formula such as "CuSO4*5H2O"
    samples > 0 > given: found "powder", expected solid, solution or both
    samples > 0 > label: found "p", expected a sample letter such as "P"
    parts > 0 > samples: found sample P, expected one of p, Q
    record > P: found sample P, expected one of p, Q
    level: found "easy", expected one of: foundation, core, stretch
    minutes: found "20 min", expected a number
    minutes: found the number 1000, expected at most 300
    order: found the number 1.5, expected a whole number
    title: found "ab", expected at least 3 characters
    title: found nothing, expected text
    paper > inAll > cations: found the number 0, expected a whole number of ions
    paper > share > 0 > samples: expected at least two sample letters
    paper > share > 0 > ion: found "metal", expected cation or anion
    paper > contains > 0 > ion: found no ion yet, expected one to be chosen, such as NH4+"
  `);
});

test("what does not fit together", () => {
  const told = [
    faultsWith(["samples", 1, "label"], "P"),
    faultsWith(["parts", 0, "samples"], ["P", "Z"]),
    faultsWith(["paper", "share"], [{ samples: ["P", "Z"], ion: "anion" }]),
    faultsWith(["record", "Z"], { b: "no visible change" }),
    faultsWith(["record", "P", "b"], "no visible change"),
    faultsWith(["record", "P", "c"], "no visible change"),
    faultsWith(["undecided"], { Z: ["ZnCl2"] }),
    faultsWith(["undecided"], { P: [] }),
  ];
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "samples: found two samples called P, expected different letters
    parts > 1 > samples: found sample Q, expected one of P, P
    record > Q: found sample Q, expected one of P, P
    parts > 0 > samples: found sample Z, expected one of P, Q
    paper > share > 0 > samples: found sample Z, expected one of P, Q
    record > Z: found sample Z, expected one of P, Q
    record > Z > b: found an observation of Z, but part b is not done on it
    record > P > b: found an observation of P, but part b is not done on it
    record > P > c: found test c, expected one of a(i), a(ii), b
    undecided > Z: found sample Z, expected one of P, Q
    undecided > P: found an empty list, expected at least one entry"
  `);
});

test("two tests of the same label in a part", () => {
  const twice = changed(
    ["parts", 0, "tests"],
    [
      { label: "i", steps: [{ take: "1 cm3" }] },
      { label: "i", steps: [{ warm: true }] },
    ],
  );
  expect(faultsOf(twice)).toContain("parts: found two tests called a(i), expected different labels");
});

test("two parts of the same letter, with one test and with several", () => {
  const practical = changed(["parts", 1, "label"], "a") as ReturnType<typeof sound>;
  practical.record = { P: practical.record.P } as ReturnType<typeof sound>["record"];
  practical.parts[1].samples = ["P"];
  expect(faultsOf(practical)).toMatch(/^parts.*found a second part a, expected different letters/);
});

test("unknown entries, at every level", () => {
  const told = [
    faultsWith(["colour"], "white"),
    faultsWith(["samples", 0, "amount"], "5 cm3"),
    faultsWith(["paper", "metals"], []),
    faultsWith(["parts", 0, "remark"], "stir"),
    faultsWith([...ADD, "slowly"], true),
    faultsWith([...CELL, "texture"], "fine"),
  ];
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "(top): found "colour", which means nothing here; expected only the entries the guide names
    samples > 0: found "amount", which means nothing here; expected only the entries the guide names
    paper: found "metals", which means nothing here; expected only the entries the guide names
    parts > 0: found "remark", which means nothing here; expected only the entries the guide names
    parts > 0 > tests > 0 > steps > 1: found "slowly", which means nothing here; expected only the entries the guide names
    record > P > a(i): found "texture", which means nothing here; expected only the entries the guide names"
  `);
});

test("all faults of a practical are told at once", () => {
  const practical = changed(["minutes"], -1) as ReturnType<typeof sound>;
  practical.title = "";
  practical.samples[0].concentration = "0.1 M";
  expect(faultsOf(practical).split("\n")).toHaveLength(3);
});
