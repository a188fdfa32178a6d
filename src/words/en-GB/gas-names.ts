/** Names of the gases that a practical may give off. Usual school names, no source. */
import type { GivenOff } from "../../engine/practical.ts";

export const GAS_NAMES: Readonly<Record<GivenOff, string>> = {
  NH3: "ammonia",
  CO2: "carbon dioxide",
  SO2: "sulfur dioxide",
  H2: "hydrogen",
  O2: "oxygen",
  Cl2: "chlorine",
  NO2: "nitrogen dioxide",
  HCl: "hydrogen chloride",
  H2O: "water vapour",
  SO3: "sulfur trioxide",
  HBr: "hydrogen bromide",
  HI: "hydrogen iodide",
  H2S: "hydrogen sulfide",
  Br2: "bromine",
  I2: "iodine vapour",
};
