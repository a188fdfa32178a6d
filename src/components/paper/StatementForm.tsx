/** What the paper says of its samples: the ions to choose from, and statements on some or all of them. */
import * as say from "#words/paper-form.ts";
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

const LISTS = Object.entries(say.LISTS);

/** Its ions are ticked, and stay with the paper wherever it goes. */
const OWN_LIST = ["own", say.OWN_LIST] as const;

const NEW = Object.entries(say.STATEMENTS) as [DraftStatement["says"], string][];
const KINDS = Object.entries(say.KINDS);

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
      <legend>{say.PAPER_SAYS}</legend>
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
            name={say.inAll(kind)}
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
        const words = say.STATEMENTS[one.says];
        return (
          <fieldset class="row statement" key={index} aria-label={say.statement(index + 1, words)}>
            <b>{words}</b>
            {one.says === "contains" && (
              <>
                <Choice
                  name={say.ION}
                  place={`${at}.ion`}
                  value={one.ion}
                  of={offered}
                  fault={faults(`${at}.ion`)}
                  onChoose={(ion) => set(index, { ...one, ion })}
                />
                <Field
                  name={say.IN_HOW_MANY}
                  place={`${at}.count`}
                  size={3}
                  value={one.count}
                  hint={say.ONE_OR_MORE}
                  fault={faults(`${at}.count`)}
                  onType={(count) => set(index, { ...one, count })}
                />
              </>
            )}
            {(one.says === "share" || one.says === "differ") && (
              <Choice
                name={say.ION}
                place={`${at}.ion`}
                value={one.ion}
                of={KINDS}
                onChoose={(ion) => set(index, { ...one, ion: ion as KindOfIon })}
              />
            )}
            <Letters
              name={one.says === "contains" ? say.OF_THESE : say.SAMPLES}
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
              {say.REMOVE}
              <span class="vh"> {say.theStatement(index + 1)}</span>
            </button>
          </fieldset>
        );
      })}
      <label class="adding">
        {say.ADD_STATEMENT}{" "}
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
          <option value="">{say.CHOOSE}</option>
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
        name={say.canBe(kind)}
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
          <legend>{say.tickOffered(kind)}</legend>
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
                {one} {say.NOT_KNOWN_HERE}
              </label>
            ))}
        </fieldset>
      )}
      <Fault id={`${placeId(place)}-ticked`} of={fault} />
    </div>
  );
}
