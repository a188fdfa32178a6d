/** Reads what was typed or answered into a practical that is wanted; all that cannot be read comes back in sentences. */
import type { Wanted } from "../../src/build/new-practical/wanted.ts";
import { TESTS, type Typed } from "./options.ts";

/** A part has a letter of its own. */
const MOST_TESTS = 26;
const MINUTES = { atLeast: 20, forTest: 4, most: 300 };

export interface NamedWanted {
  name: string;
  wanted: Wanted;
}

/** @param nextOrder place in the course where nothing is said */
export function wantedOf(typed: Typed, nextOrder: number): NamedWanted | { faults: string[] } {
  const faults: string[] = [];
  const title = typed.title?.trim() ?? "";
  if (title.length < 3) faults.push("--title: found nothing, expected a title of three letters or more.");
  const name = typed.name ?? nameFrom(title);
  if (!/^[a-z0-9][a-z0-9-]*$/.test(name)) {
    faults.push(`--name: found "${name}", expected small letters, digits and hyphens, such as quay-store.`);
  }
  const samples = samplesIn(typed.samples ?? "", faults);
  const tests = listOf(typed.tests ?? "");
  if (tests.length === 0) faults.push(`--tests: found no test, expected some of ${TESTS.join(", ")}.`);
  for (const test of tests)
    if (!TESTS.includes(test)) faults.push(`--tests: found "${test}", expected ${TESTS.join(", ")}.`);
  if (tests.length > MOST_TESTS) faults.push(`--tests: found ${tests.length} tests, expected at most ${MOST_TESTS}.`);
  const given = typed.given ?? "solution";
  if (!isGiven(given)) faults.push(`--given: found "${given}", expected solution, solid or both.`);
  const minutes = whole("--minutes", typed.minutes, faults);
  const order = whole("--order", typed.order, faults);
  if (faults.length > 0 || !isGiven(given)) return { faults };
  const letters = samples.map(({ label }) => label).join(" and ");
  return {
    name,
    wanted: {
      title,
      summary:
        typed.summary?.trim() ||
        `${samples.length === 1 ? `One sample, ${letters}, without a label` : `${samples.length} samples, ${letters}, without labels`}. Its author writes a sentence or two here.`,
      level: typed.level ?? "core",
      minutes: minutes ?? Math.min(MINUTES.most, MINUTES.atLeast + MINUTES.forTest * tests.length * samples.length),
      order: order ?? nextOrder,
      samples,
      given,
      concentration: typed.concentration ?? "0.1 mol/dm3",
      tests,
      cations: ionsIn(typed.cations),
      anions: ionsIn(typed.anions),
    },
  };
}

const isGiven = (text: string): text is Wanted["given"] => ["solution", "solid", "both"].includes(text);

const listOf = (text: string): string[] =>
  text
    .split(/[,;]/)
    .map((one) => one.trim())
    .filter((one) => one !== "");

/** "A tin from the quay store" -> "a-tin-from-the-quay-store". */
const nameFrom = (title: string): string =>
  title
    .normalize("NFD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

function samplesIn(text: string, faults: string[]): Wanted["samples"] {
  const all = listOf(text);
  if (all.length === 0)
    faults.push('--samples: found no sample, expected letters with their salts: "H=ZnCl2, K=CuSO4*5H2O".');
  return all.flatMap((one) => {
    const [, label, salt] = /^([^=\s]+)\s*=\s*(\S.*)$/.exec(one) ?? [];
    if (label !== undefined && salt !== undefined) return [{ label, salt }];
    faults.push(`--samples: found "${one}", expected a letter, = and a salt, such as H=ZnCl2.`);
    return [];
  });
}

const LISTS = ["school", "advanced", "department"];
const ionsIn = (text = "school"): string | string[] => (LISTS.includes(text.trim()) ? text.trim() : listOf(text));

function whole(flag: string, text: string | undefined, faults: string[]): number | undefined {
  if (text === undefined) return undefined;
  if (/^\d{1,3}$/.test(text.trim())) return Number(text);
  faults.push(`${flag}: found "${text}", expected a whole number.`);
  return undefined;
}
