import { build, type Plugin, type Rolldown } from "vite";
import { expect, test } from "vitest";
import { asColumns } from "../../scripts/as-columns.ts";

/** What a module of the constants exports once it is written in columns, and its text. */
async function written(text: string) {
  const id = "/src/engine/constants/rows.ts";
  const constants: Plugin = {
    name: "constants",
    resolveId: (asked) => (asked === id ? id : undefined),
    load: (asked) => (asked === id ? text : undefined),
  };
  const made = (await build({
    configFile: false,
    logLevel: "error",
    plugins: [constants, asColumns()],
    build: { write: false, minify: false, lib: { entry: id, formats: ["es"] } },
  })) as Rolldown.RolldownOutput[];
  const { code } = made[0].output[0];
  return { code, module: await import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`) };
}

test("rows come back as they were written, with what each has and has not", async () => {
  const { code, module } = await written(`
    const half = 0.5;
    interface Row { readonly id: string; readonly at?: number | null; readonly "in water"?: { readonly rows: readonly { a: number }[] } }
    export const rows: readonly Row[] = [
      { id: "first", at: undefined },
      { id: "second", "in water": { rows: [{ a: 1 }, { a: half }, { a: 3 }] } },
      { at: null, id: "third" },
      { id: "last", },
    ];
    export const texts = [{ x: "one" }, { x: "t|o" }, { x: "three" }];
    export const plain = [{ x: "one" }, { x: "two, or" }, { x: "three" }];
    export const deep = { within: [[{ x: 1 }, { x: 2, y: "a,b" }, { y: "c" }], "other"] } as const;`);
  expect(module.rows).toStrictEqual([
    { id: "first", at: undefined },
    { id: "second", "in water": { rows: [{ a: 1 }, { a: 0.5 }, { a: 3 }] } },
    { id: "third", at: null },
    { id: "last" },
  ]);
  expect(module.deep).toStrictEqual({ within: [[{ x: 1 }, { x: 2, y: "a,b" }, { y: "c" }], "other"] });
  expect(module.texts).toStrictEqual([{ x: "one" }, { x: "t|o" }, { x: "three" }]);
  expect(module.plain).toStrictEqual([{ x: "one" }, { x: "two, or" }, { x: "three" }]);
  expect(code).toContain('"one|two, or|three"');
  expect(code.match(/\bid:/g)).toHaveLength(1);
});

test.each([
  ["two rows", "[{ a: 1 }, { a: 2 }]", [{ a: 1 }, { a: 2 }]],
  ["a spread row", "[{ a: 1 }, { ...other }, { a: 3 }]", [{ a: 1 }, { b: 0 }, { a: 3 }]],
  ["a reckoned name", '[{ a: 1 }, { ["b" + 1]: 2 }, { a: 3 }]', [{ a: 1 }, { b1: 2 }, { a: 3 }]],
  ["spread rows", "[{ a: 1 }, ...[other], { a: 3 }]", [{ a: 1 }, { b: 0 }, { a: 3 }]],
  ["a hole", "[{ a: 1 }, , { a: 2 }, { a: 3 }].filter(() => true)", [{ a: 1 }, { a: 2 }, { a: 3 }]],
])("%s stay as they are", async (_, text, rows) => {
  const { code, module } = await written(`const other = { b: 0 }; export const rows = ${text};`);
  expect(module.rows).toStrictEqual(rows);
  expect(code).not.toContain("Array.from");
});
