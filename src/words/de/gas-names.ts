/** Names of the gases that a practical may give off. Usual school names, no source. */
import type { GivenOff } from "../../engine/practical.ts";

export const GAS_NAMES: Readonly<Record<GivenOff, string>> = {
  NH3: "Ammoniak",
  CO2: "Kohlenstoffdioxid",
  SO2: "Schwefeldioxid",
  H2: "Wasserstoff",
  O2: "Sauerstoff",
  Cl2: "Chlor",
  NO2: "Stickstoffdioxid",
  HCl: "Chlorwasserstoff",
  H2O: "Wasserdampf",
  SO3: "Schwefeltrioxid",
  HBr: "Bromwasserstoff",
  HI: "Iodwasserstoff",
  H2S: "Schwefelwasserstoff",
  Br2: "Brom",
  I2: "Ioddampf",
};
