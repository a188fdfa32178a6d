/** Every ion has its page, named after it. */
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ionSlug } from "../../../src/components/ions/ion-path.ts";
import { ANIONS, CATIONS } from "../../../src/engine/constants/ions.ts";
import { ROOT } from "../broken.ts";

const FOLDER = join(ROOT, "src", "content", "ions");

test.each([
  ["Cu^2+", "copper-ii"],
  ["SO4^2-", "sulfate"],
  ["CrO4^2-", "chromate-vi"],
  ["HCO3-", "hydrogencarbonate"],
])("%s is at %s", (ion, slug) => {
  expect(ionSlug(ion)).toBe(slug);
});

test.each([...CATIONS, ...ANIONS])("%s has notes", (ion) => {
  expect(existsSync(join(FOLDER, `${ionSlug(ion)}.mdx`))).toBe(true);
});

test("there are no notes on anything else", () => {
  expect(readdirSync(FOLDER)).toHaveLength(CATIONS.length + ANIONS.length);
});
