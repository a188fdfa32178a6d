/** The questions themselves: what stands in one is enough to answer it, and what is told afterwards is true. */
import { describe, expect, test } from "vitest";
import { ionIdentifier, nameOf, repeated } from "../../../src/build/cartridge/identifiers.ts";
import { questionsOf } from "../../../src/build/cartridge/questions.ts";
import { readXml } from "../../../src/build/cartridge/read-xml.ts";
import { allOf, elementsOf, textOf } from "../../../src/build/cartridge/xml.ts";
import { predictor } from "../../../src/build/predictor.ts";
import { plain } from "../../../src/components/sentence.ts";
import { recordInTable } from "../../../src/engine/bench/record-in-table.ts";
import { phrase, type TableRecord, tabulate, undecided } from "../../../src/engine/index.ts";
import { named } from "./courses.ts";

/** What a student is shown: by sample, by test, what is seen. */
function shownIn(stem: string, sample: string): { sample: string; cell: string; seen: string }[] {
  const [own, others] = allOf(readXml("stem", `<div>${stem}</div>`), "tbody");
  const cells = (body: typeof own | undefined) =>
    body ? elementsOf(body, "tr").map((row) => elementsOf(row, "td").map(textOf)) : [];
  return [
    ...cells(own).map(([cell, , seen]) => ({ sample, cell, seen })),
    ...cells(others).map(([label, cell, , seen]) => ({ sample: label, cell, seen })),
  ];
}

describe.each(["shed-two-tins", "lamp-room-shelf", "etching-room"])("%s", (slug) => {
  const { practical } = named(slug);
  const { questions } = questionsOf(slug, practical);
  const { table } = tabulate(practical, predictor, phrase);
  recordInTable(table, practical.record, phrase);

  test.each(questions.map((one): [string, (typeof questions)[number]] => [one.title, one]))(
    "%s: with just what is shown, every salt that is left holds the right ions",
    (title, question) => {
      const sample = /^Sample (\w+)/.exec(title)?.[1] ?? "";
      const record: TableRecord = {};
      for (const { sample: of, cell, seen } of shownIn(question.stem, sample)) {
        const reading = table.cells.find(({ id }) => id === cell)?.words.findIndex((words) => plain(words) === seen);
        expect(reading).toBeGreaterThanOrEqual(0);
        record[of] = { ...record[of], [cell]: reading as number };
      }
      const left = undecided(table, record)[sample];
      expect(left.length).toBeGreaterThan(0);
      for (const salt of left) {
        const ions = [...table.salts[salt].cations, ...table.salts[salt].anions].map(ionIdentifier);
        expect(ions).toEqual(expect.arrayContaining(question.correct));
      }
      const known = question.choices.map(({ identifier }) => identifier);
      expect(known).toEqual(expect.arrayContaining(question.correct));
      expect(question.choices.flatMap(({ identifier, says }) => (says ? identifier : []))).toEqual(
        known.filter((ion) => !question.correct.includes(ion)),
      );
    },
  );
});

test("the salts are those of the page: two tins, an etching bath with two metals and a fresh one", () => {
  const right = (slug: string) => {
    const { questions } = questionsOf(slug, named(slug).practical);
    return questions.map(({ title, correct }) => `${title} ${correct.join(" ")}`);
  };
  // The frontmatter says salt: FeCl2 + ZnCl2 for M and FeCl3 for N.
  expect(right("etching-room")).toEqual(["Sample M: cation Fe_2p Zn_2p", "Sample N: cation Fe_3p"]);
});

test("what stays open, or offers too few ions to choose from, is not asked, and it is said", () => {
  const { questions, leftOut } = questionsOf("dyers-shelf", named("dyers-shelf").practical);
  expect(questions.map(({ title }) => title)).toEqual(["Sample Y: cation", "Sample Z: cation"]);
  expect(leftOut).toEqual([
    "Sample X: which cation is not asked; the tests leave it open.",
    "Sample X: which anion is not asked; the paper offers 2, and a choice needs 3.",
    "Sample Y: which anion is not asked; the paper offers 2, and a choice needs 3.",
    "Sample Z: which anion is not asked; the paper offers 2, and a choice needs 3.",
  ]);
});

test("identifiers", () => {
  expect(["Zn^2+", "SO4^2-", "NH4+", "Cl-", "S2O3^2-"].map(ionIdentifier)).toEqual([
    "Zn_2p",
    "SO4_2n",
    "NH4p",
    "Cln",
    "S2O3_2n",
  ]);
  expect(nameOf("year-9/shed two")).toBe("year-9.shed_two");
  expect(repeated(["a", "b", "a", "a", "c", "c"])).toEqual(["a", "c"]);
});
