/** Amounts as a balance and a measuring cylinder show them. */
import { withFigures } from "../figures.ts";

/** Below this a cylinder is read to a tenth. */
const WHOLE_CM3 = 20;

/** "8.49 g", "25 cm³", never with more figures than the prep room can use. A small mass keeps two figures. */
export function amount(value: number, unit: "g" | "cm3"): string {
  if (unit === "cm3")
    return withFigures(`${value >= WHOLE_CM3 ? Math.round(value) : Number(value.toFixed(1))}\u00a0cm³`);
  return withFigures(`${value >= 0.1 ? value.toFixed(2) : value.toPrecision(2)}\u00a0g`);
}
