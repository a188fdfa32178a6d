/** What careful and quick hands see, and what one precipitate hides of another. */
import { describe, expect, test } from "vitest";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { cm3, drops, excess, saltWith, show, take } from "./show.ts";

describe("a few drops of ammonia: who stops in time sees the precipitate whole, who does not sees it go", () => {
  test("silver: brown, or brown and gone, or missed; in excess gone, or nothing more to see", () => {
    const [few, much] = show(saltWith("Ag+"), [take, drops("NH3(aq)")], [excess("NH3(aq)")]);
    expect(few.readings).toEqual([
      { precipitate: { colour: "brown", amount: "plain" } },
      { precipitate: { colour: "brown", amount: "plain" }, fate: "dissolves", solution: "colourless" },
      { none: true },
    ]);
    expect(much.readings).toEqual([{ fate: "dissolves", solution: "colourless" }, { none: true }]);
  });

  test("copper(II): light blue, or some of it gone into a deep blue solution; in excess deep blue", () => {
    const [few, much] = show(saltOf("Cu^2+", "SO4^2-").ions, [take, drops("NH3(aq)")], [excess("NH3(aq)")]);
    expect(few.readings).toEqual([
      { precipitate: { colour: "light blue", amount: "plain" } },
      { precipitate: { colour: "light blue", amount: "plain" }, fate: "partly dissolves", solution: "deep blue" },
    ]);
    expect(much.readings).toEqual([{ fate: "dissolves", solution: "deep blue" }]);
  });

  test("aluminium does not dissolve in ammonia, so the count of drops is no matter", () => {
    const [few, much] = show(saltWith("Al^3+"), [take, drops("NH3(aq)")], [excess("NH3(aq)")]);
    expect(few.readings).toEqual([{ precipitate: { colour: "white", amount: "plain" } }]);
    expect(much.readings).toEqual([{ fate: "remains" }]);
  });
});

describe("silver chloride and ammonia", () => {
  const silver = [take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")];

  test("sodium chloride: white, and it goes in ammonia", () => {
    const [first, then] = show(saltWith("Cl-"), silver, [excess("NH3(aq)")]);
    expect(first.readings).toEqual([{ precipitate: { colour: "white", amount: "plain" } }]);
    expect(then.readings).toEqual([{ fate: "dissolves", solution: "colourless" }]);
  });

  test("aluminium chloride: the white that stays is aluminium hydroxide, so nothing can be read of silver chloride", () => {
    const [first, then] = show(saltOf("Al^3+", "Cl-").ions, silver, [excess("NH3(aq)")]);
    expect(first.readings).toEqual([{ precipitate: { colour: "white", amount: "plain" } }]);
    expect(first.events.map(({ phase }) => phase)).toEqual(["AgCl(s)"]);
    expect(then.readings).toContainEqual({ fate: "remains" });
    expect(then.readings).not.toContainEqual(expect.objectContaining({ fate: "dissolves" }));
    const forming = then.events.find(({ kind }) => kind === "precipitate forms");
    expect(forming?.phase).toMatch(/^Al\(OH\)3\(s/);
    expect(then.events).toContainEqual(expect.objectContaining({ kind: "precipitate dissolves", phase: "AgCl(s)" }));
  });
});

test("zinc chloride, silver nitrate, then ammonia: zinc hydroxide comes and goes on the way, and all is clear at the end", () => {
  const [, then] = show(
    saltOf("Zn^2+", "Cl-").ions,
    [take, cm3("HNO3(aq)", 0.5), cm3("AgNO3(aq)", 1)],
    [excess("NH3(aq)")],
  );
  expect(then.readings[0]).toMatchObject({ fate: "dissolves", solution: "colourless" });
});
