/**
 * Solves random mixtures and checks each answer with books of its own: `npm run --silent random-mixtures -- --count 100000 --seed 1`
 * prints one JSON object. Fails when a mixture has no answer or an answer does not add up.
 *
 * A mixture has some of all components: the part that is left out is drawn for each mixture, amounts are log-uniform from 1e-6 to
 * 1 mol/kg, acid or alkali likewise, and sodium or nitrate makes up the charge. Temperatures are 10 to 100 C; gases are kept in or free
 * to leave, and solids opened by heat, as on the bench. Mixture n is drawn from the seed `seed + n` alone, so `--count 1 --seed` with a
 * seed told in `failures` or `slowest` brings it back.
 *
 * The checks read each row's equation anew and write the activity model out again: mass action of every species, matter, water and
 * charge, amounts of phases, and no phase that may form above its saturation.
 */
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { BUBBLING } from "../src/engine/bench/tube.ts";
import { HEAT_OPENS } from "../src/engine/constants/kinetic-gates.ts";
import { createSolver, type EquilibriumResult } from "../src/engine/equilibrium/solve.ts";
import { compileDatabase, type Species } from "../src/engine/equilibrium/species.ts";
import { logKAt } from "../src/engine/equilibrium/system.ts";
import { parseEquation, type Term } from "../src/engine/formula/equation.ts";

/** mol/kg */
const LEAST = 1e-6;
const MOST = 1;
/** Part of the components that is left out, from and to. */
const LEFT_OUT = [0.3, 0.97] as const;
const CELSIUS = [10, 100] as const;

/** What is accepted: relative errors of matter, water and charge, and log10 errors of mass action and saturation. */
const ACCEPTED = { balance: 1e-6, log: 1e-6 };
/** Failures told one by one. */
const TOLD = 20;

const database = compileDatabase();
const entries = [...database.species, ...database.phases];

/** What one mole of a species or phase is made of, read from its row's equation: moles by component, water among them. */
function madeOf({ id, row }: Species): [component: string, moles: number][] {
  if (row === undefined) return [[id, 1]];
  const { left, right } = parseEquation(row.reaction);
  const dissolves = row.phase !== "aqueous";
  const sides: [readonly Term[], number][] = [
    [left, dissolves ? -1 : 1],
    [right, dissolves ? 1 : -1],
  ];
  const own = dissolves ? left[0] : right[0];
  return sides.flatMap(([terms, sign]) =>
    terms.flatMap((term): [string, number][] => (term === own ? [] : [[term.formula.text, sign * term.coefficient]])),
  );
}
const rows = new Map(entries.map((entry) => [entry.id, { entry, parts: madeOf(entry) }]));

/** Uniform numbers from 0 to 1 (mulberry32, in the public domain). */
function uniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(state ^ (state >>> 15), state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  };
}

function mixtureOf(seed: number) {
  const random = uniform(seed);
  const between = ([from, to]: readonly [number, number]) => from + (to - from) * random();
  const amount = () => LEAST * (MOST / LEAST) ** random();
  const leftOut = between(LEFT_OUT);
  const totals: Record<string, number> = {};
  let charge = 0;
  const add = (id: string, z: number, mol: number) => {
    totals[id] = (totals[id] ?? 0) + mol;
    charge += z * mol;
  };
  for (const { id, charge: z } of database.components) {
    if (id === "H+" || random() < leftOut) continue;
    add(id, z, amount());
  }
  const acidity = random();
  if (acidity < 2 / 3) add("H+", 1, acidity < 1 / 3 ? amount() : -amount());
  if (charge > 0) add("NO3-", -1, charge);
  else if (charge < 0) add("Na+", 1, -charge);
  const celsius = between(CELSIUS);
  const gases: Readonly<Record<string, number>> = random() < 0.5 ? BUBBLING : {};
  const alsoAllowed = HEAT_OPENS.flatMap(({ solid, fromCelsius }) => (celsius >= fromCelsius ? [solid] : []));
  return { problem: { totals, waterKg: 1 }, conditions: { celsius, gases, alsoAllowed } };
}
type Mixture = ReturnType<typeof mixtureOf>;

/** kg of water in a mole (IUPAC masses). */
const WATER_KG_PER_MOL = 0.01801528;

/** Errors of an answer, each the largest of its kind. */
interface Errors {
  matter: number;
  charge: number;
  massAction: number;
  saturation: number;
  negative: number;
}

