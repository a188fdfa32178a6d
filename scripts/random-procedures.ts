/**
 * Takes random salts through random tests: `npm run --silent random-procedures -- --count 20000 --seed 1` prints one JSON object. Fails when
 * the engine cannot carry one out.
 *
 * A procedure has one part of one to four tests: a reagent by drops, by whole cm3 (so that exact equivalence is met) or in excess, and heat now
 * and then. Procedure n is drawn from the seed `seed + n` alone, so `--count 1 --seed` with a seed told in `failures` brings it back.
 */
import { parseArgs } from "node:util";
import { cannotBe, pairsOf } from "../src/engine/bench/allowed-salts.ts";
import { usableReagents } from "../src/engine/bench/operations.ts";
import { createSolver, predictSalt } from "../src/engine/index.ts";
import { procedure, statement } from "../src/engine/practical.ts";

const { values } = parseArgs({
  options: { count: { type: "string", default: "20000" }, seed: { type: "string", default: "1" } },
});
const form = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;
const solve = createSolver();
const salts = pairsOf(statement.parse({ cations: "advanced", anions: "advanced" })).filter(
  (salt) => cannotBe(salt, form, solve) === undefined,
);

/** Whole numbers below a bound (mulberry32, in the public domain). */
function drawFrom(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(state ^ (state >>> 15), state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) % below;
  };
}

function addition(draw: (below: number) => number): object {
  const add = usableReagents[draw(usableReagents.length)];
  if (add.endsWith("(s)")) return { add, pieces: 1 };
  return [
    { add, drops: 1 + draw(8) },
    { add, volume: `${1 + draw(4)} cm3` },
    { add, until: "in excess" },
  ][draw(3)];
}

function testsFrom(draw: (below: number) => number): { steps: object[] }[] {
  return Array.from({ length: 1 + draw(4) }, (_, n) => ({
    steps: [
      ...(n === 0 ? [{ take: "1 cm3" }] : []),
      addition(draw),
      ...(draw(3) === 0 ? [draw(2) === 0 ? { warm: true } : { boil: "1 min" }] : []),
    ],
  }));
}

const [count, first] = [Number(values.count), Number(values.seed)];
const failures: { seed: number; salt: string; tests: unknown; why: string }[] = [];
for (let seed = first; seed < first + count; seed++) {
  const draw = drawFrom(seed);
  const salt = salts[draw(salts.length)];
  const tests = testsFrom(draw);
  try {
    const parts = procedure.parse([{ label: "a", title: "test", tests }]);
    predictSalt({ ions: salt.ions, molPerDm3: form.concentration.molPerDm3 }, parts, solve);
  } catch (error) {
    failures.push({ seed, salt: salt.formula, tests, why: String(error) });
  }
}
process.stdout.write(`${JSON.stringify({ count, seed: first, salts: salts.length, failures })}\n`);
if (failures.length > 0) process.exitCode = 1;
