/** The sheet for the class a reader chooses. Reads fully as built, for the usual class, without script. */
import { useMemo } from "preact/hooks";
import { classSheet } from "../../engine/planning/class/class-sheet.ts";
import { type ClassSize, ENTRY_NAMES } from "../../engine/planning/class/class-size.ts";
import type { GroupNeeds } from "../../engine/planning/class/supply.ts";
import { useAwake } from "../awake.ts";
import { capital } from "../capital.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";
import { Bottles } from "./Bottles.tsx";
import { ClassWaste } from "./ClassWaste.tsx";
import { entriesOf } from "./class-address.ts";
import { MakeUp } from "./MakeUp.tsx";
import { Store } from "./Store.tsx";
import { useClassSize } from "./use-class-size.ts";

interface Props {
  /** What one group needs, JSON of a GroupNeeds. */
  needs: string;
  /** The class the page is built for. */
  own: ClassSize;
}

const UNITS = { groups: "", sparePercent: ", %", sampleCm3: ", cm³", sampleG: ", g" };

/** "12 groups, 30 % spare, 6 cm³ of each sample for a group" */
function inWords({ groups, sparePercent, sampleCm3, sampleG }: ClassSize): string {
  const given = [
    sampleCm3 && `${amount(sampleCm3, "cm3")} of each sample`,
    sampleG && `${amount(sampleG, "g")} of each solid sample`,
  ];
  return [
    groups === 1 ? "1 group" : `${groups} groups`,
    `${sparePercent}\u00a0% spare`,
    ...given.flatMap((one) => (one ? [`${one} for a group`] : [])),
  ].join(", ");
}

export default function ClassSheet({ needs, own }: Props) {
  const group = useMemo((): GroupNeeds => JSON.parse(needs), [needs]);
  const { typed, size, faults, type } = useClassSize(own);
  const awake = useAwake();
  const sheet = useMemo(() => classSheet(group, size), [group, size]);
  return (
    <>
      <h2 id="class">The class</h2>
      <p class="tools screen">
        {entriesOf(own).map((entry) => (
          <label key={entry}>
            {capital(ENTRY_NAMES[entry])}
            {UNITS[entry]}{" "}
            <input
              type="text"
              inputmode="decimal"
              autocomplete="off"
              size={5}
              disabled={!awake}
              value={typed[entry]}
              onInput={(event) => type(entry, event.currentTarget.value)}
            />
          </label>
        ))}
      </p>
      <div aria-live="polite">
        {faults.map((fault) => (
          <p class="caution small" key={fault}>
            <b>Not understood.</b> <Words of={fault} />
          </p>
        ))}
        <p>
          This sheet is {faults.length > 0 && "still "}for <b>{inWords(size)}</b>. A group is whoever works at one
          place, alone or as a pair.
        </p>
        {sheet.warnings.map((warning) => (
          <p class="caution small" key={warning}>
            <b>Too little.</b> <Words of={warning} />
          </p>
        ))}
      </div>
      <h2 id="make-up">Make up</h2>
      <MakeUp supplies={sheet.supplies} />
      <h2 id="bottles">Set out</h2>
      <p>
        Every sample comes in the same amount, so that the filling tells nothing of what it is. The salt's name stands
        in the list above and nowhere else. What a hazard label says is taken from the supplier's safety data sheet.
      </p>
      <Bottles supplies={sheet.supplies} groups={size.groups} />
      <h3>Also</h3>
      <ul class="ready">
        <li>Goggles for everybody in the room, and a few spare pairs.</li>
        {sheet.counted.map(({ what, count, g, note }) => (
          <li key={`${what} ${note}`}>
            <b>
              {count} × {what}
            </b>
            {g !== undefined && `, about ${amount(g, "g")}`}
            {note && <span class="soft"> ({note})</span>}
          </li>
        ))}
        {sheet.withTeacher.map((what) => (
          <li key={what}>One for the class, in the fume cupboard: {what}.</li>
        ))}
      </ul>
      <h2 id="store">From the store</h2>
      <Store rows={sheet.store} />
      <h2 id="waste">Waste</h2>
      <ClassWaste rows={sheet.waste} />
    </>
  );
}
