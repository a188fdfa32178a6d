/** What is said of observations to repeat, over the white precipitates (record ids in white-precipitates.ts). */
import { expect, test } from "vitest";
import {
  lookFor,
  placeName,
  thenLeft,
  unlisted,
  unlistedFirst,
} from "../../../src/components/conclude/repeat-words.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { SOMETHING_ELSE } from "../../../src/engine/deduction/something-else.ts";
import { recordOf, whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const table = whitePrecipitates(["P", "Q"]);

test("an observation that is listed", () => {
  // Zinc's hydroxide is white and dissolves in ammonia (Q042, Q043).
  const record = recordOf({ P: { "a(ii)": "dissolves", "b(i)": "yellow", "b(ii)": "dissolves", c: "white" } });
  const [{ places, leadsTo }] = deduce(table, record).repeats;
  expect(places.map(placeName)).toEqual(["b(i) for P"]);
  expect(lookFor(table, places)).toBe("look for white");
  expect(thenLeft(table, leadsTo)).toBe("P may be Zn^2+ Cl-, Q may be one of 12 salts");
  expect(unlisted([{ places, leadsTo }], record)).toEqual([]);
});

test("a place where something else was seen is named, and comes before the others of its set", () => {
  const record = recordOf({ P: { "b(i)": "yellow" }, Q: { c: "none" } });
  record.Q["a(i)"] = SOMETHING_ELSE;
  const { repeats } = deduce(table, record);
  expect(unlisted(repeats, record)).toEqual(["a(i) for Q"]);
  const [{ places }] = repeats;
  expect(places.map(placeName)).toEqual(["b(i) for P", "a(i) for Q"]);
  const inTurn = unlistedFirst(places, record);
  expect(inTurn.map(placeName)).toEqual(["a(i) for Q", "b(i) for P"]);
  expect(lookFor(table, inTurn)).toBe("look for white at a(i) for Q; white or none at b(i) for P");
});
