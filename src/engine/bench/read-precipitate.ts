/** From a trace to what is said of precipitates: which form, how much, and what becomes of one that was there. */
import { SLOW_SOLIDS, SOLID_TO_SOLID } from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Fate, Precipitate } from "../practical.ts";
import { colourTogether, inSightAtOnce, type Sight, type SolidSeen } from "./sight.ts";
import type { TestTrace } from "./trace.ts";

/** A solid that grew during the test, at its largest. */
export interface Growth {
  id: string;
  /** Grown by this much, g/dm3 of the mixture at that moment. */
  gramsPerDm3: number;
  grams: number;
  mol: number;
  colour: SolidSeen["colour"];
  /** Its row where it is slow to form in the mixture in which it is at its largest. */
  slow?: (typeof SLOW_SOLIDS)[number];
}

/** True while a solid given dry is still mostly there. */
export function staysItself({ dry, after }: TestTrace): boolean {
  if (!dry || !after) return false;
  const own = after.solids.reduce((sum, { id, mol }) => (dry.own.has(id) ? sum + mol : sum), 0);
  return own > dry.mol * (1 - SOLID_TO_SOLID.gone.value);
}

/**
 * Solids that appeared, each at its largest, the most first. More of a solid already in plain sight is not news; nor is one that came and
 * went while another that came with it stays in sight: the record names what is there at the end.
 */
export function growths(trace: TestTrace): Growth[] {
  const all = allGrowths(trace);
  const atEnd = new Set(
    trace.after?.solids.filter(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value).map(({ id }) => id),
  );
  const staying = all.filter(({ id }) => atEnd.has(id));
  return staying.length > 0 ? staying : all;
}

function allGrowths(trace: TestTrace): Growth[] {
  if (staysItself(trace)) return [];
  const seen = (trace.before?.solids ?? []).filter(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value);
  const old = new Set(seen.map(({ id }) => id));
  const start = new Map((trace.before?.solids ?? []).map((solid) => [solid.id, solid.grams]));
  const most = new Map<string, Growth>();
  for (const sight of trace.during) {
    for (const solid of sight.solids) {
      if (old.has(solid.id) || trace.dry?.own.has(solid.id)) continue;
      const grown = solid.grams - (start.get(solid.id) ?? 0);
      const gramsPerDm3 = (grown / sight.cm3) * 1000;
      if (grown <= 0 || gramsPerDm3 < VISIBILITY.unseen.value) continue;
      if (gramsPerDm3 > (most.get(solid.id)?.gramsPerDm3 ?? 0)) {
        most.set(solid.id, { id: solid.id, gramsPerDm3, grams: grown, mol: solid.mol, colour: solid.colour });
      }
    }
  }
  for (const growth of most.values()) growth.slow = slowIn(trace, growth.id);
  return [...most.values()].sort((a, b) => b.gramsPerDm3 - a.gramsPerDm3);
}

function slowIn({ peak, reactions }: TestTrace, id: string): Growth["slow"] {
  const pH = peak.get(id)?.pH ?? Number.POSITIVE_INFINITY;
  return SLOW_SOLIDS.find(
    ({ solid, made }) =>
      solid === id && (!made || (pH < made.belowPH && reactions.some(({ pair }) => pair.endsWith(` with ${made.by}`)))),
  );
}

/** What could be recorded of a new precipitate, the likeliest first; `false` = none seen. */
export function precipitateReadings(grown: readonly Growth[]): (Precipitate | false)[] {
  const amount = grown.reduce((sum, { gramsPerDm3 }) => sum + gramsPerDm3, 0);
  if (amount < VISIBILITY.unseen.value) return [false];
  const colour = colourTogether(grown.map(({ gramsPerDm3, colour: own }) => ({ grams: gramsPerDm3, colour: own })));
  if (amount < VISIBILITY.visible.value) return [false, { colour, amount: "trace" }];
  const slight: Precipitate = { colour, amount: "slight" };
  const slowest = grown.map(({ slow }) => slow);
  if (slowest.every((row) => row !== undefined)) {
    const plain: Precipitate = { colour, amount: "plain" };
    return slowest[0]?.usually === "none" ? [false, slight, plain] : [slight, plain, false];
  }
  if (amount < VISIBILITY.certain.value) return [slight, false];
  if (amount < VISIBILITY.plain.value) return [slight];
  return [{ colour, amount: "plain" }];
}

