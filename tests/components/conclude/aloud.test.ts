/** What is spoken: names alone, as a reader aloud would say them. */
import { expect, test } from "vitest";
import { aloud } from "../../../src/components/conclude/aloud.ts";

test.each([
  ["K holds zinc sulfate, ZnSO4: Zn^2+ and SO4^2-.", "K holds zinc sulfate."],
  ["K holds zinc sulfate, ZnSO4: Zn^2+ and SO4^2-; S changes too", "K holds zinc sulfate; S changes too"],
  [
    "By its own tests T holds ammonium chloride, NH4Cl, but R must be put right first.",
    "By its own tests T holds ammonium chloride, but R must be put right first.",
  ],
  [
    "M holds iron(III) chloride and copper(II) chloride, FeCl3 + CuCl2: Fe^3+, Cu^2+ and Cl-.",
    "M holds iron(III) chloride and copper(II) chloride.",
  ],
  [
    "R holds zinc (Zn^2+); the anion is chloride (Cl-) or nitrate (NO3-).",
    "R holds zinc; the anion is chloride or nitrate.",
  ],
  [
    "S is still open, 12 salts: the cation is one of 7; the anion is one of 3.",
    "S is still open, 12 salts: the cation is one of 7; the anion is one of 3.",
  ],
])("%s", (written, said) => {
  expect(aloud(written)).toBe(said);
});
