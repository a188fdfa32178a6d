/** What the tests leave open must be said, no more and no less. */
import { describe, expect, test } from "vitest";
import { wordFault } from "../../src/build/faults.ts";
import { BROKEN, faultsIn, placeOf, sound } from "./broken.ts";

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
});
