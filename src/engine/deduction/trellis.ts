/**
 * All ways of giving salts to the samples, folded into states and steps: dynamic programming over the samples in the order of the
 * paper. A state is a pair: what is remembered of cations, and of anions. Exact; the product of the samples' salts is never listed.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { type Choices, memoryOf } from "./memory.ts";
import type { Constraint, Kind, Rule } from "./rules.ts";

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
  /** Set while folding: some assignment takes an option of this block. */
  taken: boolean;
}

/** One number for each state before a sample: [cation state][anion state]. */
export type Layer = number[][];

export interface Trellis {
  /** Number of samples. */
  length: number;
  /** Calls `visit` for every step sample `s` allows from a state; `ways` assignments take that step. */
  step(s: number, cation: number, anion: number, visit: Visit): void;
  /** The blocks of each sample. */
  blocks: Block[][];
}
type Visit = (cation: number, anion: number, ways: number, block: Block) => void;

export function trellisOf({ salts }: PredictionTable, options: Option[][], rules: readonly Rule[]): Trellis {
  const about = rules.flatMap((rule) => rule.about);
  const side = (ion: Kind, other: Kind) => {
    const mine = about.filter((constraint) => constraint.ion === ion);
    const { choices, of } = choicesOf(salts, options, ion, other, mine);
    return { family: of.map((holding) => choices.family[holding]), holding: of, memory: memoryOf(choices, mine) };
  };
  const cations = side("cations", "anions");
  const anions = side("anions", "cations");
  const blocks = options.map((list) => {
    const found: Block[][] = [];
    for (const option of list) {
      const { salt, cost } = option;
      found[cations.family[salt]] ??= [];
      const row = found[cations.family[salt]];
      row[anions.family[salt]] ??= { salts: [], marks: [], cost, taken: false };
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
    step(s, cation, anion, visit) {
      const withAnion = anions.memory(s, anion);
      for (const c of cations.memory(s, cation)) {
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

/**
 * Values of the states, each made from those it leads to: values[s][cation][anion], with `end` after the last sample and `start` for
 * a state before its steps are added. Only states that can be reached at a cost of at most `most` have a value, and it leaves out
 * what would cost more.
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
  const make = (s: number, cation: number, anion: number, budget: number): number => {
    let value = s === trellis.length ? end : start;
    if (s < trellis.length) {
      trellis.step(s, cation, anion, (c, a, ways, block) => {
        const left = budget - block.cost;
        if (left < 0) return;
        const known = budgets[s + 1][c]?.[a] >= left;
        value = add(value, known ? values[s + 1][c][a] : make(s + 1, c, a, left), ways, block);
      });
    }
    values[s][cation] ??= [];
    budgets[s][cation] ??= [];
    values[s][cation][anion] = value;
    budgets[s][cation][anion] = budget;
    return value;
  };
  make(0, 0, 0, most);
  return values;
}
