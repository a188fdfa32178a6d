/** One couple oxidises another: the balanced equation, and what one turn of it does to the components. */
import type { Components } from "../composition.ts";
import type { HalfEquation, Part } from "./half-equation.ts";

export interface PairEquation {
  /** mhchem with states, balanced, smallest whole numbers; with OH- instead of H+ in alkali. */
  text: string;
  /** Change of each component (water and H+ among them) for one turn, mol. */
  change: Components;
  /** Components one turn must find, mol, H+ and water aside. */
  needs: Components;
  /** Solids and gases one turn starts from. */
  from: Part[];
  /** Electrons passed in one turn. */
  electrons: number;
}

/** Couples the two half-equations so that all electrons are taken up; the pH decides between H+ and OH-. */
export function pairEquation(oxidant: HalfEquation, reductant: HalfEquation, pH: number): PairEquation {
  const key = `${oxidant.couple.id} with ${reductant.couple.id} ${Number(pH > NEUTRAL)} ${Number(pH > ALKALI_THERE)}`;
  const known = written.get(key);
  if (known) return known;
  const equation = couple(oxidant, reductant, pH);
  written.set(key, equation);
  return equation;
}

/** Equations written so far: every drop asks for the same ones again, and the pH matters to them by its two limits only. */
const written = new Map<string, PairEquation>();

function couple(oxidant: HalfEquation, reductant: HalfEquation, pH: number): PairEquation {
  const common = greatestDivisor(oxidant.electrons, reductant.electrons);
  const times = { oxidant: reductant.electrons / common, reductant: oxidant.electrons / common };
  const net = new Map<string, number>();
  const known = new Map<string, Part>();
  const count = (parts: readonly Part[], factor: number) => {
    for (const part of parts) {
      known.set(part.id, part);
      net.set(part.id, (net.get(part.id) ?? 0) + factor * part.coefficient);
    }
  };
  count(oxidant.shownOxidised, -times.oxidant);
  count(reductant.shownReduced, -times.reductant);
  count(oxidant.shownReduced, times.oxidant);
  count(reductant.shownOxidised, times.reductant);
  neutralise(net, pH);
  const divisor = [...net.values()].filter((n) => n !== 0).reduce((a, b) => greatestDivisor(a, Math.abs(b)), 0);
  for (const [id, n] of net) net.set(id, n / divisor);

  const change: Components = {};
  const needs: Components = {};
  for (const [id, n] of net) {
    for (const [component, moles] of Object.entries(known.get(id)?.components ?? WATER_PARTS[id])) {
      change[component] = (change[component] ?? 0) + n * moles;
      if (n < 0 && !(component in WATER_PARTS)) needs[component] = (needs[component] ?? 0) - n * moles;
    }
  }
  for (const [component, moles] of Object.entries(change)) if (moles === 0) delete change[component];
  return {
    text: `${side(net, -1)} -> ${side(net, 1)}`,
    change,
    needs,
    from: [...net].flatMap(([id, n]) => {
      const part = known.get(id);
      return n < 0 && part && part.state !== "dissolved" ? [part] : [];
    }),
    electrons: (times.oxidant * oxidant.electrons) / divisor,
  };
}

const WATER_PARTS: Readonly<Record<string, Components>> = {
  "H+": { "H+": 1 },
  "OH-": { "H+": -1, H2O: 1 },
  H2O: { H2O: 1 },
};

/** pH from which alkali is plainly there to be used up; below it, what weak bases leave of OH- is no reagent. Our choice. */
const ALKALI_THERE = 11;
const NEUTRAL = 7;

/** H+ and OH- do not stand in one equation: above pH 7 it is written with OH-, unless that would use up alkali that is not there. */
function neutralise(net: Map<string, number>, pH: number): void {
  const protons = (net.get("H+") ?? 0) - (net.get("OH-") ?? 0);
  const alkaline = pH > (protons > 0 ? ALKALI_THERE : NEUTRAL);
  net.set("H2O", (net.get("H2O") ?? 0) + (net.get(alkaline ? "H+" : "OH-") ?? 0));
  net.set("H+", alkaline ? 0 : protons);
  net.set("OH-", alkaline ? -protons : 0);
}

/** Reactants first as the half-equations name them; H+, OH- and water last. */
function side(net: ReadonlyMap<string, number>, sign: number): string {
  const terms = [...net].filter(([, n]) => n * sign > 0);
  const last = ([id]: [string, number]) => (id === "H2O" ? 2 : id in WATER_PARTS ? 1 : 0);
  return terms
    .sort((a, b) => last(a) - last(b))
    .map(([id, n]) => (Math.abs(n) === 1 ? shown(id) : `${Math.abs(n)} ${shown(id)}`))
    .join(" + ");
}

/** As equations show a substance: with its state, the form of a solid left out. */
function shown(id: string): string {
  if (id === "H2O") return "H2O(l)";
  const plain = id.replace(/, [^()]*\)$/, ")");
  return /\((s|g|aq)\)$/.test(plain) ? plain : `${plain}(aq)`;
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}
