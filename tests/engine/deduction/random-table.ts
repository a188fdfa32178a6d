/** Small random tables with records, for comparison with brute force. No chemistry in them. */
import fc from "fast-check";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import type { Observation } from "../../../src/engine/practical.ts";

const LABELS = ["P", "Q", "R", "S", "T"];
/** Sights that are taken for one another more easily and less. */
const SIGHTS: Observation[] = [
  { none: true },
  { precipitate: { colour: "white", amount: "plain" } },
  { precipitate: { colour: "cream", amount: "plain" } },
  { effervescence: true },
];
const READINGS = SIGHTS.length;
const CATIONS = ["Na+", "Zn^2+", "Al^3+", "Pb^2+"];
const ANIONS = ["Cl-", "SO4^2-", "NO3-"];

const SALTS = CATIONS.flatMap((cation) =>
  ANIONS.map((anion) => ({ formula: `${cation} ${anion}`, cations: [cation], anions: [anion] })),
);

/** A double salt and mixtures, in the order a paper may list them. */
const SEVERAL = [
  { formula: "K Al SO4", cations: ["Na+", "Al^3+"], anions: ["SO4^2-"] },
  { formula: "Pb + Zn NO3", cations: ["Pb^2+", "Zn^2+"], anions: ["NO3-"] },
  { formula: "Zn SO4 + Zn Cl", cations: ["Zn^2+"], anions: ["SO4^2-", "Cl-"] },
  { formula: "Na Cl + Zn SO4", cations: ["Zn^2+", "Na+"], anions: ["Cl-", "SO4^2-"] },
];

/** Masks lean to a single reading, as predictions do; 0 is a salt without a prediction. */
const mask = fc.oneof(
  { weight: 5, arbitrary: fc.nat(READINGS - 1).map((reading) => 1 << reading) },
  { weight: 2, arbitrary: fc.nat((1 << READINGS) - 1) },
);

/** A list of at most two, empty more often than not. */
const rarely = <T>(one: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.array(one, { maxLength: 2 }) });

/** `given` in order, each kept or not, at least `least` of them. */
const some = <T>(given: T[], least: number) => fc.subarray(given, { minLength: least });

/** Tables of at most so many samples. */
export const tablesWithRecord = (most: number): fc.Arbitrary<{ table: PredictionTable; record: TableRecord }> =>
  fc
    .record({
      samples: fc.integer({ min: 1, max: most }),
      cells: fc.integer({ min: 1, max: 4 }),
      sets: fc.integer({ min: 1, max: 2 }),
      several: fc.boolean(),
    })
    .chain((size) => {
      const labels = LABELS.slice(0, size.samples);
      const group = fc.record({
        samples: some(labels, Math.min(2, labels.length)),
        ion: fc.constantFrom("cation", "anion"),
      });
      const groups = rarely(group);
      const howMany = fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined, freq: 2 });
      const cell = fc.record({
        done: some(labels, 1),
        agrees: fc.array(mask, { minLength: READINGS, maxLength: READINGS }),
      });
      const all = size.several ? [...SALTS.slice(0, 6), ...SEVERAL] : SALTS;
      const set = some(
        all.map((_, salt) => salt),
        1,
      ).chain((chosen) => {
        const salts = chosen.slice(0, 8);
        const row = fc.array(mask, { minLength: size.cells, maxLength: size.cells });
        return fc.array(row, { minLength: salts.length, maxLength: salts.length }).map((accepts) => ({
          salts,
          accepts,
          main: accepts.map((each) => each.map((own) => (own === 0 ? -1 : 31 - Math.clz32(own)))),
          // The lowest of several readings is shown only at the border.
          atBorder: accepts.flatMap((each, row) =>
            each.flatMap((own, cell): [number, number, number][] =>
              (own & (own - 1)) !== 0 && row % 3 === 0 ? [[row, cell, own & -own]] : [],
            ),
          ),
          facts: accepts.map((each) => each.map(() => -1)),
          cannotBe: [],
        }));
      });
      const cells = fc.array(cell, { minLength: size.cells, maxLength: size.cells }).map((all) =>
        all.map(({ done, agrees }, index) => ({
          id: `${"abcd"[index]}`,
          samples: done,
          readings: SIGHTS,
          words: agrees.map((_, reading) => `reading ${reading}`),
          agrees: agrees.map((others, reading) => others | (1 << reading)),
          comesOff: [],
        })),
      );
      const reading = fc.option(fc.nat(READINGS - 1), { nil: undefined, freq: 6 });
      return fc.record({
        table: fc.record({
          salts: fc.constant(all),
          cells,
          facts: fc.constant([]),
          sets: fc.array(set, { minLength: size.sets, maxLength: size.sets }),
          samples: fc.tuple(
            ...labels.map((label) => fc.record({ label: fc.constant(label), set: fc.nat(size.sets - 1) })),
          ),
          paper: fc.record({
            cations: fc.constant(CATIONS),
            anions: fc.constant(ANIONS),
            inAll: fc.record({ cations: howMany, anions: howMany }),
            share: groups,
            differ: groups,
            same: rarely(some(labels, Math.min(2, labels.length))),
            contains: rarely(
              fc.record(
                {
                  ion: fc.constantFrom(...CATIONS, ...ANIONS),
                  samples: some(labels, 1),
                  count: fc.nat(labels.length),
                },
                { requiredKeys: ["ion"] },
              ),
            ),
          }),
        }) as unknown as fc.Arbitrary<PredictionTable>,
        record: fc
          .array(fc.array(reading, { minLength: size.cells, maxLength: size.cells }), {
            minLength: size.samples,
            maxLength: size.samples,
          })
          .map((rows) =>
            Object.fromEntries(
              rows.map((row, s) => [
                labels[s],
                Object.fromEntries(
                  row.flatMap((value, c) => (value === undefined ? [] : [["abcd"[c], value] as const])),
                ),
              ]),
            ),
          ),
      });
    });

export const tableWithRecord = tablesWithRecord(3);
