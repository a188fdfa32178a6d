/**
 * A written paper, from a link, a file or the browser's storage, back into the fields of the form. Whatever comes: text that fits a field is
 * put there, right or wrong, and the schema speaks about it afterwards; what fits no field is named.
 */

import { LEFT_OUT as say } from "#words/paper.ts";
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";
import { LONGEST, MOST } from "../../engine/practical/bounds.ts";
import type { Observation } from "../../engine/practical.ts";
import { withFigures } from "../figures.ts";
import {
  type Draft,
  type DraftPart,
  type DraftSample,
  type DraftStatement,
  emptyDraft,
  emptySample,
  fitting,
  type IonChoice,
  linesOf,
} from "./draft.ts";

export interface FoundDraft {
  draft: Draft;
  /** What fitted no field, as sentences. */
  leftOut: string[];
}

const TOLD = 12;

type Group = Readonly<Record<string, unknown>>;
const isGroup = (input: unknown): input is Group =>
  typeof input === "object" && input !== null && !Array.isArray(input);

/** Keys that would reach into how objects work. */
const FORBIDDEN = ["__proto__", "constructor", "prototype"];

class Reader {
  readonly leftOut: string[] = [];
  tell(sentence: string): void {
    if (this.leftOut.length < TOLD) this.leftOut.push(sentence);
    else if (this.leftOut.length === TOLD) this.leftOut.push(say.more);
  }
  skip(place: string, why: string): void {
    this.tell(say.wasLeftOut(place, why));
  }
  group(input: unknown, place: string): Group {
    if (input === undefined) return {};
    if (isGroup(input)) return input;
    this.skip(place, say.group);
    return {};
  }
  list(input: unknown, place: string, most: number): unknown[] {
    if (input === undefined) return [];
    if (!Array.isArray(input)) {
      this.skip(place, say.list);
      return [];
    }
    if (input.length > most) this.skip(place, say.tooMany(input.length, most));
    return input.slice(0, most);
  }
  /** Text or a figure, as it stands in a field. */
  text(input: unknown, place: string, otherwise = ""): string {
    if (input === undefined || input === null) return otherwise;
    if (typeof input === "string" || typeof input === "number") {
      const text = String(input);
      if (text.length > LONGEST.says) this.tell(say.cutOff(place, text.length, LONGEST.says));
      return fitting(text);
    }
    this.skip(place, say.text);
    return otherwise;
  }
  texts(input: unknown, place: string, most: number): string[] {
    return this.list(input, place, most).map((one, index) => this.text(one, `${place}, ${say.entry(index + 1)}`));
  }
  oneOf<T extends string>(input: unknown, choices: readonly T[], place: string, otherwise: T): T {
    if (input === undefined) return otherwise;
    const found = choices.find((choice) => choice === input);
    if (found === undefined) this.skip(place, say.oneOf(choices.join(", ")));
    return found ?? otherwise;
  }
  unknown(group: Group, known: readonly string[], place: string): void {
    for (const key of Object.keys(group)) {
      if (!known.includes(key)) this.skip(place ? `${place}, ${key.slice(0, 40)}` : key.slice(0, 40), say.noField);
    }
  }
}

/** Entries of an author's file that a paper without an answer does not have; passed over without a word. */
const AUTHORS = ["summary", "level", "order", "undecided", "closing"];

/** It has neither samples nor parts nor a title, so that there is nothing to open. */
export const holdsNoPaper = (input: unknown): boolean =>
  !isGroup(input) ||
  !(["samples", "parts"].some((key) => Array.isArray(input[key]) && input[key].length > 0) || Boolean(input.title));

export function draftOf(input: unknown): FoundDraft {
  const read = new Reader();
  const group = read.group(input, say.paper);
  read.unknown(group, ["title", "minutes", "samples", "paper", "parts", "record", ...AUTHORS], "");
  const paper = read.group(group.paper, "paper");
  read.unknown(paper, ["cations", "anions", "inAll", "share", "differ", "same", "contains"], "paper");
  const inAll = read.group(paper.inAll, "paper, inAll");
  const samples = read.list(group.samples, "samples", MOST.samples).map((one, index) => sampleOf(read, one, index));
  const draft: Draft = {
    ...emptyDraft(),
    title: read.text(group.title, "title"),
    minutes: read.text(group.minutes, "minutes"),
    ...(samples.length > 0 && { samples }),
    cations: ionsOf(read, paper.cations, "paper, cations"),
    anions: ionsOf(read, paper.anions, "paper, anions"),
    inAll: {
      cations: read.text(inAll.cations, "paper, inAll, cations"),
      anions: read.text(inAll.anions, "paper, inAll, anions"),
    },
    statements: statementsOf(read, paper),
    parts: read.list(group.parts, "parts", MOST.parts).map((one, index) => partOf(read, one, index)),
  };
  takeRecord(read, group.record, draft);
  return { draft, leftOut: read.leftOut };
}

function ionsOf(read: Reader, input: unknown, place: string): IonChoice {
  if (input === undefined) return [];
  if (input === "school" || input === "advanced") return input;
  return read.texts(input, place, MOST.ions);
}

