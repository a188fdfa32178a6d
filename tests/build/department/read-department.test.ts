/** The department's file: what it may say, and every fault of it with its place. */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { wordFault } from "../../../src/authoring/faults.ts";
import { departmentJsonSchema } from "../../../src/build/department/json-schema.ts";
import { NO_DEPARTMENT, readDepartment } from "../../../src/build/department/read-department.ts";

const EXAMPLE = readFileSync(resolve("department/example.yaml"), "utf8");
const PRACTICALS = ["darkroom", "lamp-room-shelf"];

const FILE = "department/department.yaml";
const read = (text: string) => readDepartment(FILE, text, PRACTICALS);
function faultsIn(text: string) {
  const found = read(text);
  return "faults" in found ? found.faults : [];
}

test.each([
  ["", "an empty file"],
  [EXAMPLE, "the example"],
  ["# nothing\n", "comments alone"],
])("%#: it changes nothing", (text) => {
  expect(read(text)).toEqual({ department: NO_DEPARTMENT });
});

test("every entry of the example holds once its # is taken away", () => {
  const entries = EXAMPLE.replace(/^# (?!yaml)/gm, "");
  expect(read(entries)).toEqual({
    department: {
      name: "Chemistry at Quillstrand School",
      base: "/chemistry/",
      site: "https://school.example",
      languages: ["en-GB", "de"],
      safety: {
        note: "Goggles are in the blue tray by the door, the eyewash at the end of bench 2.",
        emergency: "Tell the teacher at once. The wall telephone reaches the first-aider on 222.",
      },
      strengths: { "NaOH(aq)": 1, "AgNO3(aq)": 0.05 },
      notKept: ["K2CrO4(aq)", "K3[Fe(CN)6](aq)"],
      ions: {
        cations: ["NH4+", "Ca^2+", "Al^3+", "Cu^2+", "Fe^2+", "Fe^3+", "Zn^2+"],
        anions: ["CO3^2-", "Cl-", "Br-", "I-", "NO3-", "SO4^2-"],
      },
      tubes: { testTube: "test-tube-125x16", boilingTube: "boiling-tube-150x25" },
      class: { groups: 12, sparePercent: 30 },
      practicals: { hide: ["darkroom"] },
    },
  });
});

test("all faults of a file come in one report, in the order of its lines", () => {
  const text = [
    "name: A",
    'base: "https://x/y"',
    "adress: https://school.example",
    "safety: { note: short, phone: 1 }",
    "reagents:",
    "  strengths: { NaOH(aq): 5 mol/dm3, NaOH: 1 mol/dm3, HCl(aq): 1 M }",
    "  notKept: [litmus]",
    "ions: { cations: [Cu2+], anions: [Cl-] }",
    "tubes: { test: big }",
    "class: { groups: 0 }",
    "languages: [fr]",
  ].join("\n");
  const places = faultsIn(text).map(({ line, column, what }) => `${line}:${column} ${what}`);
  expect(places).toEqual([
    "1:7 name",
    "2:7 base",
    "3:9 adress",
    "4:17 safety > note",
    "4:31 safety > phone",
    "6:26 reagents > strengths > NaOH(aq)",
    "6:43 reagents > strengths > NaOH",
    "6:63 reagents > strengths > HCl(aq)",
    "7:13 reagents > notKept > 0",
    "8:19 ions > cations > 0",
    "9:16 tubes > test",
    "10:18 class > groups",
    "11:13 languages > 0",
  ]);
});

test("a fault shows its line with a caret, what was expected and what to do", () => {
  expect(faultsIn("practicals:\n  hide: [darkrom]\n").map(wordFault)).toMatchInlineSnapshot(`
    [
      "department/department.yaml:2:10  practicals > hide > 0
      found:  "darkrom", expected one of darkroom, lamp-room-shelf
      to do:  correct this entry, or take it out; docs/department.md tells of each
      2 |   hide: [darkrom]
        |          ^",
    ]
  `);
});

test.each([
  ["practicals: { hide: [darkroom], show: [darkroom] }", "show and hide, expected one of them"],
  ["- a list", "a list, expected a group of entries"],
  ["name: [", /^a list or group that is not closed/],
  ["name: two\n  lines: x", /^a second colon in one entry/],
  ["name: a\nname: b", "a second entry of this name in one group"],
  ['name: "one\\nand two"', "a line break or another control character, expected one line of text"],
])("%j is refused", (text, found) => {
  expect(faultsIn(text)[0].found).toEqual(typeof found === "string" ? found : expect.stringMatching(found));
});

test("the schema for editors is that of the program", () => {
  // After a change to the schema: node_modules/.bin/node scripts/department-schema.ts
  expect(readFileSync(resolve("department/department.schema.json"), "utf8")).toBe(departmentJsonSchema());
});