function errorsOf({ problem, conditions }: Mixture, result: EquilibriumResult): Errors {
  const errors: Errors = { matter: 0, charge: 0, massAction: 0, saturation: 0, negative: 0 };
  const worse = (kind: keyof Errors, error: number) => {
    // What is no number counts as endlessly wrong.
    errors[kind] = Math.max(errors[kind], Number.isNaN(error) ? Number.POSITIVE_INFINITY : error);
  };
  const { molality, phases, waterKg } = result;
  const solvent = waterKg / WATER_KG_PER_MOL;
  const held = new Map([["H2O", solvent]]);
  const size = new Map([["H2O", solvent]]);
  const count = (id: string, mol: number) => {
    for (const [component, moles] of rows.get(id)?.parts ?? []) {
      held.set(component, (held.get(component) ?? 0) + moles * mol);
      size.set(component, (size.get(component) ?? 0) + Math.abs(moles * mol));
    }
  };
  let ions = 0;
  let net = 0;
  let solutes = 0;
  let strength = 0;
  for (const [id, m] of molality) {
    count(id, m * waterKg);
    const z = rows.get(id)?.entry.charge ?? Number.NaN;
    net += z * m;
    ions += Math.abs(z) * m;
    solutes += m;
    strength += 0.5 * z * z * m;
    worse("negative", -m);
  }
  for (const [id, mol] of phases) {
    count(id, mol);
    worse("negative", -mol);
  }
  const given = { ...problem.totals, H2O: problem.waterKg / WATER_KG_PER_MOL };
  for (const [id, mol] of held) worse("matter", Math.abs(mol - (given[id as "H2O"] ?? 0)) / (size.get(id) ?? 0));
  worse("charge", Math.abs(net) / ions);

  const { celsius } = conditions;
  const logA = activities(molality, solutes, strength, celsius);
  const logQ = (id: string) => (rows.get(id)?.parts ?? []).reduce((sum, [part, n]) => sum + n * logA(part), 0);
  for (const id of molality.keys()) {
    const entry = rows.get(id)?.entry;
    if (entry?.row) worse("massAction", Math.abs(logQ(id) + logKAt(entry, celsius) - logA(id)));
  }
  for (const phase of database.phases) {
    if (!(rows.get(phase.id)?.parts ?? []).every(([part]) => part === "H2O" || molality.has(part))) continue;
    const atm = conditions.gases[phase.id];
    const allowed = phase.kind === "gas" ? atm !== undefined : mayForm(phase, conditions.alsoAllowed);
    const above = logQ(phase.id) - logKAt(phase, celsius) - Math.log10(atm ?? 1);
    if (phases.has(phase.id)) worse("saturation", allowed ? Math.abs(above) : Number.POSITIVE_INFINITY);
    else if (allowed) worse("saturation", above);
  }
  return errors;
}

const mayForm = ({ id, row }: Species, alsoAllowed: readonly string[]): boolean =>
  row?.formsInMinutes === true || alsoAllowed.includes(id);

/** log10 of activities: Davies held from I = 0.5, 0.1 I for neutral species, water 1 - 0.017 sum(m); A scaled by (eps T)^-1.5. */
function activities(molality: ReadonlyMap<string, number>, solutes: number, strength: number, celsius: number) {
  const permittivity = (t: number) => 87.74 - 0.40008 * t + 9.398e-4 * t ** 2 - 1.41e-6 * t ** 3;
  const ratio = (permittivity(celsius) * (celsius + 273.15)) / (permittivity(25) * 298.15);
  const A = 0.5100247894124 * ratio ** -1.5;
  const I = Math.min(strength, 0.5);
  const davies = Math.sqrt(I) / (1 + Math.sqrt(I)) - 0.3 * I;
  return (id: string): number => {
    if (id === "H2O") return Math.log10(Math.max(1 - 0.017 * solutes, 0.5));
    const z = rows.get(id)?.entry.charge ?? Number.NaN;
    return Math.log10(molality.get(id) ?? 0) + (z === 0 ? 0.1 * I : -A * z * z * davies);
  };
}

/** A whole number from the command line. */
function whole(name: string, text: string): number {
  const value = Number(text);
  if (Number.isSafeInteger(value) && value >= 0) return value;
  console.error(`--${name}: found "${text}", expected a whole number, such as 1000.`);
  process.exit(2);
}

const { values } = parseArgs({
  options: { count: { type: "string", default: "100000" }, seed: { type: "string", default: "1" } },
});
const count = whole("count", values.count);
const first = whole("seed", values.seed);

const worst: Errors = { matter: 0, charge: 0, massAction: 0, saturation: 0, negative: 0 };
const failures: { seed: number; why: string }[] = [];
let notConverged = 0;
let wrong = 0;
const slowest = { seed: first, ms: 0, components: 0, iterations: 0 };
for (let seed = first; seed < first + count; seed++) {
  const mixture = mixtureOf(seed);
  // A solver keeps what it has compiled, and no two mixtures share it.
  const solve = createSolver();
  const begun = performance.now();
  const found = solve(mixture.problem, mixture.conditions);
  const ms = performance.now() - begun;
  if (!found.converged) {
    notConverged++;
    failures.push({ seed, why: found.reason });
    continue;
  }
  if (ms > slowest.ms) {
    const components = Object.keys(mixture.problem.totals).length;
    Object.assign(slowest, { seed, ms: Number(ms.toPrecision(3)), components, iterations: found.iterations });
  }
  const errors = errorsOf(mixture, found);
  const faults = (Object.keys(errors) as (keyof Errors)[]).filter((kind) => {
    worst[kind] = Math.max(worst[kind], errors[kind]);
    const accepted = { matter: ACCEPTED.balance, charge: ACCEPTED.balance, massAction: ACCEPTED.log };
    return errors[kind] > { ...accepted, saturation: ACCEPTED.log, negative: 0 }[kind];
  });
  if (faults.length === 0) continue;
  wrong++;
  failures.push({ seed, why: faults.map((kind) => `${kind} off by ${errors[kind].toExponential(1)}`).join(", ") });
}
console.log(
  JSON.stringify({ count, seed: first, notConverged, wrong, worst, slowest, failures: failures.slice(0, TOLD) }),
);
if (notConverged + wrong > 0) process.exitCode = 1;
