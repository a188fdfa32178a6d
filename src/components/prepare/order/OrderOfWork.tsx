/** The order of work for whoever is at the bench, with what is there. Reads fully as built, without script. */
import { useMemo } from "preact/hooks";
import * as say from "#words/order.ts";
import type { TubeWork } from "../../../engine/planning/order-of-work/bench-work.ts";
import { orderFor } from "../../../engine/planning/order-of-work/order-of-work.ts";
import { type Racked, rackRows } from "../../../engine/planning/rack-places.ts";
import { useAwake } from "../../awake.ts";
import { capital } from "../../capital.ts";
import { Words } from "../../Words.tsx";
import { RackPlaces } from "../RackPlaces.tsx";
import { blocksOf } from "./blocks.ts";
import { OrderTools } from "./OrderTools.tsx";
import { handsOf, offerOf } from "./order-choice.ts";
import { minutes, wordTubes, wordWait, wordWhole } from "./order-words.ts";
import { Timeline } from "./Timeline.tsx";
import { useOrderChoice } from "./use-order-choice.ts";

/** Work as the page carries it: what is done stands in words. */
export type IslandWork = Omit<TubeWork, "turns"> & { turns: Omit<TubeWork["turns"][number], "steps">[] };

interface Props {
  work: IslandWork[];
  /** Letters of the parts. */
  letters: string[];
  /** By letter of the part, for each stretch of work: what is done, in a few words. */
  words: Record<string, string[]>;
  /** Minutes the paper allows. */
  allowed: number;
  /** Minutes below which no order can be, with one burner and the parts in order, proved at leisure: for one person, for two. */
  proved: number[];
  /** The tubes of the bench plan. */
  racked: Racked[];
  /** The page is one practical's: its address keeps what is chosen. */
  inAddress?: boolean;
}

export default function OrderOfWork({ work, letters, words, allowed, proved, racked, inAddress = false }: Props) {
  const awake = useAwake();
  const offer = useMemo(() => offerOf(work, allowed), [work, allowed]);
  const { choice, typed, faults, choose } = useOrderChoice(offer, inAddress);
  const tubes = useMemo(
    () => work.map((one) => ({ ...one, turns: one.turns.map((turn) => ({ ...turn, steps: [] })) })),
    [work],
  );
  const hands = handsOf(choice, offer);
  // Minutes change words, not the order.
  const { planning: _, ...asked } = hands;
  const found = useMemo(() => orderFor(tubes, letters, asked), [tubes, letters, JSON.stringify(asked)]);
  const planning = hands.planning ?? found.planning;
  const { people } = hands;
  // Fewer tubes or places make nothing shorter, so the bound holds for them too.
  const known = hands.burners === 1 && hands.partsInOrder ? (proved[people - 1] ?? 0) : 0;
  const least = Math.min(found.bench, Math.max(found.least, known));
  const order = { ...found, least, planning, whole: planning + found.bench + found.clearingUp };
  const blocks = blocksOf(order);
  const waits = blocks.some((block) => block.wait);
  const rinsed = blocks.some((block) => block.rinsed.length > 0);
  return (
    <>
      <OrderTools offer={offer} typed={typed} awake={awake} onChoose={choose} />
      <div aria-live="polite">
        {faults.map((fault) => (
          <p class="caution small" key={fault}>
            <b>{say.NOT_UNDERSTOOD}</b> {fault}
          </p>
        ))}
        <p>{wordWhole(order, choice.minutes ?? allowed)}</p>
      </div>
      <Timeline of={order} blocks={blocks} words={words} />
      <p class="small soft">
        {say.HOW_READ}
        {waits && say.DOTTED} {say.inUse(order.tubesInUse)}
        {rinsed && say.RINSED}
      </p>
      <section class="stands">
        <h2>{say.PLACES}</h2>
        <RackPlaces rows={rackRows(racked, order, hands.tubes)} told />
      </section>
      <table class="stack">
        <caption>{say.STEP_BY_STEP}</caption>
        <thead>
          <tr>
            <th scope="col" class="num">
              {say.HEADS.minute}
            </th>
            {people > 1 && <th scope="col">{say.HEADS.who}</th>}
            <th scope="col">{say.HEADS.tubes}</th>
            <th scope="col">{say.HEADS.what}</th>
          </tr>
        </thead>
        <tbody>
          {order.planning > 0 && (
            <tr>
              <td class="num" data-head={say.HEADS.minute}>
                {say.fromTo("0", minutes(order.planning))}
              </td>
              {people > 1 && <td data-head={say.HEADS.who}>{say.WHO.both}</td>}
              <th scope="row">{say.ALL_TUBES}</th>
              <td data-head={say.HEADS.what}>{say.PLANNING}</td>
            </tr>
          )}
          {blocks.map((block) => (
            <tr key={`${block.person} ${block.start}`}>
              <td class="num" data-head={say.HEADS.minute}>
                {say.fromTo(minutes(order.planning + block.start), minutes(order.planning + block.end))}
              </td>
              {people > 1 && <td data-head={say.HEADS.who}>{block.person === 0 ? say.WHO.first : say.WHO.second}</td>}
              <th scope="row">{wordTubes(block)}</th>
              <td data-head={say.HEADS.what}>
                {block.rinsed.length > 0 && say.rinseFirst(block.rinsed)}
                <Words of={capital(words[block.part][block.turn])} />
                {block.burner && say.BURNER}. {wordWait(block)}
              </td>
            </tr>
          ))}
          <tr>
            <td class="num" data-head={say.HEADS.minute}>
              {say.fromTo(minutes(order.planning + order.bench), minutes(order.whole))}
            </td>
            {people > 1 && <td data-head={say.HEADS.who}>{say.WHO.both}</td>}
            <th scope="row">{say.ALL_TUBES}</th>
            <td data-head={say.HEADS.what}>{say.CLEARING_UP}</td>
          </tr>
        </tbody>
      </table>
    </>
  );
}
