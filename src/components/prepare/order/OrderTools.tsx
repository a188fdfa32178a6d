/** The fields in which a reader says who is at the bench and what is there. */
import * as say from "#words/order.ts";
import type { Entry, Offer } from "./order-choice.ts";

interface Props {
  offer: Offer;
  typed: Partial<Record<Entry, string>>;
  awake: boolean;
  onChoose: (entry: Entry, text: string) => void;
}

/** Beside a number of things there are: what it means. */
const WORDS: Partial<Record<Entry, (n: number, all: number) => string>> = {
  people: say.oneOrTwo,
  burners: say.oneOrTwo,
  "test-tubes": (n, all) => say.tubes(n, n === all),
  "boiling-tubes": (n, all) => say.tubes(n, n === all),
  places: (n, all) => (n === all ? say.ROOM_FOR_ALL : String(n)),
};

export function OrderTools({ offer, typed, awake, onChoose }: Props) {
  return (
    <div class="tools">
      {(Object.entries(offer) as [Entry, NonNullable<Offer[Entry]>][]).map(([entry, { least, most }]) => {
        const word = WORDS[entry];
        const common = { autocomplete: "off", disabled: !awake } as const;
        if (entry === "free") {
          return (
            <label key={entry}>
              <input
                {...common}
                type="checkbox"
                checked={typed.free === "1"}
                onChange={(event) => onChoose(entry, event.currentTarget.checked ? "1" : "0")}
              />{" "}
              {say.ENTRIES.free}
            </label>
          );
        }
        if (!word) {
          return (
            <label key={entry}>
              {say.ENTRIES[entry]}:{" "}
              <input
                {...common}
                type="text"
                inputmode="numeric"
                size={3}
                value={typed[entry]}
                onInput={(event) => onChoose(entry, event.currentTarget.value)}
              />
            </label>
          );
        }
        return (
          <label key={entry}>
            {say.ENTRIES[entry]}:{" "}
            <select {...common} value={typed[entry]} onChange={(event) => onChoose(entry, event.currentTarget.value)}>
              {numbers(entry, least, most).map((n) => (
                <option key={n} value={String(n)}>
                  {word(n, most)}
                </option>
              ))}
            </select>
          </label>
        );
      })}
    </div>
  );
}

/** People and burners from one up; of glass and places all there could be first, then fewer. */
function numbers(entry: Entry, least: number, most: number): number[] {
  const up = Array.from({ length: most - least + 1 }, (_, i) => least + i);
  return entry === "people" || entry === "burners" ? up : up.reverse();
}
