/** The sheet for the class a reader chooses. Reads fully as built, for the usual class, without script. */
import { useMemo } from "preact/hooks";
import * as say from "#words/class-sheet.ts";
import { classSheet } from "../../engine/planning/class/class-sheet.ts";
import type { ClassSize } from "../../engine/planning/class/class-size.ts";
import type { GroupNeeds } from "../../engine/planning/class/supply.ts";
import { useAwake } from "../awake.ts";
import { capital } from "../capital.ts";
import { figures } from "../figures.ts";
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
    sampleCm3 && say.ofEachSample(amount(sampleCm3, "cm3")),
    sampleG && say.ofEachSolid(amount(sampleG, "g")),
  ];
  return [say.groups(groups), say.spare(figures(sparePercent)), ...given.flatMap((one) => one || [])].join(", ");
}

export default function ClassSheet({ needs, own }: Props) {
  const group = useMemo((): GroupNeeds => JSON.parse(needs), [needs]);
  const { typed, size, faults, type } = useClassSize(own);
  const awake = useAwake();
  const sheet = useMemo(() => classSheet(group, size), [group, size]);
  return (
    <>
      <h2 id="class">{say.CLASS}</h2>
      <p class="tools screen">
        {entriesOf(own).map((entry) => (
          <label key={entry}>
            {capital(say.ENTRIES[entry])}
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
            <b>{say.NOT_UNDERSTOOD}</b> <Words of={fault} />
          </p>
        ))}
        <p>
          {say.isFor(faults.length > 0)} <b>{inWords(size)}</b>. {say.GROUP_IS}
        </p>
        {sheet.warnings.map((warning) => (
          <p class="caution small" key={warning}>
            <b>{say.TOO_LITTLE}</b> <Words of={warning} />
          </p>
        ))}
      </div>
      <h2 id="make-up">{say.MAKE_UP}</h2>
      <MakeUp supplies={sheet.supplies} />
      <h2 id="bottles">{say.SET_OUT}</h2>
      <p>{say.SET_OUT_ABOUT}</p>
      <Bottles supplies={sheet.supplies} groups={size.groups} />
      <h3>{say.ALSO}</h3>
      <ul class="ready">
        <li>{say.GOGGLES}</li>
        {sheet.counted.map(({ what, count, g, note }) => (
          <li key={`${what} ${note}`}>
            <b>
              {count} × {what}
            </b>
            {g !== undefined && say.about(amount(g, "g"))}
            {note && <span class="soft"> ({note})</span>}
          </li>
        ))}
        {sheet.withTeacher.map((what) => (
          <li key={what}>{say.withTeacher(what)}</li>
        ))}
      </ul>
      <h2 id="store">{say.STORE}</h2>
      <Store rows={sheet.store} />
      <h2 id="waste">{say.WASTE}</h2>
      <ClassWaste rows={sheet.waste} />
    </>
  );
}
