/**
 * Who takes up the protons an event sets free, or supplies those it needs: water, hydroxide, ammonia, the weak acids and bases of the
 * constants, a basic solid. The mixture shows which, by what it really used.
 */
import type { Species } from "../../equilibrium/species.ts";
import type { Amounts } from "../amounts.ts";
import { AMMONIA, database, everything, PROTON } from "./forms.ts";

/** Terms for one proton passed. */
export interface ProtonWay {
  reactant?: { of: Species; count: number };
  product?: { of: Species; count: number };
}

/** A base and what it becomes, with the protons one mole of it takes. */
interface BasePair {
  base: Species;
  acid: Species;
  /** Acid for each mole of base: half a dichromate. */
  acids: number;
  protons: number;
  /** How it takes one proton, and how it gives one. */
  takes: ProtonWay;
  gives: ProtonWay;
}

function basePair(base: Species, acid: Species, acids: number, protons: number): BasePair {
  const ofBase = { of: base, count: 1 / protons };
  const ofAcid = { of: acid, count: acids / protons };
  return {
    base,
    acid,
    acids,
    protons,
    takes: { reactant: ofBase, product: ofAcid },
    gives: { reactant: ofAcid, product: ofBase },
  };
}

const named = (id: string): Species => everything.get(id) as Species;
const H = named("H+");
const OH = named("OH-");

/** Weak bases whose acids are seen in school equations; sulfate counts as none. */
const WEAK = ["NH3", "CO3^2-", "SO3^2-", "NO2-", "S2O3^2-", "CrO4^2-", "HS-"];
const weakPairs = WEAK.flatMap((id) => pairsOf(database.componentIndex.get(id) as number));

/** Two forms of one component, of which the acid holds the next greater number of protons. */
function pairsOf(index: number): BasePair[] {
  const all = database.species
    .filter(
      ({ nu }) => nu.every(([which]) => which === index || which === PROTON) && nu.some(([which]) => which === index),
    )
    .map((of) => ({ of, count: molesOf(of, index), each: molesOf(of, PROTON) / molesOf(of, index) }));
  return all.flatMap(({ of: base, count: bases, each: fewer }) => {
    const next = Math.min(...all.flatMap(({ each }) => (each > fewer ? [each] : [])));
    return all
      .filter(({ each }) => each === next)
      .map(({ of: acid, count, each }) => basePair(base, acid, bases / count, bases * (each - fewer)));
  });
}

/** Each form of a weak base with the ion pairs that hold it as it is: dissolved, with as many of it and of its protons. */
const wearers = new Map<Species, readonly Species[]>();
for (const { base, acid } of weakPairs) for (const form of [base, acid]) wearers.set(form, pairsWith(form));

function pairsWith(form: Species): Species[] {
  const [index] = form.nu.find(([which]) => which !== PROTON) as [number, number];
  return database.species.filter(
    (one) =>
      one.water === form.water &&
      [index, PROTON].every((which) => molesOf(one, which) === molesOf(form, which)) &&
      one.nu.every(([which]) => which === index || which === PROTON || database.components[which].charge > 0),
  );
}

/** Hydroxides and oxides that acid dissolves: each with the free ion it leaves. */
const basicSolids: BasePair[] = database.phases.flatMap((phase): BasePair[] => {
  const others = phase.nu.filter(([index]) => index !== PROTON);
  const protons = -molesOf(phase, PROTON);
  if (phase.kind !== "solid" || others.length !== 1 || protons <= 0 || others[0][0] === AMMONIA) return [];
  return [basePair(phase, database.species[others[0][0]], others[0][1], protons)];
});

/** Gases led in that make the mixture acidic. */
const LED_IN: readonly [gas: string, leaves: string][] = [
  ["CO2(g)", "HCO3-"],
  ["SO2(g)", "HSO3-"],
];

function molesOf({ nu }: Species, index: number): number {
  return nu.find(([which]) => which === index)?.[1] ?? 0;
}

/** A change below this, mol, decides nothing: it is what a few drops of a neutral solution hold of H+ or OH-. */
const NOTICED = 1e-7;
/** Nor does one that is a small part of the event itself. */
const NOTICED_PART = 0.02;

/**
 * The way the mixture passed protons on.
 *
 * @param setFree the event sets protons free; else it needs them
 * @param event mol of the solid or gas that changed
 * @param not what the event is about, which passes nothing on
 */
export function protonWay(
  setFree: boolean,
  { before, after, event, not }: { before: Amounts; after: Amounts; event: number; not: string },
): ProtonWay {
  const grown = (of: Species) =>
    (wearers.get(of) ?? [of]).reduce((sum, { id }) => sum + (after.get(id) ?? 0) - (before.get(id) ?? 0), 0);
  const ways = (setFree ? takers(grown) : givers(grown)).filter(
    ({ way }) => way.reactant?.of.id !== not && way.product?.of.id !== not,
  );
  const used = ways.reduce((best, one) => (one.passed > best.passed ? one : best));
  if (used.passed > Math.max(NOTICED, NOTICED_PART * event)) return used.way;
  return unseen(setFree, after);
}

type Grown = (of: Species) => number;
interface Measured {
  way: ProtonWay;
  /** Protons passed, mol. */
  passed: number;
}

/** Protons a pair took (sign 1) or gave: as many as its base went and its acid came, or the other way round. */
const turned = ({ base, acid, acids, protons }: BasePair, sign: 1 | -1, grown: Grown): number =>
  Math.min(-sign * grown(base), (sign * grown(acid)) / acids) * protons;

function takers(grown: Grown): Measured[] {
  return [
    { way: { reactant: { of: OH, count: 1 } }, passed: -grown(OH) },
    ...weakPairs.map((pair) => ({ way: pair.takes, passed: turned(pair, 1, grown) })),
    ...basicSolids.map((pair) => ({ way: pair.takes, passed: -grown(pair.base) * pair.protons })),
    { way: { product: { of: H, count: 1 } }, passed: grown(H) },
  ];
}

function givers(grown: Grown): Measured[] {
  const ledIn = LED_IN.map(([gas, leaves]) => ({
    way: { reactant: { of: named(gas), count: 1 }, product: { of: named(leaves), count: 1 } },
    passed: -grown(named(gas)),
  }));
  return [
    ...ledIn,
    { way: { reactant: { of: H, count: 1 } }, passed: -grown(H) },
    ...weakPairs.map((pair) => ({ way: pair.gives, passed: turned(pair, -1, grown) })),
    ...basicSolids.map((pair) => ({ way: pair.gives, passed: grown(pair.base) * pair.protons })),
    { way: { product: { of: OH, count: 1 } }, passed: grown(OH) },
  ];
}

/** Where nothing shows plainly: what there is of hydroxide, acid or a weak base and its acid passes protons without being used up. */
function unseen(setFree: boolean, after: Amounts): ProtonWay {
  const there = ({ id }: Species) => after.get(id) ?? 0;
  if (setFree && there(OH) > NOTICED) return { reactant: { of: OH, count: 1 } };
  if (!setFree && there(H) > NOTICED) return { reactant: { of: H, count: 1 } };
  const buffers = weakPairs.filter((pair) => there(setFree ? pair.base : pair.acid) > NOTICED);
  const [most] = buffers.sort((a, b) => there(setFree ? b.base : b.acid) - there(setFree ? a.base : a.acid));
  if (most) return setFree ? most.takes : most.gives;
  return setFree ? { product: { of: H, count: 1 } } : { product: { of: OH, count: 1 } };
}
