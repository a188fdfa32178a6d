/** What the paper says of its samples: the ions to choose from, and statements on some or all of them. */
import { ION_LISTS } from "../../engine/constants/ions.ts";
import { MOST } from "../../engine/practical/bounds.ts";
import { Words } from "../Words.tsx";
import { type Draft, type DraftStatement, type IonChoice, type KindOfIon, statementPath } from "./draft.ts";
import { Choice, Fault, type Faults, Field, Letters, placeId } from "./fields.tsx";
import type { House } from "./house.ts";
import type { Editing } from "./use-draft.ts";

/** Every ion the engine knows, with its name. */
export interface KnownIons {
  cations: readonly (readonly [ion: string, name: string])[];
  anions: readonly (readonly [ion: string, name: string])[];
}

const LISTS = [
  ["school", "the school list"],
  ["advanced", "the advanced list"],
  ["ticked", "those I tick"],
] as const;

/** Its ions are ticked, and stay with the paper wherever it goes. */
const OWN_LIST = ["own", "our department's list"] as const;

const NEW: readonly (readonly [says: DraftStatement["says"], words: string])[] = [
  ["share", "Some samples hold the same ion"],
  ["differ", "Some samples hold different ions"],
  ["same", "Some samples are the same salt"],
  ["contains", "An ion is in some of the samples"],
];

const fresh = (says: DraftStatement["says"], draft: Draft): DraftStatement => {
  const samples = draft.samples.map(({ label }) => label).slice(0, 2);
  if (says === "same") return { says, samples };
  if (says === "contains") return { says, samples: [], ion: "", count: "" };
  return { says, samples, ion: "cation" };
};

type Props = Editing & { draft: Draft; faults: Faults; ions: KnownIons; house: House };

export function StatementForm({ draft, faults, edit, focus, ions, house }: Props) {
  const { statements } = draft;
  const letters = draft.samples.map(({ label }) => label);
  const set = (index: number, change: DraftStatement) =>
    edit({ ...draft, statements: statements.map((one, at) => (at === index ? change : one)) });
  const offered = [...ions.cations, ...ions.anions].map(([ion, name]) => [ion, `${ion} ${name}`] as const);
  return (
    <fieldset class="entry" id="says" tabIndex={-1}>
      <legend>What the paper says</legend>
      {(["cations", "anions"] as const).map((kind) => (
        <Ions
          key={kind}
          kind={kind}
          chosen={draft[kind]}
          of={ions[kind]}
          own={house.ions?.[kind]}
          fault={faults(`paper.${kind}`)}
          onChoose={(chosen) => edit({ ...draft, [kind]: chosen })}
        />
      ))}
      <div class="row">
        {(["cations", "anions"] as const).map((kind) => (
          <Field
            key={kind}
            name={`Different ${kind} in all, if the paper says`}
            place={`paper.inAll.${kind}`}
            size={3}
            value={draft.inAll[kind]}
            fault={faults(`paper.inAll.${kind}`)}
            onType={(text) => edit({ ...draft, inAll: { ...draft.inAll, [kind]: text } })}
          />
        ))}
      </div>
      {statements.map((one, index) => {
        const at = statementPath(statements, index);
        const words = NEW.find(([says]) => says === one.says)?.[1] ?? "";
        return (
          <fieldset class="row statement" key={index} aria-label={`Statement ${index + 1}: ${words}`}>
            <b>{words}</b>
            {one.says === "contains" && (
              <>
                <Choice
                  name="Ion"
                  place={`${at}.ion`}
                  value={one.ion}
                  of={offered}
                  fault={faults(`${at}.ion`)}
                  onChoose={(ion) => set(index, { ...one, ion })}
                />
                <Field
                  name="In how many"
                  place={`${at}.count`}
                  size={3}
                  value={one.count}
                  hint="1 or more"
                  fault={faults(`${at}.count`)}
                  onType={(count) => set(index, { ...one, count })}
                />
              </>
            )}
            {(one.says === "share" || one.says === "differ") && (
              <Choice
                name="Ion"
                place={`${at}.ion`}
                value={one.ion}
                of={[
                  ["cation", "cation"],
                  ["anion", "anion"],
                ]}
                onChoose={(ion) => set(index, { ...one, ion: ion as KindOfIon })}
              />
            )}
            <Letters
              name={one.says === "contains" ? "Of these samples (none ticked: of all)" : "Samples"}
              place={`${at}.samples`}
              letters={letters}
              chosen={one.samples}
              fault={faults(one.says === "same" ? at : `${at}.samples`)}
              onChoose={(samples) => set(index, { ...one, samples })}
            />
            <button
              type="button"
              onClick={() => {
                edit({ ...draft, statements: statements.filter((_, other) => other !== index) });
                focus("says");
              }}
            >
              Remove<span class="vh"> statement {index + 1}</span>
            </button>
          </fieldset>
        );
      })}
      <label class="adding">
        Add a statement:{" "}
        <select
          autocomplete="off"
          value=""
          onChange={(event) => {
            const says = event.currentTarget.value as DraftStatement["says"] | "";
            event.currentTarget.value = "";
            if (says === "") return;
            const next = [...statements, fresh(says, draft)];
            edit({ ...draft, statements: next });
            focus(placeId(`${statementPath(next, statements.length)}.${says === "same" ? "samples" : "ion"}`));
          }}
        >
          <option value="">choose …</option>
          {NEW.map(([says, words]) => (
            <option
              key={says}
              value={says}
              disabled={statements.filter((one) => one.says === says).length >= MOST.statements}
            >
              {words}
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  );
}

interface IonsProps {
  kind: "cations" | "anions";
  chosen: IonChoice;
  of: KnownIons["cations"];
  /** The department's own list. */
  own?: readonly string[];
  fault?: string;
  onChoose(chosen: IonChoice): void;
}

function Ions({ kind, chosen, of, own, fault, onChoose }: IonsProps) {
  const ticked = Array.isArray(chosen);
  const place = `paper.${kind}`;
  return (
    <div class="ions">
      <Choice
        name={`The ${kind} can be`}
        place={place}
        value={ticked ? "ticked" : chosen}
        of={own ? [...LISTS, OWN_LIST] : LISTS}
        onChoose={(list) => {
          if (list === "school" || list === "advanced") onChoose(list);
          else if (list === "own" && own) onChoose([...own]);
          else onChoose(ticked ? chosen : [...ION_LISTS[chosen][kind]]);
        }}
      />
      {ticked && (
        <fieldset class="letters" aria-describedby={fault === undefined ? undefined : `${placeId(place)}-ticked`}>
          <legend>Tick the {kind} the paper offers</legend>
          {of.map(([ion, name]) => (
            <label key={ion}>
              <input
                type="checkbox"
                autocomplete="off"
                checked={chosen.includes(ion)}
                onChange={({ currentTarget: { checked } }) => {
                  const known = of.flatMap(([one]) => ((one === ion ? checked : chosen.includes(one)) ? [one] : []));
                  onChoose([...known, ...chosen.filter((one) => !of.some(([other]) => other === one))]);
                }}
              />{" "}
              <Words of={ion} /> <span class="soft">{name}</span>
            </label>
          ))}
          {chosen
            .filter((one) => !of.some(([ion]) => ion === one))
            .map((one) => (
              <label key={one}>
                <input type="checkbox" checked onChange={() => onChoose(chosen.filter((other) => other !== one))} />{" "}
                {one} (not known here)
              </label>
            ))}
        </fieldset>
      )}
      <Fault id={`${placeId(place)}-ticked`} of={fault} />
    </div>
  );
}
