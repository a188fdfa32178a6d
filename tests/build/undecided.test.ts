/** What the tests leave open must be said, no more and no less. */
import { describe, expect, test } from "vitest";
import { wordFault } from "../../src/authoring/faults.ts";
import { readPracticalFile } from "../../src/build/practical-files.ts";
import { walkthrough } from "../../src/build/walkthrough.ts";
import { furtherTests } from "../../src/engine/deduction/further-tests.ts";
import { BROKEN, FILE, faultsIn, placeOf, sound } from "./broken.ts";

describe("what stays undecided", () => {
  const open = BROKEN["tests that leave the answer open"];
  const saying = (text: string, entry: string) => text.replace("record:\n", `undecided:\n  ${entry}\nrecord:\n`);

  test("said openly, passes", () => {
    expect(faultsIn(saying(open, "T: [NH4NO3]")).map(wordFault)).toEqual([]);
  });

  test("said of too little or of too much, fails", () => {
    expect(faultsIn(saying(open, "T: [NH4Cl]"))[0].found).toContain("NH4NO3");
    expect(faultsIn(saying(open, "T: [NH4NO3, (NH4)2SO4]")).map(({ stated }) => stated)).toEqual([
      "(NH4)2SO4 stays possible",
    ]);
  });

  test("claimed where the tests decide, fails at the claim", () => {
    const text = saying(sound, "T: [NH4NO3]");
    const [fault, ...more] = faultsIn(text);
    expect(more).toEqual([]);
    expect(fault).toMatchObject(placeOf(text, "[NH4NO3]"));
    expect(wordFault(fault)).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:54:6  sample T: not as open as stated
        stated: NH4NO3 stays possible
        found:  the record rules it out
        to do:  take it off the list
        54 |   T: [NH4NO3]
           |      ^"
    `);
  });

  test("advice names a test only for a sample on which it is done", () => {
    // Part d is done on S alone: recording it cannot decide T.
    const faults = faultsIn(BROKEN["a deciding test left out of the record"]);
    expect(faults.find(({ what }) => what.startsWith("sample S"))?.advice).toContain("(d does");
    expect(faults.find(({ what }) => what.startsWith("sample T"))?.advice).not.toContain("(d does");
  });

  test("is settled by a standard test, which the walkthrough names", () => {
    const read = readPracticalFile(FILE, saying(open, "T: [NH4NO3]"));
    if ("faults" in read) throw new Error("the page has faults");
    const { table, conclusion, further } = walkthrough(read.practical);
    if (!further) throw new Error("no further test was found");
    const found = furtherTests(
      further.table,
      conclusion.samples.map(({ salts }) => salts),
    );
    const [{ sample, remaining }] = found;
    expect(found).toHaveLength(1);
    expect([sample, remaining.open.map((salt) => table.salts[salt].formula)]).toEqual(["T", ["NH4Cl", "NH4NO3"]]);
    const cell = further.table.cells.find(({ id }) => id === remaining.test?.cell);
    // Silver nitrate: white with a chloride, nothing with a nitrate (tests/reference/qualitative-tables.json, Q084).
    const means = remaining.test?.outcomes.map(({ reading, salts }) => [
      cell?.words[reading],
      salts.map((salt) => table.salts[salt].formula),
    ]);
    expect(cell?.id).toBe("halide(i)");
    expect(means?.sort()).toEqual([
      ["no visible change", ["NH4NO3"]],
      ["white precipitate", ["NH4Cl"]],
    ]);
  });
});
