/** The order of work drawn to scale: time runs downwards, a column for each person. The table beside it says the same in words. */
import type { OrderOfWork } from "../../../engine/planning/order-of-work/order-of-work.ts";
import { plain } from "../../sentence.ts";
import type { Block } from "./blocks.ts";
import { wordTubes } from "./order-words.ts";

interface Props {
  of: OrderOfWork;
  blocks: Block[];
  /** words[part][turn]: what is done, in a few words. */
  words: Record<string, string[]>;
}

/** Pixels to a minute, and across. */
const SCALE = 21;
const TOP = 24;
const AXIS = 30;
const WIDTH = 680;
/** Room for the lines of what is left alone. */
const ALONE = 12;
/** Pixels of a letter, about; words that do not fit are cut. */
const LETTER = 6.9;
/** Lower than this a block has no room for words. */
const LINE = 14;

const cut = (text: string, letters: number) =>
  text.length <= letters ? text : `${text.slice(0, Math.max(0, letters - 1))}…`;

export function Timeline({ of, blocks, words }: Props) {
  const { planning, bench, clearingUp, whole } = of;
  const people = Math.max(1, ...blocks.map(({ person }) => person + 1));
  const waits = blocks.flatMap(({ end, wait }) => (wait ? [{ from: end, to: end + wait.minutes }] : []));
  const lanes = lanesOf(waits);
  const column = (WIDTH - AXIS - ALONE * Math.max(0, ...lanes.map((lane) => lane + 1))) / people;
  const y = (minute: number) => Math.round((TOP + minute * SCALE) * 10) / 10;
  const ticks = Array.from({ length: Math.floor(whole / 5) + 1 }, (_, i) => i * 5);
  const height = Math.ceil(y(whole) + 6);
  const whoseColumn = ["first person", "second person"];
  return (
    <svg class="timeline" viewBox={`0 0 ${WIDTH} ${height}`} aria-hidden="true">
      {people > 1 &&
        whoseColumn.slice(0, people).map((name, person) => (
          <text key={name} x={AXIS + person * column + 6} y={14}>
            {name}
          </text>
        ))}
      <text x={0} y={14}>
        min
      </text>
      {ticks.map((minute) => (
        <g key={minute}>
          <path class="tick" d={`M${AXIS - 6} ${y(minute)}H${WIDTH}`} />
          <text class="at" x={AXIS - 8} y={y(minute) + 4}>
            {minute}
          </text>
        </g>
      ))}
      {Array.from({ length: people }, (_, person) => (
        <g key={person}>
          <Bar x={AXIS + person * column} y={y(0)} width={column} height={y(planning) - y(0)} kind="besides">
            {["Read, plan, label", " and mark the tubes"]}
          </Bar>
          <Bar
            x={AXIS + person * column}
            y={y(planning + bench)}
            width={column}
            height={y(clearingUp) - y(0)}
            kind="besides"
          >
            {["Clear up", ": empty, rinse, wipe"]}
          </Bar>
        </g>
      ))}
      {blocks.map((block) => (
        <Bar
          key={`${block.person} ${block.start}`}
          x={AXIS + block.person * column}
          y={y(planning + block.start)}
          width={column}
          height={y(block.end) - y(block.start)}
          kind={block.burner ? "hot" : "cold"}
        >
          {[`${wordTubes(block)}${block.burner ? ", flame" : ""}`, `: ${plain(words[block.part]?.[block.turn] ?? "")}`]}
        </Bar>
      ))}
      {waits.map(({ from, to }, index) => (
        <path
          key={index}
          class="alone"
          d={`M${WIDTH - 6 - lanes[index] * ALONE} ${y(planning + from)}V${y(planning + to)}`}
        />
      ))}
    </svg>
  );
}

function Bar(props: { x: number; y: number; width: number; height: number; kind: string; children: [string, string] }) {
  const { x, y, width, height, kind, children } = props;
  const gap = 3;
  const [short, more] = children;
  return (
    <g>
      <rect class={`bar ${kind}`} x={x} y={y + 1} width={Math.max(1, width - gap)} height={Math.max(2, height - 2)} />
      {height >= LINE && (
        <text x={x + 6} y={y + Math.min(height / 2 + 4, 16)}>
          {short}
          <tspan class="more">{cut(more, Math.floor((width - 12) / LETTER) - short.length)}</tspan>
        </text>
      )}
    </g>
  );
}

/** The lane of each wait: the first in which no other runs at that time. */
function lanesOf(waits: readonly { from: number; to: number }[]): number[] {
  const until: number[] = [];
  return waits.map(({ from, to }) => {
    const free = until.findIndex((end) => end <= from);
    const lane = free < 0 ? until.length : free;
    until[lane] = to;
    return lane;
  });
}
