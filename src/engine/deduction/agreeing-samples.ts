/**
 * Samples that hang together, because some agree in their cation and some in their anion, and the ways in which they can hold their salts.
 * What has the same shape and samples of the same choices is worked out once.
 */
import { type Edge, waysOfEdges } from "./ion-graph.ts";
import type { Offers } from "./offers.ts";
import type { Work } from "./work.ts";

/** Samples, and by pair of families the ways in which each of them holds such a salt. */
export interface Agreeing {
  samples: number[];
  /** One for each of `samples`; the same array for the same ways. */
  held: Float64Array[];
  ways: number;
}

/** Samples that agree in both their ions. */
interface Bundle {
  samples: number[];
  cation: number;
  anion: number;
  /** The same for bundles that stand alike in the whole, and mostly another for others. */
  rank: number;
}

/** How often what stands around a bundle is looked at to tell it from others. */
const ROUNDS = 2;

/** @returns what counts samples that hang together, given as bits, by the blocks of those that agree in their cation and in their anion */
export function agreeingSamples({ kin, salts, sizes }: Offers, work: Work) {
  const shapes = new Map<string, { held: Float64Array[]; ways: number }>();
  return (together: number, cations: readonly number[], anions: readonly number[]): Agreeing => {
    const bundles = bundlesOf(together, cations, anions, kin);
    const points = { cations: inOrder(bundles, "cation"), anions: inOrder(bundles, "anion") };
    const samples = bundles.flatMap((bundle) => bundle.samples);
    const key = bundles
      .map(({ samples: of, cation, anion }) => {
        const kins = of.map((s) => kin[s]).join();
        return `${kins}:${points.cations.indexOf(cation)},${points.anions.indexOf(anion)}`;
      })
      .join(" ");
    const known = shapes.get(key);
    if (known) return { samples, ...known };
    const edges = bundles.map(
      ({ samples: [first, ...others], cation, anion }): Edge => ({
        cation: points.cations.indexOf(cation),
        anion: points.anions.indexOf(anion),
        salts: others.reduce((all, s) => all.map((ways, pair) => ways * salts[s][pair]), salts[first]),
      }),
    );
    const found = waysOfEdges(
      edges,
      { cations: points.cations.map(() => sizes.cations), anions: points.anions.map(() => sizes.anions) },
      work,
    );
    const shape = {
      held: bundles.flatMap(({ samples: of }, b) => of.map(() => found[b])),
      ways: found[0].reduce((sum, ways) => sum + ways, 0),
    };
    shapes.set(key, shape);
    return { samples, ...shape };
  };
}

/** The points at that end of the bundles, as they come. */
const inOrder = (bundles: readonly Bundle[], end: "cation" | "anion"): number[] => [
  ...new Set(bundles.map((bundle) => bundle[end])),
];

/** Bundles in an order that hangs on their shape as far as can be told at a glance. */
function bundlesOf(
  together: number,
  cations: readonly number[],
  anions: readonly number[],
  kin: readonly number[],
): Bundle[] {
  const bundles: Bundle[] = [];
  cations.forEach((withCation, cation) => {
    anions.forEach((withAnion, anion) => {
      const both = together & withCation & withAnion;
      if (both === 0) return;
      const samples = kin.flatMap((_, s) => (both & (1 << s) ? [s] : [])).sort((a, b) => kin[a] - kin[b]);
      bundles.push({ samples, cation, anion, rank: samples.reduce((rank, s) => mixed(rank, kin[s]), 1) });
    });
  });
  const around = { cations: cations.map(() => 0), anions: anions.map(() => 0) };
  for (let round = 0; round < ROUNDS; round++) {
    around.cations.fill(0);
    around.anions.fill(0);
    for (const { cation, anion, rank } of bundles) {
      around.cations[cation] += mixed(rank, round);
      around.anions[anion] += mixed(rank, round);
    }
    for (const bundle of bundles)
      bundle.rank = mixed(mixed(bundle.rank, around.cations[bundle.cation]), around.anions[bundle.anion]);
  }
  return bundles.sort((a, b) => a.rank - b.rank);
}

/** A number that hangs on both: the step of the hash FNV-1a, and a shift, for the low bits of a product know nothing of the high ones. */
function mixed(a: number, b: number): number {
  const product = Math.imul(a ^ b, 16777619);
  return product ^ (product >>> 15);
}