/** Solids of a tube that anyone sees there. */
export const inPlainSight = (sight: Sight | undefined): readonly SolidSeen[] =>
  inSightAtOnce((sight?.solids ?? []).filter(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value));

export interface FateReading {
  readings: Fate[];
  /** Part of the solid `id` that dissolved, 0 to 1. */
  dissolved: number;
  /** The solid that lost most. */
  id: string;
}

/**
 * What becomes of the precipitate that was there before, or that came and went within this test. Undefined when there was none.
 * Counted in moles of the solids present at the fullest moment, so that dilution does not look like dissolving.
 */
export function fateReading(trace: TestTrace, grown: readonly Growth[]): FateReading | undefined {
  const { before, after, dry } = trace;
  if (!after) return undefined;
  const solids = new Map(after.solids.map((solid) => [solid.id, solid]));
  const left = after.solids.reduce((sum, { gramsPerDm3 }) => sum + gramsPerDm3, 0);
  if (dry) {
    const own = after.solids.filter(({ id }) => dry.own.has(id));
    const dissolved = Math.max(0, 1 - own.reduce((sum, { mol }) => sum + mol, 0) / dry.mol);
    return {
      readings: fates(
        dissolved,
        own.reduce((sum, { gramsPerDm3 }) => sum + gramsPerDm3, 0),
      ),
      dissolved,
      id: "",
    };
  }
  const wasThere = inPlainSight(before);
  const came = grown.filter(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value);
  const fullest = new Map<string, number>();
  for (const { id, mol } of came) fullest.set(id, mol);
  for (const { id, mol } of wasThere) fullest.set(id, mol);
  for (const { solids: during } of trace.during) {
    for (const { id, mol } of during) if (fullest.has(id)) fullest.set(id, Math.max(fullest.get(id) ?? 0, mol));
  }
  if (fullest.size === 0) return undefined;
  let most = 0;
  let remaining = 0;
  let main = "";
  let mainLost = -1;
  let mainDissolved = 0;
  for (const [id, mol] of fullest) {
    const now = Math.min(solids.get(id)?.mol ?? 0, mol);
    most += mol;
    remaining += now;
    if (mol - now > mainLost) {
      mainLost = mol - now;
      mainDissolved = 1 - now / mol;
      main = id;
    }
  }
  const dissolved = 1 - remaining / most;
  return { readings: fates(dissolved, left), dissolved: mainDissolved, id: main };
}

/**
 * What could be said of a solid of which this part has dissolved and so much is left. A faint one that is only thinned below sight has not
 * dissolved in part: who looks closely finds it there, others take it for gone.
 */
export function fates(dissolved: number, leftGramsPerDm3: number): Fate[] {
  const keeps = dissolved < VISIBILITY.dissolvesBelow.value;
  if (leftGramsPerDm3 < VISIBILITY.unseen.value) return keeps ? ["dissolves", "remains"] : ["dissolves"];
  if (keeps) return leftGramsPerDm3 < VISIBILITY.visible.value ? ["remains", "dissolves"] : ["remains"];
  if (leftGramsPerDm3 < VISIBILITY.visible.value) return ["dissolves", "partly dissolves"];
  if (dissolved < VISIBILITY.partlyFrom.value) return ["remains", "partly dissolves"];
  if (leftGramsPerDm3 < VISIBILITY.certain.value) return ["partly dissolves", "dissolves"];
  return ["partly dissolves"];
}
