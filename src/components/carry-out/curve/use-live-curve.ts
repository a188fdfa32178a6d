/** What a reader has chosen for a curve, what has been asked of the engine, and which curve is on the page. */
import { useState } from "preact/hooks";
import * as say from "#words/curves.ts";
import type { LiveCurve, StrengthRange } from "../../../build/live-curves.ts";
import type { ChangedCurve, CurveChange } from "../../../engine/bench/changed-curve.ts";
import { figures } from "../../figures.ts";
import { plain } from "../../sentence.ts";
import { madeUpOf } from "./curve-words.ts";
import { readStrength } from "./typed-strength.ts";

/** A strength that can be typed. */
export type Field = "molPerDm3" | "reagentMolPerDm3";

/** The engine comes only now. */
async function askEngine(id: string, { source }: LiveCurve, change: CurveChange): Promise<ChangedCurve | undefined> {
  try {
    const { desk } = await import("./curve-desk.ts");
    return await desk.ask(id, source, change);
  } catch {
    // A browser may keep a module that did not come as failed for as long as the page lives; asking again would be refused for ever.
    return { refused: say.REFUSED.notLoaded };
  }
}

const typed = (strength: number | undefined): string => (strength === undefined ? "" : figures(strength));
const textsOf = (change: CurveChange): Record<Field, string> => ({
  molPerDm3: typed(change.molPerDm3),
  reagentMolPerDm3: typed(change.reagentMolPerDm3),
});

/** The state of one curve. `id` names it among the curves of the page. */
export function useLiveCurve(live: LiveCurve, id: string) {
  const { own, reagent } = live;
  const ranges: Record<Field, StrengthRange | undefined> = {
    molPerDm3: live.sampleRange,
    reagentMolPerDm3: reagent.range,
  };
  const [shown, show] = useState({ curve: live.curve, change: own });
  const [wanted, want] = useState(own);
  const [texts, write] = useState(textsOf(own));
  const [faults, blame] = useState<Partial<Record<Field, string>>>({});
  const [refused, refuse] = useState<string>();
  const [working, work] = useState(false);
  const [news, announce] = useState("");
  /** Questions asked, and the last of them that needs no answer any more: it has one, or a later one has. */
  const [questions] = useState({ asked: 0, settled: 0 });

  const ask = async (change: CurveChange) => {
    want(change);
    const number = ++questions.asked;
    work(true);
    const found = await askEngine(id, live, change);
    if (number === questions.asked) work(false);
    if (!found || number <= questions.settled) return;
    questions.settled = number;
    if ("refused" in found) refuse(found.refused);
    else {
      refuse(undefined);
      show({ curve: found.curve, change });
      if (number === questions.asked) announce(plain(say.drawnFor(madeUpOf(change, reagent.name))));
    }
  };

  const read = (field: Field, text: string) => {
    const range = ranges[field];
    return range && readStrength(text, range);
  };

  return {
    ...shown,
    wanted,
    ranges,
    texts,
    faults,
    /** Why the last thing asked for is not what is drawn: half a sentence. */
    refused,
    working,
    news,
    changed: JSON.stringify([wanted, texts]) !== JSON.stringify([own, textsOf(own)]) || refused !== undefined,

    type(field: Field, text: string): void {
      write({ ...texts, [field]: text });
      blame({ ...faults, [field]: undefined });
      const strength = read(field, text);
      if (typeof strength === "number" && strength !== wanted[field]) ask({ ...wanted, [field]: strength });
    },

    /** A half-typed figure is no fault: it is named when the reader leaves the field. */
    judge(field: Field): void {
      const strength = read(field, texts[field]);
      if (typeof strength === "object") blame({ ...faults, [field]: strength.fault });
    },

    choose(salt: string): void {
      ask({ ...wanted, salt });
    },

    reset(): void {
      questions.settled = ++questions.asked;
      work(false);
      want(own);
      write(textsOf(own));
      blame({});
      refuse(undefined);
      show({ curve: live.curve, change: own });
      announce(plain(say.backToOwn(madeUpOf(own, reagent.name))));
    },
  };
}
