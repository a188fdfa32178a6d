/** The order of work for whoever is at the bench, with what is there. Reads fully as built, without script. */
import { useMemo, useState } from "preact/hooks";
import type { Rinsed, TubeWork } from "../../../engine/planning/order-of-work/bench-work.ts";
import { orderFor } from "../../../engine/planning/order-of-work/order-of-work.ts";
import { useAwake } from "../../awake.ts";
import { capital } from "../../capital.ts";
import { list } from "../../sentence.ts";
import { Words } from "../../Words.tsx";
import { blocksOf } from "./blocks.ts";
import { minutes, wordTubes, wordWait, wordWhole } from "./order-words.ts";
import { Timeline } from "./Timeline.tsx";

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
}

/** As a practical's own time: practical.ts. */
const SHORTEST = 5;
const LONGEST = 300;

const KINDS: readonly Rinsed[] = ["test-tube", "boiling tube"];

export default function OrderOfWork({ work, letters, words, allowed }: Props) {
  const awake = useAwake();
  const [time, setTime] = useState(String(allowed));
  const minutesAllowed = Number(time);
  const sensible = minutesAllowed >= SHORTEST && minutesAllowed <= LONGEST;
  const [people, setPeople] = useState(1);
  const [burners, setBurners] = useState(1);
  const [partsInOrder, keepOrder] = useState(true);
  const [glass, setGlass] = useState<Partial<Record<Rinsed, number>>>({});
  const tubes = useMemo(
    () => work.map((one) => ({ ...one, turns: one.turns.map((turn) => ({ ...turn, steps: [] })) })),
    [work],
  );
  const order = useMemo(
    () => orderFor(tubes, letters, { people, burners, partsInOrder, tubes: glass }),
    [tubes, letters, people, burners, partsInOrder, glass],
  );
  const blocks = blocksOf(order);
  const hot = work.some(({ turns }) => turns.some(({ burner }) => burner));
  const needed = (kind: Rinsed) => work.flatMap((one) => (one.tubes?.kind === kind ? [one.tubes.count] : []));
  const rinsed = blocks.some((block) => block.rinsed.length > 0);
  return (
    <>
      <div class="tools">
        <Choice
          name="People"
          value={people}
          of={[1, 2]}
          word={(n) => (n === 1 ? "one" : "two")}
          awake={awake}
          onChoose={setPeople}
        />
        {hot && (
          <Choice
            name="Burners"
            value={burners}
            of={[1, 2]}
            word={(n) => (n === 1 ? "one" : "two")}
            awake={awake}
            onChoose={setBurners}
          />
        )}
        {KINDS.map((kind) => {
          const counts = needed(kind);
          const all = counts.reduce((sum, count) => sum + count, 0);
          const least = Math.max(0, ...counts);
          if (all <= least) return null;
          const fewer = Array.from({ length: all - least }, (_, i) => all - 1 - i);
          return (
            <Choice
              key={kind}
              name={kind === "test-tube" ? "Test-tubes" : "Boiling tubes"}
              value={glass[kind] ?? all}
              of={[all, ...fewer]}
              word={(n) => (n === all ? `${n}, one for each test` : `${n}, rinsed and used again`)}
              awake={awake}
              onChoose={(n) => {
                const { [kind]: _, ...rest } = glass;
                setGlass(n === all ? rest : { ...rest, [kind]: n });
              }}
            />
          );
        })}
        <label>
          Minutes allowed:{" "}
          <input
            type="number"
            autocomplete="off"
            min={SHORTEST}
            max={LONGEST}
            disabled={!awake}
            value={time}
            aria-invalid={!sensible}
            onInput={(event) => setTime(event.currentTarget.value)}
          />
        </label>
        <label>
          <input
            type="checkbox"
            autocomplete="off"
            disabled={!awake}
            checked={!partsInOrder}
            onChange={(event) => keepOrder(!event.currentTarget.checked)}
          />{" "}
          Parts may change places
        </label>
      </div>
      <p aria-live="polite">
        {sensible
          ? wordWhole(order, minutesAllowed)
          : `Minutes allowed: expected a number from ${SHORTEST} to ${LONGEST}.`}
      </p>
      <Timeline of={order} blocks={blocks} words={words} />
      <p class="small soft">
        Each test ends with its line of the record. Filled bars need the burner. A dotted line at the side: a tube
        stands, cools or drips meanwhile. Up to {order.tubesInUse} {order.tubesInUse === 1 ? "tube is" : "tubes are"} in
        use at once.
        {rinsed && " A used tube is rinsed twice with deionised water: tap water holds chloride."}
      </p>
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
          <tr>
            <td class="num" data-head="Minute">
              0 to {minutes(order.planning)}
            </td>
            {people > 1 && <td data-head="Who">both</td>}
            <th scope="row">all</th>
            <td data-head="What">Read it all, plan, label the tubes and mark them. Write nothing down yet.</td>
          </tr>
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

interface ChoiceProps {
  name: string;
  value: number;
  of: number[];
  word: (n: number) => string;
  awake: boolean;
  onChoose: (n: number) => void;
}

function Choice({ name, value, of, word, awake, onChoose }: ChoiceProps) {
  return (
    <label>
      {name}:{" "}
      <select
        autocomplete="off"
        disabled={!awake}
        value={value}
        onChange={(event) => onChoose(Number(event.currentTarget.value))}
      >
        {of.map((n) => (
          <option key={n} value={n}>
            {word(n)}
          </option>
        ))}
      </select>
    </label>
  );
}
