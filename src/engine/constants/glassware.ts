/**
 * Round-bottomed tubes as school catalogues name them. Lengths and outside diameters are the nominal sizes of the trade; the walls
 * are the weak figures. ISO 4142 sets walls by series, but its table of dimensions was not read: the walls here are from memory of it
 * (light series 0.5 to 0.8 mm, medium and heavy 1.0 to 1.2 mm for 12 to 18 mm tubes, 1.2 to 1.5 mm for 24 to 30 mm).
 */
export interface TubeSize {
  id: string;
  name: string;
  lengthMm: number;
  outsideMm: number;
  wallMm: number;
  /** Thinnest and thickest wall such a tube is likely to have, mm: decides how far a fill mark can be trusted. */
  wallRangeMm: readonly [number, number];
  source: string;
}

const SIZES = "old British catalogue sizes, common practice, no source";
const WALLS = "walls from memory of ISO 4142";

const test = (
  lengthMm: number,
  outsideMm: number,
  wallMm: number,
  wallRangeMm: readonly [number, number],
  note = "",
): TubeSize => ({
  id: `test-tube-${lengthMm}x${outsideMm}`,
  name: `test-tube ${lengthMm} × ${outsideMm} mm`,
  lengthMm,
  outsideMm,
  wallMm,
  wallRangeMm,
  source: `${SIZES}; ${WALLS}${note && `; ${note}`}`,
});

const boiling = (lengthMm: number, outsideMm: number, source: string): TubeSize => ({
  id: `boiling-tube-${lengthMm}x${outsideMm}`,
  name: `boiling tube ${lengthMm} × ${outsideMm} mm`,
  lengthMm,
  outsideMm,
  wallMm: 1.2,
  wallRangeMm: [0.8, 1.5],
  source: `${source}; ${WALLS}`,
});

/** Tubes for solutions that stay cold. */
export const TEST_TUBES: readonly TubeSize[] = [
  test(75, 10, 0.8, [0.5, 1.2], "also sold as an ignition tube"),
  test(75, 12, 0.8, [0.5, 1.2]),
  test(100, 12, 0.9, [0.5, 1.2]),
  test(100, 16, 1, [0.6, 1.5]),
  test(125, 16, 1, [0.6, 1.5]),
  test(150, 16, 1, [0.6, 1.5]),
  {
    ...test(150, 18.5, 1.1, [0.6, 1.5], "18.5 mm stands for both the 18 and the 19 mm tube"),
    id: "test-tube-150x18",
    name: "test-tube 150 × 18 or 19 mm",
  },
];

/** Tubes for solutions that are warmed or boiled. */
export const BOILING_TUBES: readonly TubeSize[] = [
  boiling(150, 24, SIZES),
  boiling(150, 25, SIZES),
  boiling(200, 25, "Cambridge 0620/5 Confidential Instructions, November 2002: about 200 mm by about 25 mm"),
];

/** For heating solids: borosilicate, because soda glass cracks in a roaring flame (common practice, no source). */
export const HARD_GLASS_TUBE: TubeSize = {
  ...test(125, 16, 1, [0.8, 1.5], "borosilicate"),
  id: "hard-glass-tube-125x16",
  name: "hard-glass tube 125 × 16 mm",
};

/** Sizes a plan starts from; a reader may choose others. */
export const DEFAULT_TUBES = { testTube: "test-tube-125x16", boilingTube: "boiling-tube-150x25" } as const;
