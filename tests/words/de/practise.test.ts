/** Blind practice in German: what is seen, and where a record leads. */
import { expect, test } from "vitest";
import { advice, couldAlsoBe, open } from "#words/practise-result.ts";
import { wordSight, wordTube } from "../../../src/components/practise/look-words.ts";
import { readSeed } from "../../../src/components/practise/seed.ts";
import { GAS_EVIDENCE } from "../../../src/engine/practical/gases.ts";

const EMPTY = { cm3: 0 };

test("a tube is told part by part", () => {
  expect(wordTube({ cm3: 1, liquid: "colourless" })).toEqual(["Die Flüssigkeit ist ohne jede Farbe."]);
  const seen = { precipitate: { colour: "white", amount: "plain" } } as const;
  const after = { cm3: 2, liquid: "colourless", solid: { colour: "white", amount: "plain", dry: false } } as const;
  expect(wordSight(seen, EMPTY, after, {})).toEqual([
    "Etwas, das weiß ist, trübt alles: Man kann nicht mehr hindurchsehen.",
    "Die Flüssigkeit ist ohne jede Farbe.",
  ]);
});

test("the sign of every gas is told in German", () => {
  for (const evidence of Object.values(GAS_EVIDENCE)) {
    const said = wordSight({ gas: { formula: "CO2", evidence } }, EMPTY, EMPTY, {}).join(" ");
    expect(said).not.toContain(evidence);
  }
});

test("numbers, several salts, lost marks", () => {
  expect(readSeed("x")).toBe("„x“ ist keine Nummer eines Satzes: Erwartet wird eine ganze Zahl von 1 bis 999999.");
  expect(open("P", ["ZnSO4", "ZnCl2"], 3)).toBe("P ist noch offen: ZnSO4, ZnCl2 oder 3 weitere.");
  expect(couldAlsoBe(["Zn^2+"], 1)).toBe("Mit diesen allein könnte es auch Zn^2+ oder ein weiteres sein.");
  expect(advice("Schreibe.", 2)).toBe("Schreibe. (2-mal)");
});
