/** The build check finds what is wrong, says where, what was stated, what the engine found and what to do; sound practicals pass. */
import { describe, expect, test } from "vitest";
import { wordFault } from "../../src/authoring/faults.ts";
import { practicalPaths, readPage } from "../../src/build/practical-files.ts";
import { BROKEN, FILE, faultsIn, placeOf, ROOT } from "./broken.ts";

type Name = keyof typeof BROKEN;
const told = (name: Name) => faultsIn(BROKEN[name]).map(wordFault).join("\n");

test.each(practicalPaths(ROOT))("%s passes", (path) => {
  expect(faultsIn(readPage(ROOT, path), path).map(wordFault)).toEqual([]);
});

/** The piece of text each fault must point at: where its entry's value begins. */
const PLACES: [Name, string][] = [
  [
    "an observation the engine contradicts",
    "{ fate: dissolves }\n    c(i): no visible change\n    c(ii): no visible change\n    d:",
  ],
  ["an answer the paper does not offer", "NaCl }"],
  ["an answer that is no such solution", "PbCl2 }"],
  ["an answer that is no simple salt", "NaHSO4"],
  ["a number of ions the salts break", "3 }\n  share"],
  ["a shared ion the salts do not share", "{ samples: [R, T]"],
  ["a difference the salts do not keep", "{ samples: [R, S, T]"],
  ["tests that leave the answer open", "{ label: T,"],
  ["a deciding test left out of the record", "{ label: S,"],
  ["an unknown reagent", "NaOH(conc)"],
  ["a bad unit", "0.1 M,"],
  ["an observation of a test not predicted", "{ solution: blue }"],
  ["a solution weighed like a solid", "0.2 g"],
  ["an observation of a test that is not done", "{ precipitate: white }\n    a(i): no visible change"],
  ["an entry written twice", "a(i): no visible change\n    a(ii): { fate: dissolves"],
];

test.each(PLACES)("%s: file, line and column", (name, piece) => {
  const [fault] = faultsIn(BROKEN[name]);
  const { line, column } = placeOf(BROKEN[name], piece);
  expect(fault).toMatchObject({ file: FILE, line, column });
  expect(fault.excerpt).toBe(BROKEN[name].split("\n")[line - 1]);
});

test("the place is the same with the line ends of another system", () => {
  const name = "an unknown reagent";
  const [unix] = faultsIn(BROKEN[name]);
  const [other] = faultsIn(BROKEN[name].replaceAll("\n", "\r\n"));
  expect(other).toEqual(unix);
});

test("a list of ions with too much to see in one test: at the test, with what to do", () => {
  expect(told("a list of ions with too much to see in one test")).toMatchInlineSnapshot(`
    "src/content/practicals/lamp-room-shelf.mdx:21:9  test a: too much to tell apart
      found:  more than 31 different sights on line a of the record
      to do:  offer fewer ions under paper, or give some steps of this test a test of their own
      21 |       - steps:
         |         ^"
  `);
});

test("an observation that leaves out what stays in the tube, and so is another salt's: at the line, with what to do", () => {
  // Without acid the iron(III) partly falls out as its red-brown hydroxide, and the tube of thiocyanate holds that as well.
  const path = "src/content/practicals/etching-room.mdx";
  const page = readPage(ROOT, path).replace(/(label: d\n[\s\S]*?){ add: H2SO4\(aq\), volume: 1 cm3 }, /, "$1");
  expect(faultsIn(page, path).map(wordFault)).toEqual([
    expect.stringMatching(/record M: it does not lead to the answer[\s\S]*what is written at d\(ii\) is the whole/),
  ]);
});

