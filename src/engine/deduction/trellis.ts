/**
 * All ways of giving salts to the samples, folded into states and steps: dynamic programming over the samples in the order of the
 * paper. A state is a pair: what is remembered of cations, and of anions. Exact; the product of the samples' salts is never listed.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { type Choices, type Memory, memoryOf } from "./memory.ts";
import type { Constraint, Kind, Rule } from "./rules.ts";
import { spend, type Work } from "./work.ts";

/** A salt a sample may be given, and what giving it costs. Options of different `mark` are never treated as interchangeable. */
export interface Option {
  salt: number;
  mark: number;
  cost: number;
}

/** The options of one sample whose cations are interchangeable, and whose anions are. */
export interface Block {
  salts: number[];
  /** The options among them that hold one and the same cation and anion. */
  marks: Option[];
  /** The least cost of these. */
  cost: number;
  /** Room for whoever folds: ways of taking an option of this block. */
  through: number;
}

/** One number for each state before a sample: [cation state][anion state]. Rows that nothing leads to are left out. */
export type Layer = (Float64Array | undefined)[];

export interface Trellis {
  /** Number of samples. */
  length: number;
  /** Calls `visit` for every step sample `s` allows from a state; `ways` assignments take that step. */
  step(s: number, cation: number, anion: number, visit: Visit): void;
  /** The blocks of each sample. */
  blocks: Block[][];
  /** What a step is made of: where the cations, and the anions, lead from their state, and the block they have in common. */
  cations: Memory;
  anions: Memory;
  /** [sample][family of the cations][family of the anions]; undefined where the sample can hold no such salt. */
  block: readonly (readonly (readonly (Block | undefined)[])[])[];
  work: Work;
}
type Visit = (cation: number, anion: number, ways: number, block: Block) => void;

/** Finding out what is alike costs some ten steps an option. */
const ALIKE = 10;

/** @param work what the steps are taken from; whatever looks at one throws TooMuchWork when none is left */
export function trellisOf(
  { salts }: PredictionTable,
  options: Option[][],
  rules: readonly Rule[],
  work: Work,
): Trellis {
  spend(work, ALIKE * options.reduce((sum, list) => sum + list.length, 0));
  const about = rules.flatMap((rule) => rule.about);
  const side = (ion: Kind, other: Kind) => {
    const mine = about.filter((constraint) => constraint.ion === ion);
    const { choices, of } = choicesOf(salts, options, ion, other, mine);
    return { family: of.map((holding) => choices.family[holding]), holding: of, memory: memoryOf(choices, mine, work) };
  };
  const cations = side("cations", "anions");
  const anions = side("anions", "cations");
  const blocks = options.map((list) => {
    const found: Block[][] = [];
    for (const option of list) {
      const { salt, cost } = option;
      found[cations.family[salt]] ??= [];
      const row = found[cations.family[salt]];
      row[anions.family[salt]] ??= { salts: [], marks: [], cost, through: 0 };
      const block = row[anions.family[salt]];
      block.salts.push(salt);
      const [first] = block.salts;
      const sameIons =
        cations.holding[first] === cations.holding[salt] && anions.holding[first] === anions.holding[salt];
      if (sameIons) block.marks.push(option);
      block.cost = Math.min(block.cost, cost);
    }
    return found;
  });
  return {
    length: options.length,
    blocks: blocks.map((rows) => rows.flat()),
    cations: cations.memory,
    anions: anions.memory,
    block: blocks,
    work,
    step(s, cation, anion, visit) {
      const withCation = cations.memory.moves(s, cation);
      const withAnion = anions.memory.moves(s, anion);
      spend(work, 1 + withCation.length * withAnion.length);
      for (const c of withCation) {
        const row = blocks[s][c.family];
        for (const a of withAnion) {
          const block = row[a.family];
          if (block) visit(c.next, a.next, c.ways * a.ways * block.marks.length, block);
        }
      }
    },
  };
}

