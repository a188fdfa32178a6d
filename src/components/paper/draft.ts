/**
 * A paper while it is being entered: what stands in the fields of the form, finished or not. It is turned into the form an author writes
 * (`written`), which the one schema reads; what the schema says of `samples[0].concentration` belongs to the field of that name.
 */
import { typedFigures } from "#words/language.ts";
import { part as partTitle, USUAL_STRENGTH } from "#words/paper-form.ts";
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";
import { LONGEST } from "../../engine/practical/bounds.ts";
import { ROMAN } from "../../engine/practical/cells.ts";
import type { Observation } from "../../engine/practical.ts";

export interface DraftSample {
  label: string;
  given: "solid" | "solution" | "both";
  concentration: string;
  cations: number;
  anions: number;
}

export interface DraftTest {
  /** As the paper words it; may be empty. */
  says: string;
  steps: WrittenStep[];
  /** What has been recorded, by sample. */
  seen: Record<string, Observation>;
}

export interface DraftPart {
  label: string;
  title: string;
  /** Letters; none stands for all samples. */
  samples: string[];
  from: "" | "solid" | "solution";
  tests: DraftTest[];
}

export type IonChoice = "school" | "advanced" | string[];
export type KindOfIon = "cation" | "anion";

/** A statement on some samples. `count` is what stands in its field. */
export type DraftStatement =
  | { says: "share" | "differ"; samples: string[]; ion: KindOfIon }
  | { says: "same"; samples: string[] }
  | { says: "contains"; samples: string[]; ion: string; count: string };

export interface Draft {
  title: string;
  minutes: string;
  samples: DraftSample[];
  cations: IonChoice;
  anions: IonChoice;
  inAll: { cations: string; anions: string };
  statements: DraftStatement[];
  parts: DraftPart[];
}

export const emptySample = (label: string): DraftSample => ({
  label,
  given: "solution",
  concentration: USUAL_STRENGTH,
  cations: 1,
  anions: 1,
});
export const emptyTest = (steps: WrittenStep[] = []): DraftTest => ({ says: "", steps, seen: {} });
export const emptyPart = (label: string): DraftPart => ({
  label,
  title: "",
  samples: [],
  from: "",
  tests: [emptyTest([{ take: "1 cm3" }])],
});
export const emptyDraft = (): Draft => ({
  title: "",
  minutes: "",
  samples: [emptySample("P")],
  cations: "school",
  anions: "school",
  inAll: { cations: "", anions: "" },
  statements: [],
  parts: [],
});

/** The draft with another letter for a sample, also where its parts and statements name it alone. */
export function renamed(draft: Draft, index: number, label: string): Draft {
  const old = draft.samples[index].label;
  const samples = draft.samples.map((one, at) => (at === index ? { ...one, label } : one));
  // While two share a letter, nobody can tell which of them is named.
  if (draft.samples.some((one, at) => at !== index && (one.label === old || one.label === label)))
    return { ...draft, samples };
  const named = <T extends { samples: string[] }>(one: T): T => ({
    ...one,
    samples: one.samples.map((letter) => (letter === old ? label : letter)),
  });
  return { ...draft, samples, parts: draft.parts.map(named), statements: draft.statements.map(named) };
}

/** Nothing stands in it but the sample that an empty form begins with. */
export const isFresh = ({ samples, statements, parts }: Draft): boolean =>
  parts.length === 0 && statements.length === 0 && JSON.stringify(samples) === JSON.stringify(emptyDraft().samples);

/** The first letter of `of` that is not taken. */
export const freeLetter = (of: string, taken: readonly string[]): string =>
  [...of].find((letter) => !taken.includes(letter)) ?? "";

/** A whole number where the field holds one; else what was typed, for the schema to speak about. */
const figure = (text: string): number | string => (/^\d{1,4}$/.test(text.trim()) ? Number(text) : text);
/** A step with its amounts as the engine reads them. */
const inPoints = (step: WrittenStep): WrittenStep =>
  Object.fromEntries(
    Object.entries(step).map(([key, entry]) => [key, typeof entry === "string" ? typedFigures(entry) : entry]),
  );
const filled = (text: string): boolean => text.trim() !== "";

