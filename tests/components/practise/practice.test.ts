/** What a practice draws, shows and marks, for every practical of the course: behaviour from the specification. */
import { resolve } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { practicalPaths, readPage, readPracticalFile } from "../../../src/build/practical-files.ts";
import { type Practice, practiceOf } from "../../../src/build/practice.ts";
import { predictor } from "../../../src/build/predictor.ts";
import type { Session } from "../../../src/components/practise/kept.ts";
import { begun, clearSession, keepSession, OPEN, readSession } from "../../../src/components/practise/kept.ts";
import { colourOfReagent, wordSight } from "../../../src/components/practise/look-words.ts";
import type { PracticeTest } from "../../../src/components/practise/practice-table.ts";
import { reckon } from "../../../src/components/practise/reckoning.ts";
import { readSeed } from "../../../src/components/practise/seed.ts";
import { tubeAfter, tubeBefore } from "../../../src/components/practise/tube-state.ts";
import { trueRecord, unknownsOf } from "../../../src/components/practise/unknowns.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { DEFAULT_TUBES } from "../../../src/engine/constants/glassware.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { proofOfIon } from "../../../src/engine/deduction/proof.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { cellsOf, type Practical } from "../../../src/engine/practical.ts";
import { askedOf } from "../../../src/engine/wording/asked-of.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";

const ROOT = resolve(import.meta.dirname, "../../..");

const testsOf = ({ parts }: Practical): PracticeTest[] =>
  cellsOf(parts).map(({ id, part, test, index }) => ({
    id,
    part: part.title,
    fresh: index === 0,
    steps: [],
    brief: "",
    asked: askedOf(test.steps),
    cautions: [],
  }));