/** What the samples can hold of one kind of ion, and the holding of each salt; a salt that no sample can hold has none. */
function choicesOf(
  salts: PredictionTable["salts"],
  options: Option[][],
  ion: Kind,
  other: Kind,
  about: readonly Constraint[],
): { choices: Choices; of: number[] } {
  const names = [...new Set(salts.flatMap((salt) => salt[ion]))];
  const asText = salts.map((salt) =>
    salt[ion]
      .map((name) => names.indexOf(name))
      .sort((a, b) => a - b)
      .join(),
  );
  const texts = [...new Set(asText)].sort(
    (a, b) => a.split(",").length - b.split(",").length || Number.parseInt(a, 10) - Number.parseInt(b, 10),
  );
  const holdings = texts.map((text) => text.split(",").map(Number));
  const of = asText.map((text) => texts.indexOf(text));
  const rows = options.map((list) => {
    const row = holdings.map(() => "");
    for (const { salt, mark } of list) row[of[salt]] += `${salts[salt][other].join()}/${mark} `;
    return row;
  });
  // Exchanging ions that stand in mixtures too would have to exchange the mixtures; a paper with them has few samples and needs no saving.
  const single = holdings.every(({ length }) => length === 1);
  const keys = holdings.map((holding, h) => {
    const named = about.some((one) => one.says === "contains" && one.which === names[holding[0]]);
    return single && !named ? rows.map((row) => row[h]).join("|") : `${h}`;
  });
  return {
    choices: {
      holdings,
      family: keys.map((key) => keys.indexOf(key)),
      open: rows.map((row) => row.flatMap((text, h) => (text === "" ? [] : [h]))),
      names,
    },
    of,
  };
}

/** A row of a layer before sample `s`, filled with `value` where there is none yet. */
export function rowOf({ anions, work }: Trellis, layer: Layer, s: number, cation: number, value: number): Float64Array {
  const known = layer[cation];
  if (known) return known;
  const states = anions.states(s);
  spend(work, states);
  const row = new Float64Array(states).fill(value);
  layer[cation] = row;
  return row;
}

/**
 * Values of the states, each made from those it leads to: values[s][cation][anion], with `end` after the last sample and `start` for
 * a state before its steps are added. Only states that can be reached at a cost of at most `most` have a value, the others NaN, and it
 * leaves out what would cost more.
 */
export function fold(
  trellis: Trellis,
  most: number,
  start: number,
  end: number,
  add: (value: number, next: number, ways: number, block: Block) => number,
): Layer[] {
  const layers = () => Array.from({ length: trellis.length + 1 }, (): Layer => []);
  const values = layers();
  /** The most that could still be spent when a state's value was made; more to spend means making it again. */
  const budgets = layers();
  const make = (s: number, cation: number, anion: number, budget: number) => {
    let value = s === trellis.length ? end : start;
    if (s < trellis.length) {
      const withCation = trellis.cations.moves(s, cation);
      const withAnion = trellis.anions.moves(s, anion);
      spend(trellis.work, 1 + withCation.length * withAnion.length);
      // Millions of steps go through here.
      for (const c of withCation) {
        const blocks = trellis.block[s][c.family];
        const known = rowOf(trellis, values[s + 1], s + 1, c.next, Number.NaN);
        const madeWith = rowOf(trellis, budgets[s + 1], s + 1, c.next, -1);
        for (const a of withAnion) {
          const block = blocks[a.family];
          if (!block) continue;
          const left = budget - block.cost;
          if (left < 0) continue;
          if (madeWith[a.next] < left) make(s + 1, c.next, a.next, left);
          value = add(value, known[a.next], c.ways * a.ways * block.marks.length, block);
        }
      }
    }
    rowOf(trellis, values[s], s, cation, Number.NaN)[anion] = value;
    rowOf(trellis, budgets[s], s, cation, -1)[anion] = budget;
  };
  make(0, 0, 0, most);
  return values;
}

/** The value of the one state before the first sample. */
export const atStart = ([first]: readonly Layer[]): number => first[0]?.[0] ?? Number.NaN;
