/** Reads a written paper as far as it can be: what is unfinished is told with its place and left out, so that the rest is worked with. */
import { type PracticalFault, readPaper } from "../../engine/practical/faults.ts";
import type { Paper } from "../../engine/practical.ts";

export interface ReadAsFar {
  /** Every fault of the paper as it was written. */
  faults: PracticalFault[];
  /** What could be read; absent where nothing can be worked out yet. */
  paper?: Paper;
  /** Places of the tests that were kept, as [part, test] of the written paper, in the order of the record. */
  lines: [part: number, test: number][];
}

type Path = readonly (string | number)[];

/** How often what is left may turn out to refer to what was left out. */
const ROUNDS = 8;

/** @param alsoWrong faults that only the whole paper shows, such as a step that cannot be done; asked once the paper reads well */
export function readAsFar(input: unknown, alsoWrong: (paper: Paper) => PracticalFault[]): ReadAsFar {
  let rest = structuredClone(input);
  const places = placesIn(rest);
  const told: PracticalFault[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const read = readPaper(rest);
    const faults = "faults" in read ? read.faults : alsoWrong(read.paper);
    // After the first round places have moved; those faults follow from what was left out.
    if (round === 0 || told.length === 0) told.push(...faults);
    if (faults.length === 0 && "paper" in read) return { faults: told, paper: read.paper, lines: places.lines() };
    const less = withoutFaulty(rest, faults, places);
    if (less === undefined) return { faults: told, lines: [] };
    rest = less;
  }
  return { faults: told, lines: [] };
}

/** Where the parts and tests that are left stood in the beginning. */
function placesIn(input: unknown) {
  let parts = listAt(input, ["parts"]).map((part, p) => ({
    part: p,
    tests: listAt(part, ["tests"]).map((_, t) => t),
  }));
  return {
    dropPart(p: number) {
      parts = parts.filter((_, index) => index !== p);
    },
    /** A test and those after it: what is in the tube is not known any more. */
    dropFrom(p: number, t: number) {
      parts = parts.map((one, index) => (index === p ? { ...one, tests: one.tests.slice(0, t) } : one));
    },
    lines: () => parts.flatMap(({ part, tests }) => tests.map((test): [number, number] => [part, test])),
  };
}

type Places = ReturnType<typeof placesIn>;

function listAt(input: unknown, path: Path): unknown[] {
  let at = input;
  for (const key of path) at = typeof at === "object" && at !== null ? (at as Record<string, unknown>)[key] : undefined;
  return Array.isArray(at) ? at : [];
}

/** The paper without what the faults speak about; undefined where it cannot do without. */
function withoutFaulty(input: unknown, faults: readonly PracticalFault[], places: Places): unknown {
  const paper = structuredClone(input) as Record<string, unknown>;
  const drop = { samples: new Set<number>(), parts: new Set<number>(), from: new Map<number, number>() };
  const looks = new Set<object>();
  for (const { path } of faults) {
    const [first, second, third, fourth] = path;
    const look = lookAt(paper, path);
    if (first === "title" || first === "minutes") delete paper[first];
    else if (first === "samples" && typeof second === "number") drop.samples.add(second);
    else if (first === "record" && typeof second === "string") dropSeen(paper, second, third);
    else if (first === "paper" && typeof second === "string" && second !== "cations" && second !== "anions") {
      dropStatement(paper, second, third);
    } else if (look) looks.add(look);
    else if (first === "parts" && typeof second === "number") {
      if (third === "tests" && typeof fourth === "number" && fourth > 0) {
        drop.from.set(second, Math.min(fourth, drop.from.get(second) ?? fourth));
      } else drop.parts.add(second);
    } else return undefined;
  }
  const parts = listAt(paper, ["parts"]);
  if (looks.size > 0) {
    for (const test of parts.flatMap((part) => listAt(part, ["tests"])) as { steps?: object[] }[]) {
      if (Array.isArray(test.steps)) test.steps = test.steps.filter((step) => !looks.has(step));
    }
  }
  for (const [p, t] of drop.from) {
    if (drop.parts.has(p)) continue;
    const part = parts[p] as { tests: unknown[] };
    part.tests = part.tests.slice(0, t);
    places.dropFrom(p, t);
  }
  for (const p of [...drop.parts].sort((a, b) => b - a)) places.dropPart(p);
  paper.parts = parts.filter((_, p) => !drop.parts.has(p));
  paper.samples = listAt(paper, ["samples"]).filter((_, s) => !drop.samples.has(s));
  const left = listAt(paper, ["samples"]).length > 0;
  return left ? paper : undefined;
}

/** Steps that only look: without one the rest of its line is still done, and what is in the tube is the same. */
const LOOKS = ["testGas", "leadThrough", "indicator"];

/** The step a fault speaks about, where it only looks and is not the whole of its line. */
function lookAt(paper: unknown, [first, p, second, t, third, s]: Path): object | undefined {
  if (first !== "parts" || second !== "tests" || third !== "steps" || typeof s !== "number") return undefined;
  const steps = listAt(paper, ["parts", p, "tests", t, "steps"]);
  const step = steps[s];
  const isLook = typeof step === "object" && step !== null && LOOKS.some((verb) => verb in step);
  return isLook && steps.length > 1 ? (step as object) : undefined;
}

function dropStatement(paper: Record<string, unknown>, kind: string, index: unknown): void {
  const says = paper.paper as Record<string, unknown>;
  const list = says[kind];
  if (typeof index === "number" && Array.isArray(list)) says[kind] = list.filter((_, at) => at !== index);
  else delete says[kind];
}

function dropSeen(paper: Record<string, unknown>, letter: string, id: unknown): void {
  const record = paper.record as Record<string, Record<string, unknown>>;
  if (typeof id === "string" && record[letter]) delete record[letter][id];
  else delete record[letter];
}
