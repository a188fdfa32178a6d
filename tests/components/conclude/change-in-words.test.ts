/** What is spoken of a changed record, over the white precipitates; the record ids behind each sight stand in white-precipitates.ts. */
import { expect, test } from "vitest";
import { changeInWords } from "../../../src/components/conclude/change-in-words.ts";
import { SOMETHING_ELSE } from "../../../src/engine/deduction/something-else.ts";
import { recordOf, whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const names = { "Zn^2+": "zinc", "Al^3+": "aluminium", "Pb^2+": "lead(II)", "SO4^2-": "sulfate" };
const ZINC = { "a(i)": "white", "a(ii)": "dissolves", "b(i)": "white", "b(ii)": "dissolves" } as const;
const SULFATE = { c: "none", d: "white" } as const;

const spoken = (table: ReturnType<typeof whitePrecipitates>, now: object, before: object) =>
  changeInWords({ table, names, record: recordOf(now as never) }, recordOf(before as never));

test("an observation that makes no difference", () => {
  const table = whitePrecipitates(["P"]);
  const before = { P: { ...ZINC, ...SULFATE } };
  expect(spoken(table, { P: { ...ZINC, ...SULFATE, e: "none" } }, before)).toBe("the conclusion stays as it was");
});

test("one sample is told of, the others are named", () => {
  const table = whitePrecipitates(["P", "Q"], { share: [{ samples: ["P", "Q"], ion: "anion" }] });
  const said = spoken(table, { P: { ...ZINC, ...SULFATE }, Q: ZINC }, { P: ZINC, Q: ZINC });
  expect(said).toMatch(/^P holds zinc sulfate; Q changes too$/);
  expect(said).not.toMatch(/[.] /);
});

test("something else where nothing fits already", () => {
  const table = whitePrecipitates(["P"]);
  const before = { P: { ...ZINC, "b(ii)": "none" } };
  const record = recordOf(before as never);
  const now = { ...record, P: { ...record.P, d: SOMETHING_ELSE } };
  expect(changeInWords({ table, names, record: now }, record)).toMatch(
    /^the record still fits no salts: .* repeat first$/,
  );
});

test("a record that fits nothing", () => {
  const table = whitePrecipitates(["P", "Q"]);
  const said = spoken(table, { P: { ...ZINC, "b(ii)": "none" }, Q: ZINC }, { P: ZINC, Q: ZINC });
  expect(said).toBe("no salt the paper allows fits all that is recorded for P; Q waits");
  const second = spoken(table, { P: ZINC, Q: { ...ZINC, "b(ii)": "none" } }, { P: ZINC, Q: ZINC });
  expect(second).toBe("no salt the paper allows fits all that is recorded for Q; P waits");
});
