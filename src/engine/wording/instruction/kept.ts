/** What a filtration keeps, where the sentences after it say so, and what is asked when they speak of the other part. */
import type { WrittenStep } from "../../constants/standard-tests.ts";
import type { ReadPart, UnderstoodStretch } from "./lines.ts";
import { WHICH_KEPT } from "./read-filter.ts";
import type { ReadStretch } from "./stretch.ts";

type Kept = NonNullable<ReadStretch["keeps"]>;

/** Filtrations whose residue is washed, and of which nothing else says what goes on. */
const onlyWashed = new WeakSet<UnderstoodStretch>();

const washes = (step: WrittenStep): boolean => "wash" in step;

/** Brings the last filtration of a part and a stretch that speaks of what it leaves into agreement, or asks. */
export function keep(part: ReadPart | undefined, read: ReadStretch, kept: Kept): void {
  const stretches = part?.tests.flatMap((test) => test.stretches) ?? [];
  const at = stretches.findLastIndex(({ steps }) => steps.some((step) => "filter" in step));
  const filtration = stretches[at];
  if (part === undefined || filtration === undefined) return;
  const before = filtration.steps.find((step) => "filter" in step)?.filter;
  const isWash = read.steps.some(({ step }) => washes(step));
  if (before === "") {
    filtration.questions = filtration.questions.filter((question) => question !== WHICH_KEPT);
    change(part, (step) => (step.filter === "" ? { filter: kept } : step));
    if (isWash) onlyWashed.add(filtration);
    return;
  }
  const followed = stretches.slice(at + 1).flatMap(({ steps }) => steps);
  if (before === kept) {
    if (!isWash) onlyWashed.delete(filtration);
  } else if (isWash) {
    read.steps = [];
    read.assumed.push(WASHED_ASIDE);
  } else if (onlyWashed.has(filtration) && followed.every(washes)) {
    onlyWashed.delete(filtration);
    change(part, (step) => (step === lastFilter(part) ? { filter: kept } : step));
    for (const one of stretches.slice(at + 1)) if (one.steps.some(washes)) one.assumed.push(WASHED_ASIDE);
    for (const test of part.tests) dropWashes(test, followed);
  } else read.questions.push(otherKept(kept));
}

const WASHED_ASIDE = "the filtrate goes on, so the residue is washed aside";
const otherKept = (kept: Kept) =>
  `This is done with the ${kept}, and the ${kept === "filtrate" ? "residue" : "filtrate"} was kept: enter the steps for it in a part of its own.`;

const lastFilter = ({ tests }: ReadPart): WrittenStep | undefined =>
  tests.flatMap(({ stretches }) => stretches.flatMap(({ steps }) => steps)).findLast((step) => "filter" in step);

/** The same steps stand in a test and in its stretches. */
function change({ tests }: ReadPart, changed: (step: WrittenStep) => WrittenStep): void {
  const known = new Map<WrittenStep, WrittenStep>();
  const once = (step: WrittenStep): WrittenStep => {
    const next = known.get(step) ?? changed(step);
    known.set(step, next);
    return next;
  };
  // All are looked at before one is replaced.
  const all = tests.map((test) => ({
    steps: test.steps.map(once),
    stretches: test.stretches.map(({ steps }) => steps.map(once)),
  }));
  for (const [t, test] of tests.entries()) {
    test.steps = all[t].steps;
    for (const [s, stretch] of test.stretches.entries()) stretch.steps = all[t].stretches[s];
  }
}

function dropWashes(test: ReadPart["tests"][number], followed: readonly WrittenStep[]): void {
  const stays = (step: WrittenStep) => !(washes(step) && followed.includes(step));
  test.steps = test.steps.filter(stays);
  for (const stretch of test.stretches) stretch.steps = stretch.steps.filter(stays);
}