const GIVEN = ["solid", "solution", "both"] as const;

function sampleOf(read: Reader, input: unknown, index: number): DraftSample {
  const place = say.sample(index + 1);
  const group = read.group(input, place);
  read.unknown(group, ["label", "given", "concentration", "holds", "salt"], place);
  const holds = read.group(group.holds, `${place}, holds`);
  const count = (kind: string) => (holds[kind] === 2 ? 2 : 1);
  return {
    label: read.text(group.label, `${place}, label`, emptySample("").label),
    given: read.oneOf(group.given, GIVEN, `${place}, given`, "solution"),
    concentration: withFigures(read.text(group.concentration, `${place}, concentration`)),
    cations: count("cations"),
    anions: count("anions"),
  };
}

function statementsOf(read: Reader, paper: Group): DraftStatement[] {
  const groups = (["share", "differ"] as const).flatMap((says) =>
    read.list(paper[says], `paper, ${says}`, MOST.statements).map((one): DraftStatement => {
      const group = read.group(one, `paper, ${says}`);
      return {
        says,
        samples: read.texts(group.samples, `paper, ${says}, samples`, MOST.samples),
        ion: read.oneOf(group.ion, ["cation", "anion"], `paper, ${says}, ion`, "cation"),
      };
    }),
  );
  const same = read
    .list(paper.same, "paper, same", MOST.statements)
    .map((one): DraftStatement => ({ says: "same", samples: read.texts(one, "paper, same", MOST.samples) }));
  const contains = read.list(paper.contains, "paper, contains", MOST.statements).map((one): DraftStatement => {
    const group = read.group(one, "paper, contains");
    return {
      says: "contains",
      samples: read.texts(group.samples, "paper, contains, samples", MOST.samples),
      ion: read.text(group.ion, "paper, contains, ion"),
      count: read.text(group.count, "paper, contains, count"),
    };
  });
  return [...groups, ...same, ...contains];
}

function partOf(read: Reader, input: unknown, index: number): DraftPart {
  const place = say.part(index + 1);
  const group = read.group(input, place);
  read.unknown(group, ["label", "title", "samples", "from", "tests", "note"], place);
  return {
    label: read.text(group.label, `${place}, label`),
    title: read.text(group.title, `${place}, title`),
    samples: read.texts(group.samples, `${place}, samples`, MOST.samples),
    from: read.oneOf(group.from, ["", "solid", "solution"], `${place}, from`, ""),
    tests: read.list(group.tests, `${place}, tests`, MOST.tests).map((one, test) => {
      const at = `${place}, ${say.test(test + 1)}`;
      const of = read.group(one, at);
      read.unknown(of, ["label", "says", "steps", "seen"], at);
      return {
        says: read.text(of.says, `${at}, says`),
        steps: read.list(of.steps, `${at}, steps`, MOST.steps).map((each) => stepOf(read, each, at)),
        seen: seenOf(read, of.seen, at),
      };
    }),
  };
}

function stepOf(read: Reader, input: unknown, place: string): WrittenStep {
  const group = read.group(input, `${place}, ${say.step}`);
  return Object.fromEntries(
    Object.entries(group)
      .slice(0, 6)
      .flatMap(([key, value]) => {
        const plain =
          typeof value === "boolean" || typeof value === "number"
            ? value
            : withFigures(read.text(value, `${place}, ${key}`));
        return FORBIDDEN.includes(key) || key.length > 20 ? [] : [[key, plain]];
      }),
  );
}

/** Observations by sample, as they are kept with their test. What each says is read by the schema. */
function seenOf(read: Reader, input: unknown, place: string): Record<string, Observation> {
  return Object.fromEntries(
    Object.entries(read.group(input, `${place}, record`))
      .slice(0, MOST.samples)
      .flatMap(([letter, seen]) => {
        if (FORBIDDEN.includes(letter)) return [];
        if (fits(seen)) return [[letter, seen as Observation]];
        read.skip(`${place}, record`, say.tooMuchText);
        return [];
      }),
  );
}

const fits = (seen: unknown): boolean => (JSON.stringify(seen) ?? "").length <= LONGEST.says;

/** Puts each observation of a written record beside its test. */
function takeRecord(read: Reader, input: unknown, draft: Draft): void {
  const lines = linesOf(draft.parts);
  for (const [letter, row] of Object.entries(read.group(input, "record")).slice(0, MOST.samples)) {
    if (FORBIDDEN.includes(letter)) continue;
    for (const [id, seen] of Object.entries(read.group(row, `record, ${letter.slice(0, 4)}`))) {
      const line = lines.find((one) => one.id === id);
      if (!line) read.skip(`record, ${letter.slice(0, 4)}, ${id.slice(0, 20)}`, say.noSuchTest);
      else if (!fits(seen)) read.skip(`record, ${id}`, say.tooMuchText);
      else draft.parts[line.part].tests[line.test].seen[letter] = seen as Observation;
    }
  }
}
