/** The salts of the school store that hold an ion, as solids: how they look, what water does to them, and what a flame does. */
import { OR } from "#words/ions.ts";
import { heatSolid } from "../../engine/bench/heat/heat-solid.ts";
import { NOT_GIVEN_OUT } from "../../engine/constants/not-given-out.ts";
import { type Salt, salts } from "../../engine/constants/salts.ts";
import { step } from "../../engine/practical/step.ts";
import type { GivenOff, Part } from "../../engine/practical.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { predictor } from "../predictor.ts";

export interface StoreSolid {
  salt: Salt;
  inWater: string;
  /** Absent where the engine knows no figures or the solid is not to be heated in class. */
  heated?: { seen: string; gases: GivenOff[]; traces: GivenOff[]; droplets: boolean };
}

/** Amounts are common practice, no source. */
const IN_WATER = partOf([{ take: "0.05 g" }, { add: "H2O(l)", volume: "1 cm3" }]);
const HEATED = partOf([{ take: "0.2 g" }, { heat: "strongly" }]);

function partOf(written: readonly Readonly<Record<string, string>>[]): Part {
  return { label: "a", title: "solid", tests: [{ steps: written.map((one) => step.parse(one)) }] };
}

const tried = new Map<string, StoreSolid>();

/** In the order of the store. */
export const storeSolids = (ion: string): StoreSolid[] =>
  salts.filter(({ cations, anions }) => [...cations, ...anions].includes(ion)).map(solidOf);

/** All of them. */
export const allSolids = (): StoreSolid[] => salts.map(solidOf);

const isNotHeated = ({ ions }: Salt): boolean =>
  NOT_GIVEN_OUT.some((row) => row.step === "heat solid" && row.ions.every((ion) => ion in ions));

function solidOf(salt: Salt): StoreSolid {
  const before = tried.get(salt.formula);
  if (before) return before;
  const shown = (part: Part) => predictor.predict({ ions: salt.ions, solid: salt.formula }, [part]).get("a");
  const wet = shown(IN_WATER);
  const dry = shown(HEATED);
  const words = (one: typeof wet) => (one?.readings ?? []).map((seen) => phrase(seen, "solid")).join(OR);
  const { traces } = heatSolid(salt.formula, "strongly");
  const one: StoreSolid = {
    salt,
    inWater: words(wet),
    ...(dry &&
      dry.readings.length > 0 &&
      !isNotHeated(salt) && {
        heated: {
          seen: words(dry),
          gases: dry.gases.filter((gas) => !traces.includes(gas)),
          traces: dry.gases.filter((gas) => traces.includes(gas)),
          droplets: dry.readings.some(({ droplets }) => droplets),
        },
      }),
  };
  tried.set(salt.formula, one);
  return one;
}
