/** The order of work for whoever is at the bench, with what is there. Reads fully as built, without script. */
import { useMemo } from "preact/hooks";
import type { TubeWork } from "../../../engine/planning/order-of-work/bench-work.ts";
import { orderFor } from "../../../engine/planning/order-of-work/order-of-work.ts";
import { type Racked, rackRows } from "../../../engine/planning/rack-places.ts";
import { useAwake } from "../../awake.ts";
import { capital } from "../../capital.ts";
import { list } from "../../sentence.ts";
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
            <b>Not understood.</b> {fault}
          </p>
        ))}
        <p>{wordWhole(order, choice.minutes ?? allowed)}</p>
      </div>
      <Timeline of={order} blocks={blocks} words={words} />
      <p class="small soft">
        Each test ends with its line of the record. Filled bars need the burner.
        {waits && " A dotted line beside the bars: a tube stands, cools or drips meanwhile."} Up to {order.tubesInUse}{" "}
        {order.tubesInUse === 1 ? "tube is" : "tubes are"} in use at once.
        {rinsed && " A used tube is rinsed twice with deionised water: tap water holds chloride."}
      </p>
      <section class="stands">
        <h2>Where each tube stands</h2>
        <RackPlaces rows={rackRows(racked, order, hands.tubes)} told />
      </section>
      <table class="stack">
        <caption>Step by step</caption>
        <thead>
          <tr>
            <th scope="col" class="num">
              Minute
            </th>
            {people > 1 && <th scope="col">Who</th>}
            <th scope="col">Tubes</th>
            <th scope="col">What</th>
          </tr>
        </thead>
        <tbody>
          {order.planning > 0 && (
            <tr>
              <td class="num" data-head="Minute">
                0 to {minutes(order.planning)}
              </td>
              {people > 1 && <td data-head="Who">both</td>}
              <th scope="row">all</th>
              <td data-head="What">Read it all, plan, label the tubes and mark them. Write nothing down yet.</td>
            </tr>
          )}
          {blocks.map((block) => (
            <tr key={`${block.person} ${block.start}`}>
              <td class="num" data-head="Minute">
                {minutes(order.planning + block.start)} to {minutes(order.planning + block.end)}
              </td>
              {people > 1 && <td data-head="Who">{block.person === 0 ? "first" : "second"}</td>}
              <th scope="row">{wordTubes(block)}</th>
              <td data-head="What">
                {block.rinsed.length > 0 && `Rinse a used tube for ${list(block.rinsed)} first. `}
                <Words of={capital(words[block.part][block.turn])} />
                {block.burner && " (burner)"}. {wordWait(block)}
              </td>
            </tr>
          ))}
          <tr>
            <td class="num" data-head="Minute">
              {minutes(order.planning + order.bench)} to {minutes(order.whole)}
            </td>
            {people > 1 && <td data-head="Who">both</td>}
            <th scope="row">all</th>
            <td data-head="What">Empty the tubes where they belong, rinse, clear up.</td>
          </tr>
        </tbody>
      </table>
    </>
  );
}
