import { expect, test } from "vitest";
import { orderOfWork } from "../../../src/engine/planning/order-of-work/order-of-work.ts";
import { rackRows } from "../../../src/engine/planning/rack-places.ts";
import { reagentOf } from "../../../src/engine/planning/reagent-plan.ts";
import { glassOf } from "../../../src/engine/planning/tube-choice.ts";
import { planTube } from "../../../src/engine/planning/tube-plan.ts";
import { CHOICE, planned } from "./small-procedure.ts";

const take = { take: "1 cm3" };
const drops = { add: "NaOH(aq)", drops: 5 };

test("the kind used first stands in front, tubes from left to right as they are begun, six in a row", () => {
  const practical = planned(
    [
      { label: "a", title: "Warmed", tests: [{ steps: [take, drops, { warm: true }] }] },
      { label: "b", title: "Cold", tests: [{ steps: [take, drops] }] },
      { label: "c", title: "Filtered", tests: [{ steps: [take, drops, { filter: "filtrate" }] }] },
    ],
    { letters: ["P", "Q", "R"] },
  );
  const tubes = practical.parts.flatMap((part) =>
    practical.samples.flatMap((sample) => planTube(part, [part.label], sample, glassOf(CHOICE), reagentOf).tubes),
  );
  const order = orderOfWork(practical, { people: 1, burners: 1, partsInOrder: true });
  expect(rackRows(tubes, order)).toEqual([
    { kind: "boiling tubes", places: [["P a"], ["Q a"], ["R a"]] },
    { kind: "test-tubes", places: [["P b"], ["Q b"], ["R b"], ["P c"], ["P c filtrate"], ["Q c"]] },
    { kind: "test-tubes", places: [["Q c filtrate"], ["R c"], ["R c filtrate"]] },
  ]);
});

test("a tube that is rinsed and used again keeps its place and carries one label after the other", () => {
  const practical = planned([
    { label: "a", title: "Cold", tests: [{ steps: [take, drops] }] },
    { label: "b", title: "Cold again", tests: [{ steps: [take, drops] }] },
  ]);
  const tubes = practical.parts.flatMap((part) =>
    practical.samples.flatMap((sample) => planTube(part, [part.label], sample, glassOf(CHOICE), reagentOf).tubes),
  );
  const limits = { "test-tube": 3 };
  const order = orderOfWork(practical, { people: 1, burners: 1, partsInOrder: true, tubes: limits });
  // Three clean tubes go to P a, Q a and P b; the first of them is free again when Q b is begun.
  expect(rackRows(tubes, order, limits)).toEqual([{ kind: "test-tubes", places: [["P a", "Q b"], ["Q a"], ["P b"]] }]);
});
