/** The bench for the paper: what to set out, the tubes, gases to be ready for, where the waste goes, the order of work, the checks. */
import { useEffect, useState } from "preact/hooks";
import { capital } from "../capital.ts";
import { useLater } from "../later.ts";
import BenchPlan from "../prepare/BenchPlan.tsx";
import { gasesTogether } from "../prepare/gases-together.ts";
import { HeightsNote } from "../prepare/HeightsNote.tsx";
import { Words } from "../Words.tsx";
import { type Draft, written } from "./draft.ts";
import { desk } from "./paper-desk.ts";
import type { Order as OrderProps, PaperWork } from "./paper-work.types.ts";

const figure = (cm3: number) => Math.round(cm3 * 100) / 100;
/** A label stays on one line. */
const unbroken = (labels: readonly string[]) => labels.map((label) => label.replace(/ /g, "\u00a0")).join(", ");

interface Props {
  draft: Draft;
  work: PaperWork;
}

export function PreparePanel({ draft, work }: Props) {
  const { plan, rack, kinds, shakenFill } = work;
  return (
    <>
      <div class="caution">
        <p>
          <b>Take care</b>
        </p>
        <ul>
          {plan.cautions.map((caution) => (
            <li key={caution}>
              <Words of={caution} />
            </li>
          ))}
        </ul>
      </div>
      <SetOut plan={plan} />
      <h3>Tubes, drawn to one scale</h3>
      <BenchPlan
        key={rack.map(({ labels, size }) => `${labels} ${size}`).join()}
        tubes={rack}
        kinds={kinds}
        shakenFill={shakenFill}
      />
      {rack.length > 0 && <HeightsNote />}
      {plan.warnings.map((warning) => (
        <p class="caution small" key={warning}>
          <b>Mind:</b> <Words of={warning} />
        </p>
      ))}
      <GasesAndWaste plan={plan} />
      <Order draft={draft} work={work} />
      <h3>Check before you begin</h3>
      <ol class="ready">
        {plan.checks.map((check) => (
          <li key={check}>
            <Words of={check} />
          </li>
        ))}
      </ol>
    </>
  );
}

/** The order of work, minute by minute, asked of the worker when it is first looked at. */
function Order({ draft, work }: Props) {
  const { module, failed, load } = useLater(() => import("../prepare/order/OrderOfWork.tsx"));
  const [open, setOpen] = useState(false);
  const [found, keep] = useState<{ order?: OrderProps; refused?: string }>({});
  useEffect(() => {
    if (!open) return;
    let isNewest = true;
    load();
    desk.order(written(draft)).then((answer) => {
      if (isNewest) keep("refused" in answer ? answer : { order: answer });
    });
    return () => {
      isNewest = false;
    };
  }, [open, work]);
  const refused = failed ? "It could not be fetched. Load the page again." : found.refused;
  return (
    <>
      <h3>Order of work</h3>
      <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>Who does what when, minute by minute</summary>
        {refused && <p class="caution">{refused}</p>}
        {module && found.order && <module.default key={JSON.stringify(found.order)} {...found.order} />}
        {!refused && !(module && found.order) && <p class="soft">Working it out …</p>}
      </details>
    </>
  );
}

function SetOut({ plan }: Pick<PaperWork, "plan">) {
  return (
    <>
      <h3>Set out</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col" class="num">
              Used
            </th>
            <th scope="col" class="num">
              Set out
            </th>
          </tr>
        </thead>
        <tbody>
          {plan.samples.map(({ sample, needed, setOut }) => (
            <tr key={sample}>
              <th scope="row">
                sample <b>{sample}</b>
              </th>
              <td class="num said">
                <Words of={needed} />
              </td>
              <td class="num said">
                <Words of={setOut} />
              </td>
            </tr>
          ))}
          {plan.reagents.map(({ id, name, concentration, pieces, neededCm3, setOutCm3 }) => (
            <tr key={`${id} ${concentration}`}>
              <th scope="row">
                <Words of={name} />
                {concentration && (
                  <span class="soft">
                    , <Words of={concentration} />
                  </span>
                )}
              </th>
              {pieces !== undefined ? (
                <td class="num" colSpan={2}>
                  {pieces} small pieces
                </td>
              ) : (
                <>
                  <td class="num">{figure(neededCm3)} cm³</td>
                  <td class="num">{setOutCm3} cm³</td>
                </>
              )}
            </tr>
          ))}
          {plan.besides.map(({ what, neededCm3, setOutCm3 }) => (
            <tr key={what}>
              <th scope="row">
                <Words of={what} />
              </th>
              <td class="num">{figure(neededCm3)} cm³</td>
              <td class="num">{setOutCm3} cm³</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul class="ready">
        {plan.extras.map(({ what, count, prepare, because }) => (
          <li key={what}>
            <b>
              {count > 1 && `${count} × `}
              <Words of={what} />
            </b>
            {prepare && (
              <>
                : <Words of={prepare} />
              </>
            )}{" "}
            <span class="soft">
              (<Words of={because} />)
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function GasesAndWaste({ plan }: Pick<PaperWork, "plan">) {
  return (
    <>
      {plan.gases.length > 0 && (
        <>
          <h3>Gases to be ready for</h3>
          <table class="stack">
            <thead>
              <tr>
                <th scope="col">Gas</th>
                <th scope="col">Tests</th>
                <th scope="col">From</th>
                <th scope="col">Have ready</th>
              </tr>
            </thead>
            <tbody>
              {gasesTogether(plan.gases).map(({ tests, gas, from, have }) => (
                <tr key={`${gas} ${tests[0]}`}>
                  <th scope="row">
                    <Words of={gas} />
                  </th>
                  <td data-head="Tests">{tests.join(", ")}</td>
                  <td data-head="From">
                    <Words of={from.join(", ")} />
                  </td>
                  <td data-head="Have ready">
                    <Words of={have} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      {plan.waste.length > 0 && (
        <>
          <h3>Where each tube is emptied</h3>
          <p>
            Tubes with alkali first, tubes with acid last and a little at a time, in the fume cupboard if a sulfite may
            be there.
          </p>
          <table class="stack">
            <thead>
              <tr>
                <th scope="col">Tubes</th>
                <th scope="col">Into</th>
                <th scope="col">How</th>
              </tr>
            </thead>
            <tbody>
              {plan.waste.map(({ tubes, into, how }) => (
                <tr key={`${into} ${how}`}>
                  <th scope="row">
                    <b>{unbroken(tubes)}</b>
                  </th>
                  <td data-head="Into">{capital(into)}</td>
                  <td data-head="How">
                    <Words of={how} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </>
  );
}
