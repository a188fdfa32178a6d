/**
 * Salts for samples of which some agree in their cation and some in their anion: a graph whose edges are the samples, from the cation each
 * holds to its anion. In how many ways ions can be put on its points so that every edge is a salt, and what each edge is in how many of
 * them. Along a tree by passing messages (the sum-product algorithm); an edge that closes a ring is cut, once for each ion at its end.
 */
import { spend, type Work } from "./work.ts";

export interface Edge {
  /** The points it joins. */
  cation: number;
  anion: number;
  /** salts[c * anions + a]: how many salts it may be of these two ions. */
  salts: Float64Array;
}

/** For every point, how often each ion counts there. */
interface Points {
  cations: readonly Float64Array[];
  anions: readonly Float64Array[];
}

/** A message, and a multiplication in its array, in steps of the other ways of counting. */
const MESSAGE = 16;
const LIGHT = 1 / 64;

/** @returns for every edge of a connected graph, and every pair of ions, in how many ways it holds them */
export function waysOfEdges(edges: readonly Edge[], points: Points, work: Work): Float64Array[] {
  const ring = edges.find((edge, at) => closes(edge, edges.slice(0, at)));
  if (!ring) return alongTree(edges, points, work);
  const sums = edges.map(({ salts }) => new Float64Array(salts.length));
  const cut = edges.map((edge) => (edge === ring ? { ...edge, cation: points.cations.length } : edge));
  points.cations[ring.cation].forEach((times, c) => {
    if (times === 0) return;
    const only = (count: number) => points.cations[0].map((_, other) => (other === c ? count : 0));
    const cations = [...points.cations.with(ring.cation, only(times)), only(1)];
    waysOfEdges(cut, { ...points, cations }, work).forEach((ways, e) => {
      for (let pair = 0; pair < ways.length; pair++) sums[e][pair] += ways[pair];
    });
  });
  return sums;
}

/** Whether its ends are joined by these edges already. */
function closes(edge: Edge, edges: readonly Edge[]): boolean {
  const reached = new Set([edge.cation]);
  const anions = new Set<number>();
  for (let before = -1; before < reached.size + anions.size; ) {
    before = reached.size + anions.size;
    for (const { cation, anion } of edges) {
      if (!reached.has(cation) && !anions.has(anion)) continue;
      reached.add(cation);
      anions.add(anion);
    }
  }
  return anions.has(edge.anion);
}

function alongTree(edges: readonly Edge[], points: Points, work: Work): Float64Array[] {
  const width = points.anions[0].length;
  const told = new Map<Edge, { cation?: Float64Array; anion?: Float64Array }>(edges.map((edge) => [edge, {}]));
  /** How often each ion at an end of the edge counts, by all that hangs there but the edge itself. */
  const at = (end: "cation" | "anion", edge: Edge): Float64Array => {
    const ways = Float64Array.from(points[`${end}s`][edge[end]]);
    for (const other of edges) {
      if (other === edge || other[end] !== edge[end]) continue;
      const message = through(other, end);
      for (let ion = 0; ion < ways.length; ion++) ways[ion] *= message[ion];
    }
    return ways;
  };
  /** How often each ion at that end counts by the edge and what hangs at its other end. */
  const through = (edge: Edge, end: "cation" | "anion"): Float64Array => {
    const known = told.get(edge) as { cation?: Float64Array; anion?: Float64Array };
    known[end] ??= end === "cation" ? toCation(edge) : toAnion(edge);
    return known[end];
  };
  const toCation = (edge: Edge): Float64Array => {
    spend(work, MESSAGE + edge.salts.length * LIGHT);
    const from = at("anion", edge);
    return points.cations[0].map((_, c) => {
      let sum = 0;
      for (let a = 0; a < width; a++) sum += edge.salts[c * width + a] * from[a];
      return sum;
    });
  };
  const toAnion = (edge: Edge): Float64Array => {
    spend(work, MESSAGE + edge.salts.length * LIGHT);
    const sums = new Float64Array(width);
    at("cation", edge).forEach((times, c) => {
      if (times === 0) return;
      for (let a = 0; a < width; a++) sums[a] += times * edge.salts[c * width + a];
    });
    return sums;
  };
  return edges.map((edge) => {
    spend(work, MESSAGE + edge.salts.length * LIGHT);
    const [cations, anions] = [at("cation", edge), at("anion", edge)];
    return edge.salts.map((salts, pair) =>
      salts === 0 ? 0 : salts * cations[Math.floor(pair / width)] * anions[pair % width],
    );
  });
}
