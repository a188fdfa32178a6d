/**
 * How high a volume of liquid stands in a round-bottomed tube, and the reverse.
 *
 * Method: the bore is a cylinder of radius r = outside diameter / 2 - wall on a hemisphere of the same radius; depth is measured from
 * the inside of the bottom, the meniscus and the flared rim are ignored. Volume of a spherical cap of height h: pi h^2 (3r - h) / 3
 * (standard mensuration). Its inverse is the root between 0 and r of h^3 - 3 r h^2 + 3V/pi = 0, by Viete's trigonometric solution.
 * Valid to about half a millimetre of depth; the wall is the weak figure, so see `depthRange`.
 */
import type { TubeSize } from "./bench-plan.ts";

/** What decides a depth: a tube's outside diameter and wall. */
type Bore = Pick<TubeSize, "outsideMm" | "wallMm">;

const MM3_IN_CM3 = 1000;

/** Inside diameter, mm. Throws a RangeError when the walls leave no bore. */
export function boreMm({ outsideMm, wallMm }: Bore): number {
  const bore = outsideMm - 2 * wallMm;
  if (!(bore > 0)) {
    throw new RangeError(
      `tube: found a wall of ${wallMm} mm in a tube ${outsideMm} mm wide, expected a wall below ${outsideMm / 2} mm`,
    );
  }
  return bore;
}

/** Volume below `depthMm`, cm3. Depth from 0 mm; above the rim the cylinder is continued. */
export function volumeAtDepth(depthMm: number, tube: Bore): number {
  refuseNegative(depthMm, "a depth", "mm");
  const r = boreMm(tube) / 2;
  const cap = Math.min(depthMm, r);
  const mm3 = (Math.PI * cap ** 2 * (3 * r - cap)) / 3 + Math.PI * r ** 2 * (depthMm - cap);
  return mm3 / MM3_IN_CM3;
}

/** Height at which `volumeCm3` of liquid stands, mm. Above the rim the cylinder is continued: compare with `brimCapacity`. */
export function depthOfVolume(volumeCm3: number, tube: Bore): number {
  refuseNegative(volumeCm3, "a volume", "cm3");
  const r = boreMm(tube) / 2;
  const mm3 = volumeCm3 * MM3_IN_CM3;
  const hemisphere = (2 / 3) * Math.PI * r ** 3;
  if (mm3 >= hemisphere) return r + (mm3 - hemisphere) / (Math.PI * r ** 2);
  // The half-angle form of the root: subtracts no nearly equal numbers, so a single drop keeps all its digits.
  const angle = 2 * Math.asin(Math.sqrt(mm3 / (2 * hemisphere)));
  return r * (2 * Math.sin(angle / 6) ** 2 + Math.sqrt(3) * Math.sin(angle / 3));
}

/** Volume of the tube filled to the brim, cm3; the bottom is taken as thick as the wall. */
export function brimCapacity(size: Pick<TubeSize, "lengthMm" | "outsideMm" | "wallMm">): number {
  return volumeAtDepth(size.lengthMm - size.wallMm, size);
}

/** Least and greatest depth of `volumeCm3`, mm, for the walls such tubes are sold with: a thick wall raises the liquid. */
export function depthRange(
  volumeCm3: number,
  size: Pick<TubeSize, "outsideMm" | "wallRangeMm">,
): { leastMm: number; greatestMm: number } {
  const [thin, thick] = size.wallRangeMm;
  return {
    leastMm: depthOfVolume(volumeCm3, { outsideMm: size.outsideMm, wallMm: thin }),
    greatestMm: depthOfVolume(volumeCm3, { outsideMm: size.outsideMm, wallMm: thick }),
  };
}

function refuseNegative(amount: number, what: string, unit: string): void {
  if (!(amount >= 0)) throw new RangeError(`tube: found ${what} of ${amount} ${unit}, expected 0 ${unit} or more`);
}