describe.each(practicalPaths(ROOT))("%s", (path) => {
  const file = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in file) throw new Error(`${path} cannot be read`);
  const { practical } = file;
  const tests = testsOf(practical);
  let practice: Practice;
  beforeAll(() => {
    const { table } = tabulate(practical, predictor, phrase);
    practice = practiceOf(practical, planBench(practical, table, DEFAULT_TUBES));
  }, 240_000);
  const seeds = Array.from({ length: 40 }, (_, n) => 1000 + 37 * n);

  test("draws sets that the tests decide, where they decide any", () => {
    const decides = practice.standings.some((standing) => standing !== "undecided");
    expect(practice.draws.length).toBeGreaterThan(0);
    for (const seed of seeds) {
      const unknowns = unknownsOf(practice, seed);
      const { assignments, samples } = deduce(practice.table, trueRecord(practice.table, unknowns));
      if (decides) expect(assignments, `set ${seed}`).toBe(1);
      expect(samples.every(({ salts }, s) => salts.includes(unknowns[s].salt))).toBe(true);
    }
  });

  test("draws no salt that a test is unsafe on: lead in a flame, lead(II) nitrate or what may explode or dust heated dry", () => {
    const holds = ({ cations, anions }: { cations: string[]; anions: string[] }, ...ions: string[]) =>
      ions.every((ion) => cations.includes(ion) || anions.includes(ion));
    for (const { part, test } of cellsOf(practical.parts)) {
      const [flame, heated] = ["flame", "heat solid"].map((kind) => test.steps.some((step) => step.do === kind));
      practice.table.samples.forEach(({ label }, s) => {
        if (!(part.samples?.includes(label) ?? true)) return;
        for (const draw of practice.draws) {
          const salt = practice.table.salts[draw[s]];
          if (flame) expect(holds(salt, "Pb^2+"), `${label} ${salt.formula}`).toBe(false);
          if (!heated) continue;
          expect(holds(salt, "NO3-", "Pb^2+") || holds(salt, "NH4+", "NO3-"), `${label} ${salt.formula}`).toBe(false);
          for (const ion of ["Cr2O7^2-", "CrO4^2-", "Co^2+", "Ni^2+"]) expect(holds(salt, ion)).toBe(false);
        }
      });
    }
  });

  test("shows every tube in words, none of which is the wording that is credited", () => {
    for (const seed of seeds.slice(0, 12)) {
      for (const of of unknownsOf(practice, seed)) {
        of.seen.forEach((seen, c) => {
          if (!seen) return;
          const before = tubeBefore(practice, tests, of, c);
          const reagent = colourOfReagent(practice.table.cells[c].readings);
          const said = wordSight(seen.shown, before, tubeAfter(practice, tests, of, c), tests[c].asked, reagent).join(
            " ",
          );
          expect(said).not.toBe("");
          expect(said).not.toMatch(/precipitate|effervescence|soluble|colourless|no visible change|undefined/);
          expect(said).not.toContain(practice.table.cells[c].words[seen.reading]);
        });
      }
    }
  });

  /** A reader who writes the model wording with the gas named, and concludes with the fewest tests that prove each ion. */
  function perfect(seed: number): Session {
    const unknowns = unknownsOf(practice, seed);
    const { table } = practice;
    const truth = trueRecord(table, unknowns);
    const session = { ...begun(seed), at: tests.length };
    tests.forEach(({ id }, c) => {
      session.lines[id] = Object.fromEntries(
        unknowns.flatMap(({ sample, seen }) => {
          const one = seen[c];
          if (!one) return [];
          const gas = one.shown.gas || undefined;
          const named = gas?.evidence.startsWith("limewater") ? `, ${gas.formula}` : "";
          return [[sample, table.cells[c].words[one.reading] + named]];
        }),
      );
    });
    unknowns.forEach(({ sample, salt }, s) => {
      const answer = (kind: "cations" | "anions") => {
        const proofs = table.salts[salt][kind].map((ion) => proofOfIon(table, truth, s, kind, ion));
        if (proofs.some((proof) => proof === undefined)) return { ions: [OPEN], because: [] };
        const places = proofs.flatMap((proof) => proof?.places ?? []);
        const own = [...new Set(places.filter((place) => place.sample === sample).map(({ cell }) => cell))];
        // The fewest over all samples may spare a line of another sample; the mark takes the others' lines as given.
        const proves = (cells: string[]) => {
          const row = Object.fromEntries(cells.map((cell) => [cell, truth[sample][cell]]));
          return table.salts[salt][kind].every((ion) => proofOfIon(table, { ...truth, [sample]: row }, s, kind, ion));
        };
        const because = own.reduce((kept, cell) => {
          const rest = kept.filter((one) => one !== cell);
          return proves(rest) ? rest : kept;
        }, own);
        return { ions: [...table.salts[salt][kind]], because };
      };
      session.answers[sample] = { cations: answer("cations"), anions: answer("anions") };
    });
    return session;
  }

  test("gives every mark to who writes the model wording and proves each ion", () => {
    for (const seed of seeds.slice(0, 6)) {
      const of = reckon(practice, tests, unknownsOf(practice, seed), perfect(seed), {});
      const lost = [...of.lines.flatMap(({ marks }) => marks), ...of.conclusions].filter(({ earned }) => !earned);
      expect(lost, `set ${seed}`).toEqual([]);
      expect(of.misread).toEqual([]);
      expect(of.earned).toBe(of.of);
    }
  });

  test("gives no mark to who writes nothing, and says what would earn one", () => {
    const unknowns = unknownsOf(practice, 1234);
    const of = reckon(practice, tests, unknowns, { ...begun(1234), at: tests.length }, {});
    expect(of.lines.flatMap(({ marks }) => marks).every(({ earned, reason }) => !earned && reason)).toBe(true);
    expect(of.right).toBe(false);
    expect(of.lost.length).toBeGreaterThan(0);
    expect(of.leads).toHaveLength(unknowns.length);
  });

  test("names the line that is misread", () => {
    const session = perfect(1000);
    const [first] = unknownsOf(practice, 1000);
    const c = first.seen.findIndex((seen) => seen !== undefined);
    session.lines[tests[c].id][first.sample] = "black precipitate, purple solution";
    const { misread } = reckon(practice, tests, unknownsOf(practice, 1000), session, {});
    expect(misread.map(({ cell, sample }) => `${sample} ${cell}`)).toEqual([`${first.sample} ${tests[c].id}`]);
  });
});

