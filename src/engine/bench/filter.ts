/** Filtering and washing: a tube is parted into its solids and its liquid, and one of them goes on. */
import { VISIBILITY } from "../constants/visibility.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { compileDatabase, WATER } from "../equilibrium/species.ts";
import { type Amounts, addAmounts, amountsOf } from "./amounts.ts";
import type { Components } from "./composition.ts";
import { CLINGS } from "./portion.ts";
import { METALS } from "./redox/substances.ts";
import { look, type SolidSeen } from "./sight.ts";
import { settle, type Tube } from "./tube.ts";

/** What does not go on. */
export interface SetAside {
  /** mol by id, as it was in the mixture. */
  amounts: Amounts;
  /** The solids of it, still in sight on the paper. */
  solids: SolidSeen[];
}

const { phases, components } = compileDatabase();
const solidsOf = new Map(phases.flatMap((phase) => (phase.kind === "solid" ? [[phase.id, phase]] : [])));

/**
 * Filters a tube that holds water and keeps one part. Solid below sight goes through the paper; pieces of metal count as solid. No liquid
 * is lost on the way to the filtrate.
 * @throws NoEquilibrium when the solver gives up
 */
export function filter(tube: Tube, keep: "filtrate" | "residue", solve: Solver): SetAside {
  const result = settle(tube, solve);
  const solids = look(result).solids.filter(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.unseen.value);
  const onPaper: Amounts = new Map(solids.map(({ id, mol }) => [id, mol]));
  if (keep === "residue") return { amounts: drain(tube, onPaper, solve), solids: [] };
  for (const [id, mol] of Object.entries(componentsIn(onPaper))) tube.contents[id] = (tube.contents[id] ?? 0) - mol;
  for (const metal of METALS) delete tube.contents[metal];
  restart(tube, solve);
  return { amounts: onPaper, solids };
}

/**
 * Washes a residue: what liquid there is gives way to water, of which as much clings as before.
 * @throws NoEquilibrium when the solver gives up
 */
export function wash(tube: Tube, solve: Solver): SetAside {
  const onPaper: Amounts = new Map(look(settle(tube, solve)).solids.map(({ id, mol }) => [id, mol]));
  return { amounts: drain(tube, onPaper, solve, "water"), solids: [] };
}

/** Lets the liquid run off, all but what clings, which is the same liquid or water. Returns what went. */
function drain(tube: Tube, onPaper: Amounts, solve: Solver, wetWith: "liquid" | "water" = "liquid"): Amounts {
  const waterKg = Math.min(CLINGS.value / 1000, tube.waterKg);
  const stays = wetWith === "water" ? 0 : waterKg / tube.waterKg;
  const gone: Amounts = new Map();
  if (tube.result) addAmounts(gone, amountsOf(tube.result), 1 - stays);
  addAmounts(gone, onPaper, stays - 1);
  const solid = componentsIn(onPaper);
  // A hydroxide that ammonia precipitated lacks H+ which nobody poured in: its own components count beside those of the tube.
  for (const id of new Set([...Object.keys(tube.contents), ...Object.keys(solid)])) {
    if ((METALS as readonly string[]).includes(id)) continue;
    const own = solid[id] ?? 0;
    tube.contents[id] = own + ((tube.contents[id] ?? 0) - own) * stays;
  }
  tube.waterKg = waterKg;
  restart(tube, solve);
  return gone;
}

/** Components of some solids, mol. */
function componentsIn(solids: Amounts): Components {
  const held: Components = {};
  for (const [id, mol] of solids) {
    const phase = solidsOf.get(id);
    if (!phase) continue;
    for (const [index, moles] of phase.nu) {
      const component = components[index].id;
      held[component] = (held[component] ?? 0) + moles * mol;
    }
    held[WATER] = (held[WATER] ?? 0) + phase.water * mol;
  }
  return held;
}

function restart(tube: Tube, solve: Solver): void {
  for (const [id, mol] of Object.entries(tube.contents)) {
    if (id !== "H+" && id !== WATER && mol < NOTHING) delete tube.contents[id];
  }
  tube.result = undefined;
  tube.start = undefined;
  settle(tube, solve);
}

/** Rounding leaves this much of a component that has gone with the solid, mol. */
const NOTHING = 1e-13;
