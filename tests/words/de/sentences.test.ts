/** Sentences of the pages in German: figures, salts, statements of a paper, steps. */
import { describe, expect, test } from "vitest";
import { contains, differ, inAll, share } from "#words/paper-says.ts";
import { tellsApart } from "#words/read.ts";
import { salt } from "#words/salt-name.ts";
import { wordTest } from "../../../src/components/carry-out/step-words.ts";
import { plain, rich } from "../../../src/components/sentence.ts";
import { saltName } from "../../../src/engine/formula/ion-name.ts";

test.each([
  ["0.1 mol/dm3 in 2.5 cm3", "0,1\u00a0mol/dm³ in 2,5\u00a0cm³"],
  ["CuSO4*5H2O, 10 %", "CuSO₄·5H₂O, 10\u00a0%"],
  ["Teil a. 5 Tropfen", "Teil a. 5 Tropfen"],
  ["Ammonium- und Eisen(II)-sulfat", "Ammonium- und Eisen(II)-sulfat"],
  ["Eisen(II)- oder Cl- und Br-", "Eisen(II)- oder Cl⁻ und Br⁻"],
])("%s is printed %s", (text, printed) => {
  expect(plain(text)).toBe(printed);
  expect(rich(text)).not.toMatch(/\d\.\d/);
});

test.each([
  ["Cu^2+", "SO4^2-", "Kupfer(II)-sulfat"],
  ["NH4+", "Cl-", "Ammoniumchlorid"],
  ["Zn^2+", "NO3-", "Zinknitrat"],
])("%s and %s are %s", (cation, anion, name) => {
  expect(saltName(cation, anion)).toBe(name);
});

test("a salt of several ions names them all", () => {
  expect(salt(["Ammonium", "Eisen(II)"], ["Sulfat"])).toBe("Ammonium- und Eisen(II)-sulfat");
  expect(salt(["Natrium"], ["Chlorid", "Nitrat"])).toBe("Natriumchlorid und -nitrat");
});

describe("what a paper says", () => {
  test.each([
    [share(["A", "B"], "anion"), "A und B enthalten dasselbe Anion"],
    [differ(["A", "B", "C"], "cation"), "keine zwei von A, B und C enthalten dasselbe Kation"],
    [inAll(3, "anion"), "insgesamt drei verschiedene Anionen"],
    [contains(["A", "B"], undefined, "NH4+"), "mindestens eine von A und B enthält NH4+"],
    [tellsApart(["cation", "anion"]), "Unterscheidet, welches Kation und welches Anion vorliegt."],
  ])("%s", (said, expected) => {
    expect(said).toBe(expected);
  });
});

test("a test in a few words", () => {
  const bench = { reagents: [{ id: "NaOH(aq)", name: "Natronlauge" }] };
  const steps = [{ do: "add", reagent: "NaOH(aq)", amount: { drops: 5 } }, { do: "warm" }] as const;
  expect(wordTest({ steps: [...steps] } as never, bench)).toBe("Natronlauge, 5 Tropfen, dann erwärmt");
});