describe("a number in an address", () => {
  test.each<[string, number]>([
    ["1234", 1234],
    [" 7 ", 7],
    ["999999", 999_999],
  ])("%s", (text, seed) => expect(readSeed(text)).toBe(seed));
  test.each(["", "0", "-3", "1e3", "12.5", "1000000", "<script>alert(1)</script>", "9".repeat(500), "١٢"])(
    "%s is refused in a sentence",
    (text) => expect(readSeed(text)).toMatch(/expected a whole number from 1 to 999999\.$/),
  );
});

describe("what is kept in the browser", () => {
  const store = () => {
    const held = new Map<string, string>();
    return {
      held,
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, value: string) => void held.set(key, value),
      removeItem: (key: string) => void held.delete(key),
    };
  };
  const session: Session = { ...begun(1234), at: 2, stage: "seen", lines: { "a(i)": { R: "white ppt" } } };

  test("comes back as it was, each practical by itself, until it is cleared", () => {
    const own = store();
    expect(keepSession("lamp-room-shelf", session, own)).toBe(true);
    expect(readSession("lamp-room-shelf", 8, own)).toEqual(session);
    expect(readSession("salt-works", 8, own)).toBeUndefined();
    clearSession("lamp-room-shelf", own);
    expect(readSession("lamp-room-shelf", 8, own)).toBeUndefined();
  });

  test.each<[string, unknown]>([
    ["text that is no JSON", "{"],
    ["another version", JSON.stringify({ ...session, version: 2 })],
    ["a place past the last test", JSON.stringify({ ...session, at: 99 })],
    ["a number that is none", JSON.stringify({ ...session, seed: 0 })],
    ["something besides", JSON.stringify({ ...session, more: 1 })],
    ["a line that is too long", JSON.stringify({ ...session, lines: { "a(i)": { R: "x".repeat(301) } } })],
    ["a list", "[]"],
    ["null", "null"],
  ])("%s is read as none", (_, text) => {
    const own = store();
    own.held.set("ionwright.practice.lamp-room-shelf", String(text));
    expect(readSession("lamp-room-shelf", 8, own)).toBeUndefined();
  });

  test("a browser that refuses its storage stops nothing", () => {
    const refuse = (): never => {
      throw new DOMException("denied", "SecurityError");
    };
    const refusing = { getItem: refuse, setItem: refuse, removeItem: refuse };
    expect(readSession("x", 8, refusing)).toBeUndefined();
    expect(keepSession("x", session, refusing)).toBe(false);
    expect(() => clearSession("x", refusing)).not.toThrow();
  });
});

describe("a coloured reagent", () => {
  const before = { cm3: 1, liquid: "colourless" } as const;
  const STAYS = [{ none: true, stays: "brown" } as const, { solution: "colourless" } as const];
  test("that loses its colour is told to have lost it", () => {
    const said = wordSight(
      { solution: "colourless" },
      before,
      { cm3: 1.25, liquid: "colourless" },
      {},
      colourOfReagent(STAYS),
    );
    expect(said).toEqual(["The brown of the reagent is gone: the liquid is without any colour."]);
  });
  test("and a liquid to which nothing happened is as it was", () =>
    expect(wordSight({ none: true }, before, { cm3: 1.25, liquid: "colourless" }, {}, undefined)).toEqual([
      "The liquid is as it was, without any colour.",
    ]));
  test("is not spoken of where a precipitate dissolves in a colourless one", () =>
    expect(
      wordSight(
        { precipitate: { colour: "white", amount: "plain" }, fate: "dissolves", solution: "colourless" },
        before,
        { cm3: 2, liquid: "colourless" },
        {},
      ).join(" "),
    ).not.toMatch(/gone: the liquid/));
});
