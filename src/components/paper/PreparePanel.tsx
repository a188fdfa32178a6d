/** The bench for the paper: what to set out, the tubes, gases to be ready for, where the waste goes, the order of work, the checks. */

import { useEffect, useState } from "preact/hooks";
import * as say from "#words/paper-bench.ts";
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
  const { plan, rack } = work;
  return (
    <>
      <div class="caution">
        <p>
          <b>{say.TAKE_CARE}</b>
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
      <h3>{say.TUBES_TO_SCALE}</h3>
      <BenchPlan key={rack.tubes.map(({ labels, size }) => `${labels} ${size}`).join()} {...rack} />
      {rack.tubes.length > 0 && <HeightsNote />}
      {plan.warnings.map((warning) => (
        <p class="caution small" key={warning}>
          <b>{say.MIND}</b> <Words of={warning} />
        </p>
      ))}
      <GasesAndWaste plan={plan} />
      <Order draft={draft} work={work} />
      <h3>{say.CHECK}</h3>
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
  const refused = failed ? say.ORDER_NOT_FETCHED : found.refused;
  return (
    <>
      <h3>{say.ORDER}</h3>
      <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{say.MINUTE_BY_MINUTE}</summary>
        {refused && <p class="caution">{refused}</p>}
        {module && found.order && <module.default key={JSON.stringify(found.order)} {...found.order} />}
        {!refused && !(module && found.order) && <p class="soft">{say.WORKING}</p>}
      </details>
    </>
  );
}

function SetOut({ plan }: Pick<PaperWork, "plan">) {
  return (
    <>
      <h3>{say.SET_OUT}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{say.WHAT}</th>
            <th scope="col" class="num">
              {say.USED}
            </th>
            <th scope="col" class="num">
              {say.SET_OUT}
            </th>
          </tr>
        </thead>
        <tbody>
          {plan.samples.map(({ sample, needed, setOut }) => (
            <tr key={sample}>
              <th scope="row">
                {say.SAMPLE} <b>{sample}</b>
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
                  {say.smallPieces(pieces)}
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
          <h3>{say.GASES}</h3>
          <table class="stack">
            <thead>
              <tr>
                <th scope="col">{say.GAS}</th>
                <th scope="col">{say.TESTS}</th>
                <th scope="col">{say.FROM}</th>
                <th scope="col">{say.HAVE_READY}</th>
              </tr>
            </thead>
            <tbody>
              {gasesTogether(plan.gases).map(({ tests, gas, from, have }) => (
                <tr key={`${gas} ${tests[0]}`}>
                  <th scope="row">
                    <Words of={gas} />
                  </th>
                  <td data-head={say.TESTS}>{tests.join(", ")}</td>
                  <td data-head={say.FROM}>
                    <Words of={from.join(", ")} />
                  </td>
                  <td data-head={say.HAVE_READY}>
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
          <h3>{say.EMPTIED}</h3>
          <p>{say.ALKALI_FIRST}</p>
          <table class="stack">
            <thead>
              <tr>
                <th scope="col">{say.TUBES}</th>
                <th scope="col">{say.INTO}</th>
                <th scope="col">{say.HOW}</th>
              </tr>
            </thead>
            <tbody>
              {plan.waste.map(({ tubes, into, how }) => (
                <tr key={`${into} ${how}`}>
                  <th scope="row">
                    <b>{unbroken(tubes)}</b>
                  </th>
                  <td data-head={say.INTO}>{capital(into)}</td>
                  <td data-head={say.HOW}>
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
