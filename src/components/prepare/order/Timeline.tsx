/** The order of work drawn to scale: time runs downwards, a column of bars for each person, the name of each beside it. The table says the same in words. */
import { TIMELINE } from "#words/order.ts";
import type { OrderOfWork } from "../../../engine/planning/order-of-work/order-of-work.ts";
import { plain } from "../../sentence.ts";
import type { Block } from "./blocks.ts";

interface Props {
  of: OrderOfWork;
  blocks: Block[];
  /** words[part][turn]: what is done, in a few words. */
  words: Record<string, string[]>;
}

/** Pixels: room for the first line, for the minutes at the side, width of a bar. */
const TOP = 24;
const AXIS = 30;
const BAR = 40;
/** Between the dotted lines of tubes left alone, and the room for all of them: a phone has to show the names beside them as well. */
const ALONE = 8;
const ALL_ALONE = 20;
/** From one line of words to the next, and from the top of a bar to the foot of its words. */
const LINE = 15;
const FOOT = 13;
/** Height a drawing should have, and how small or large a minute may be for it. One below the words of the page fits on a sheet of A4. */
const HEIGHT = 640;
const SMALLEST = 8;
const LARGEST = 26;

/** Letters for which a name has room on a wide page, alone or beside a second person's. */
const LETTERS = { one: 84, two: 34 };

/**
 * Words in lines: `first` letters on the first, `letters` on the others, `most` lines at most. What the last has no room for is cut, for the
 * table says it whole.
 */
function linesOf(text: string, first: number, letters: number, most: number): string[] {
  const lines = [""];
  for (const word of text.split(" ")) {
    const last = lines[lines.length - 1];
    const room = lines.length === 1 ? first : letters;
    if (last === "") lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= room) lines[lines.length - 1] = `${last} ${word}`;
    else if (lines.length < most) lines.push(word);
    else {
      lines[lines.length - 1] = `${last.slice(0, room - 1)}…`;
      break;
    }
  }
  return lines;
}

/** A bar with its name, times in minutes from the beginning of the planning. */
interface Named {
  from: number;
  to: number;
  kind: "hot" | "cold" | "besides";
  short: string;
  more: string;
}

export function Timeline({ of, blocks, words }: Props) {
  const { planning, bench, clearingUp, whole } = of;
  const people = Math.max(1, ...blocks.map(({ person }) => person + 1));
  const columns = Array.from({ length: people }, (_, person) => {
    const mine = blocks.filter((block) => block.person === person);
    const bars: Named[] = [
      { from: 0, to: planning, kind: "besides", short: TIMELINE.planning[0], more: TIMELINE.planning[1] },
      ...mine.map(({ start, end, burner, cells, samples, part, turn }) => ({
        from: planning + start,
        to: planning + end,
        kind: burner ? ("hot" as const) : ("cold" as const),
        short: `${cells.join(", ")} ${samples.join(" ")}`,
        more: `: ${burner ? TIMELINE.flame : ""}${plain(words[part]?.[turn] ?? "")}`,
      })),
      {
        from: planning + bench,
        to: planning + bench + clearingUp,
        kind: "besides",
        short: TIMELINE.clearingUp[0],
        more: TIMELINE.clearingUp[1],
      },
    ];
    const waits = mine.flatMap(({ waits }) => waits);
    const lanes = lanesOf(waits);
    const count = Math.max(0, ...lanes.map((lane) => lane + 1));
    const gap = Math.min(ALONE, ALL_ALONE / Math.max(1, count));
    return { bars: bars.filter(({ from, to }) => to > from), waits, lanes, count, gap };
  });
  const most = Math.max(...columns.map(({ bars }) => bars.length));
  const scale = Math.min(LARGEST, Math.max(SMALLEST, Math.max(HEIGHT, most * LINE) / Math.max(whole, 1)));
  const y = (minute: number) => Math.round((TOP + minute * scale) * 10) / 10;
  const ticks = Array.from({ length: Math.floor(whole / 5) + 1 }, (_, i) => i * 5);
  const names = columns.map(({ bars }) => spread(bars.map(({ from }) => y(from) + FOOT)));
  const height = Math.ceil(Math.max(y(whole), ...names.map((places) => places.at(-1) ?? 0)) + 6);
  return (
    <svg class={`timeline of-${people}`} width="100%" height={height} aria-hidden="true">
      <text x={0} y={14}>
        {TIMELINE.unit}
      </text>
      {ticks.map((minute) => (
        <g key={minute}>
          <line class="tick" x1={AXIS - 6} x2="100%" y1={y(minute)} y2={y(minute)} />
          <text class="at" x={AXIS - 8} y={y(minute) + 4}>
            {minute}
          </text>
        </g>
      ))}
      {columns.map(({ bars, waits, lanes, count, gap }, person) => (
        <svg
          key={person}
          aria-hidden="true"
          class="person"
          x={person === 0 ? AXIS : "50%"}
          width={people === 1 ? "100%" : "42%"}
        >
          {people > 1 && (
            <text x={0} y={14}>
              {person === 0 ? TIMELINE.first : TIMELINE.second}
            </text>
          )}
          {waits.map(({ from, to }, index) => (
            <path
              key={index}
              class="alone"
              d={`M${BAR + 5 + lanes[index] * gap} ${y(planning + from)}V${y(planning + to)}`}
            />
          ))}
          {bars.map((bar, index) => (
            <Bar
              key={bar.from}
              bar={bar}
              top={y(bar.from)}
              bottom={y(bar.to)}
              x={BAR + 6 + gap * count}
              name={names[person][index]}
              room={(names[person][index + 1] ?? height) - names[person][index]}
              letters={people === 1 ? LETTERS.one : LETTERS.two}
            />
          ))}
        </svg>
      ))}
    </svg>
  );
}

interface BarProps {
  bar: Named;
  top: number;
  bottom: number;
  /** Where its name begins, and the foot of it. */
  x: number;
  name: number;
  /** Down to the foot of the next name. */
  room: number;
  letters: number;
}

function Bar({ bar, top, bottom, x, name, room, letters }: BarProps) {
  const { kind, short, more } = bar;
  const lines = linesOf(more, letters - short.length, letters, Math.max(1, Math.floor(room / LINE)));
  const displaced = name > Math.max(bottom, top + FOOT) + 2;
  return (
    <g>
      <rect class={`bar ${kind}`} x={1} y={top + 1} width={BAR - 2} height={Math.max(2, bottom - top - 2)} />
      {displaced && <path class="leader" d={`M${BAR} ${(top + bottom) / 2}L${x - 1} ${name - 4}`} />}
      <text x={x} y={name}>
        {short}
        {lines.map((line, index) => (
          <tspan class="more" key={line} {...(index > 0 && { x, dy: LINE })}>
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}

/** Feet of the names: each beside the top of its bar, or pushed down so that no two overlap. */
function spread(feet: readonly number[]): number[] {
  const places: number[] = [];
  for (const foot of feet) places.push(Math.max(foot, (places.at(-1) ?? Number.NEGATIVE_INFINITY) + LINE));
  return places;
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