/** The lines of the record, each with its place in the draft. */
export function linesOf(parts: readonly DraftPart[]): { id: string; part: number; test: number }[] {
  return parts.flatMap(({ label, tests }, part) =>
    tests.map((_, test) => ({ id: tests.length === 1 ? label : `${label}(${ROMAN[test] ?? test + 1})`, part, test })),
  );
}

/** Words of the paper as long as a test may hold them; a cut is seen by its dots. */
export const fitting = (says: string): string =>
  says.length <= LONGEST.says ? says : `${says.slice(0, LONGEST.says - 1)}…`;

/** Letters that two parts share, as happens while one is being typed. */
export const sharedLetters = (parts: readonly DraftPart[]): string[] => {
  const letters = parts.map(({ label }) => label);
  return [...new Set(letters.filter((letter, index) => letters.indexOf(letter) !== index))];
};

/**
 * The draft as the browser keeps it and a link carries it: as an author writes it, but each observation stands with its test, for two parts
 * may share a letter for a while, and then a record by letters holds only one of them.
 */
export function stored(draft: Draft): Record<string, unknown> {
  const { record: _, ...paper } = written(draft);
  const parts = (paper.parts as { tests: object[] }[]).map((part, p) => ({
    ...part,
    tests: part.tests.map((test, t) => {
      const { seen } = draft.parts[p].tests[t];
      return Object.keys(seen).length > 0 ? { ...test, seen } : test;
    }),
  }));
  return { ...paper, parts };
}

/** The draft as an author writes it: what the schema reads and a file holds. */
export function written(draft: Draft): Record<string, unknown> {
  const { title, minutes, samples, cations, anions, inAll, statements, parts } = draft;
  const counts = Object.fromEntries(
    (["cations", "anions"] as const).flatMap((kind) => (filled(inAll[kind]) ? [[kind, figure(inAll[kind])]] : [])),
  );
  const of = (kind: DraftStatement["says"]) => statements.filter(({ says }) => says === kind);
  const list = (key: string, entries: unknown[]) => (entries.length > 0 ? { [key]: entries } : {});
  const record: Record<string, Record<string, Observation>> = {};
  for (const { id, part, test } of linesOf(parts)) {
    for (const [letter, seen] of Object.entries(parts[part].tests[test].seen)) {
      const row = Object.hasOwn(record, letter) ? record[letter] : {};
      row[id] = seen;
      record[letter] = row;
    }
  }
  return {
    ...(filled(title) && { title }),
    ...(filled(minutes) && { minutes: figure(minutes) }),
    samples: samples.map(({ label, given, concentration, cations: c, anions: a }) => ({
      label,
      given,
      ...(given !== "solid" && filled(concentration) && { concentration: typedFigures(concentration) }),
      ...((c !== 1 || a !== 1) && { holds: { cations: c, anions: a } }),
    })),
    paper: {
      cations,
      anions,
      ...(Object.keys(counts).length > 0 && { inAll: counts }),
      ...list(
        "share",
        of("share").map(({ says: _, ...rest }) => rest),
      ),
      ...list(
        "differ",
        of("differ").map(({ says: _, ...rest }) => rest),
      ),
      ...list(
        "same",
        of("same").map(({ samples: letters }) => letters),
      ),
      ...list(
        "contains",
        statements.flatMap((one) =>
          one.says === "contains"
            ? [
                {
                  ion: one.ion,
                  ...(one.samples.length > 0 && { samples: one.samples }),
                  ...(filled(one.count) && { count: figure(one.count) }),
                },
              ]
            : [],
        ),
      ),
    },
    parts: parts.map((part) => ({
      label: part.label,
      title: part.title.trim().length >= 3 ? part.title : partTitle(part.label),
      ...(part.samples.length > 0 && { samples: part.samples }),
      ...(part.from && { from: part.from }),
      tests: part.tests.map(({ says, steps }) => ({
        ...(says.trim().length >= 3 && { says }),
        steps: steps.map(inPoints),
      })),
    })),
    ...(Object.keys(record).length > 0 && { record }),
  };
}

/** The place of a statement's fault in the written paper: the number it has among those of its kind. */
export const statementPath = (statements: readonly DraftStatement[], index: number): string => {
  const { says } = statements[index];
  return `paper.${says}.${statements.slice(0, index).filter((one) => one.says === says).length}`;
};
