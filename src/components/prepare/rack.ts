/** The tubes of a bench plan as they are drawn: tubes filled alike stand once, with every label they carry. */
import { KINDS, ofAnySample, tubeSize } from "#words/bench-plan.ts";
import { BENCH_PRACTICE } from "../../engine/constants/bench-practice.ts";
import { BOILING_TUBES, HARD_GLASS_TUBE, TEST_TUBES, type TubeSize } from "../../engine/constants/glassware.ts";
import type { BenchPlan, PlannedTube } from "../../engine/planning/bench-plan.ts";
import { brimCapacity } from "../../engine/planning/geometry.ts";

/** A tube as it is drawn; where its sizes come from stays in the engine. */
export type DrawnSize = Omit<TubeSize, "source">;

/** Tubes that can stand for each other. */
export interface TubeKind {
  name: string;
  sizes: DrawnSize[];
}

/** What a rack is drawn from. */
export interface DrawnRack {
  tubes: RackTube[];
  /** The kinds of tube among them. */
  kinds: TubeKind[];
  /** Part of the brim volume above which a tube cannot be shaken. */
  shakenFill: number;
}

/** The rack of a bench plan, in tubes of the planned sizes. */
export function drawnRack(plan: Pick<BenchPlan, "tubes" | "limewater">): DrawnRack {
  const tubes = rackOf([...plan.tubes, ...plan.limewater], (tube) => brimCapacity(tube.size));
  return { tubes, kinds: kindsOf(tubes), shakenFill: BENCH_PRACTICE.shakenFill.value };
}

/** The kinds of tube a rack holds, each with all sizes on offer: handed to the island, so that it need not carry the whole store. */
export function kindsOf(rack: readonly RackTube[]): TubeKind[] {
  return [
    { name: KINDS.cold, sizes: TEST_TUBES },
    { name: KINDS.heated, sizes: BOILING_TUBES },
    { name: KINDS.hardGlass, sizes: [HARD_GLASS_TUBE] },
  ]
    .filter(({ sizes }) => rack.some((tube) => sizes.some(({ id }) => id === tube.size)))
    .map(({ name, sizes }) => ({
      name,
      sizes: sizes.map(({ source: _, ...drawn }) => ({ ...drawn, name: tubeSize(drawn.name) })),
    }));
}

export interface RackTube {
  /** What is written on the tubes that are filled like this one: "K a", "L a". */
  labels: string[];
  /** Volume up to each mark, cm3, and what is added to reach it. */
  marks: { cm3: number; what: string }[];
  /** Solid put in first, g. */
  solidG?: number;
  /** Greatest filling when heated, as a part of the brim volume; absent when it stays cold. */
  heatedFill?: number;
  /** Id of the planned size. */
  size: string;
}

/** `brim`: brim volume of the planned size, cm3. */
export function rackOf(tubes: readonly PlannedTube[], brim: (tube: PlannedTube) => number): RackTube[] {
  const rack = new Map<string, RackTube>();
  for (const tube of tubes) {
    const key = [
      tube.part,
      tube.size.id,
      tube.heatingLimitCm3,
      tube.solidG,
      tube.holds,
      ...tube.marks.map((mark) => mark.cm3),
    ].join();
    const alike = rack.get(key);
    if (alike) {
      alike.labels.push(tube.label);
      alike.marks.forEach((mark, index) => {
        if (mark.what !== tube.marks[index].what) mark.what = ofAnySample(mark.what);
      });
    } else {
      rack.set(key, {
        labels: [tube.label],
        marks: tube.marks.map(({ cm3, what }) => ({ cm3, what })),
        ...(tube.solidG && { solidG: tube.solidG }),
        ...(tube.heatingLimitCm3 && { heatedFill: Number((tube.heatingLimitCm3 / brim(tube)).toFixed(4)) }),
        size: tube.size.id,
      });
    }
  }
  return [...rack.values()];
}