describe("in words", () => {
  test("an observation the engine contradicts", () => {
    expect(told("an observation the engine contradicts")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:67:12  record S b(ii)
        stated: precipitate dissolves
        found:  the engine finds precipitate remains for AlCl3
        to do:  correct the observation, the steps or the salt
        67 |     b(ii): { fate: dissolves }
           |            ^"
    `);
  });
  test("an answer the paper does not offer", () => {
    expect(told("an answer the paper does not offer")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:10:68  sample T: the answer
        stated: NaCl
        found:  Na+ not among the ions the paper offers
        to do:  add the ion to the paper's list, or change the salt
        10 |   - { label: T, given: solution, concentration: 0.1 mol/dm3, salt: NaCl }
           |                                                                    ^"
    `);
  });
  test("an answer that is no such solution", () => {
    expect(told("an answer that is no such solution")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:9:68  sample S: the answer
        stated: PbCl2 as solution
        found:  lead(II) chloride does not dissolve to 0.1 mol/dm3: 17 g/dm3 stays solid
        to do:  choose another salt, concentration or form
        9 |   - { label: S, given: solution, concentration: 0.1 mol/dm3, salt: PbCl2 }
          |                                                                    ^"
    `);
  });
  test("an answer that is no simple salt", () => {
    const [fault] = faultsIn(BROKEN["an answer that is no simple salt"]);
    expect(wordFault(fault)).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:8:68  sample R: the answer
        stated: NaHSO4
        found:  not a salt of one cation and one anion the engine knows, nor such salts joined by +
        to do:  name such a salt, for example ZnSO4, or NaCl + KNO3
        8 |   - { label: R, given: solution, concentration: 0.1 mol/dm3, salt: NaHSO4 }
          |                                                                    ^"
    `);
  });
  test("a number of ions the salts break", () => {
    expect(told("a number of ions the salts break")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:14:32  the paper's statement
        stated: 3 different anions in all
        found:  2 in the author's salts: SO4^2-, Cl-
        to do:  correct the number or the salts
        14 |   inAll: { cations: 3, anions: 3 }
           |                                ^"
    `);
  });
  test("a shared ion the salts do not share", () => {
    expect(told("a shared ion the salts do not share")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:16:7  the paper's statement
        stated: R and T hold the same anion
        found:  SO4^2-, Cl- in the author's salts
        to do:  correct the statement or the salts
        16 |     - { samples: [R, T], ion: anion }
           |       ^"
    `);
  });
  test("a difference the salts do not keep", () => {
    expect(told("a difference the salts do not keep")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:16:7  the paper's statement
        stated: no two of R, S, T hold the same anion
        found:  SO4^2-, Cl-, Cl- in the author's salts
        to do:  correct the statement or the salts
        16 |     - { samples: [R, S, T], ion: anion }
           |       ^"
    `);
  });
  test("tests that leave the answer open", () => {
    expect(told("tests that leave the answer open")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:10:5  sample T: the tests do not decide it
        stated: NH4Cl is the answer
        found:  NH4NO3 would give the same record
        to do:  add a test that tells them apart, or list them under undecided
        10 |   - { label: T, given: solution, concentration: 0.1 mol/dm3, salt: NH4Cl }
           |     ^"
    `);
  });
  test("a deciding test left out of the record", () => {
    expect(told("a deciding test left out of the record")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:9:5  sample S: the tests do not decide it
        stated: AlCl3 is the answer
        found:  Al(NO3)3, Pb(NO3)2 would give the same record
        to do:  add a test that tells them apart (d does, but the record leaves it out), or list them under undecided
        9 |   - { label: S, given: solution, concentration: 0.1 mol/dm3, salt: AlCl3 }
          |     ^
      src/content/practicals/lamp-room-shelf.mdx:10:5  sample T: the tests do not decide it
        stated: NH4Cl is the answer
        found:  NH4NO3 would give the same record
        to do:  add a test that tells them apart, or list them under undecided
        10 |   - { label: T, given: solution, concentration: 0.1 mol/dm3, salt: NH4Cl }
           |     ^"
    `);
  });
  test("an unknown reagent", () => {
    const [fault] = faultsIn(BROKEN["an unknown reagent"]);
    const { advice, ...rest } = fault;
    expect(rest).toMatchInlineSnapshot(`
      {
        "column": 20,
        "excerpt": "          - { add: NaOH(conc), drops: 5 }",
        "file": "src/content/practicals/lamp-room-shelf.mdx",
        "found": "no reagent the engine has constants for",
        "line": 23,
        "stated": "NaOH(conc)",
        "what": "part a: unknown reagent",
      }
    `);
    expect(advice).toMatch(/^use one of NaOH\(aq\), .*, or add its constants with their sources/);
  });
  test("a bad unit", () => {
    expect(told("a bad unit")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:8:49  samples > 0 > concentration
        found:  the unit "M" in "0.1 M", expected a concentration such as "0.1 mol/dm3"
        to do:  correct this entry; the guide for course authors is DEVELOPERS.md
        8 |   - { label: R, given: solution, concentration: 0.1 M, salt: ZnSO4 }
          |                                                 ^"
    `);
  });
  test("a bracket left open", () => {
    expect(told("a bracket left open")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:13:3  the frontmatter is not YAML
        found:  a list or group that is not closed, or a line that stands too far out
        to do:  close every bracket, brace and quotation mark on the line it belongs to
        13 |   anions: [Cl-, NO3-, SO4^2-, CO3^2-]
           |   ^"
    `);
  });
  test("an entry written twice", () => {
    expect(told("an entry written twice")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:56:5  the frontmatter is not YAML
        found:  a second entry of this name in one group
        to do:  keep one of them
        56 |     a(i): no visible change
           |     ^"
    `);
  });
  test("an observation of a test not predicted", () => {
    expect(told("an observation of a test not predicted")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:62:8  record R e
        stated: solution turns blue
        found:  the engine does not predict this test or one before it in this tube, so nobody could check it
        to do:  leave this observation out
        62 |     e: { solution: blue }
           |        ^"
    `);
  });
  test("a solution weighed like a solid", () => {
    expect(told("a solution weighed like a solid")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:22:21  part a: the sample cannot be taken so
        stated: 0.2 g
        found:  R, S, T given as a solution
        to do:  take a volume such as 1 cm3, or name the samples of this part
        22 |           - { take: 0.2 g }
           |                     ^"
    `);
  });
  test("an observation of a test that is not done", () => {
    expect(told("an observation of a test that is not done")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:72:8  record > T > d
        found:  an observation of T, but part d is not done on it
        to do:  correct this entry; the guide for course authors is DEVELOPERS.md
        72 |     d: { precipitate: white }
           |        ^"
    `);
  });
  test("no frontmatter", () => {
    expect(told("no frontmatter")).toMatchInlineSnapshot(`
      "src/content/practicals/lamp-room-shelf.mdx:1:1  no frontmatter
        found:  a page that does not begin with ---
        to do:  begin with a line ---, then the practical, then a line ---"
    `);
  });
});
