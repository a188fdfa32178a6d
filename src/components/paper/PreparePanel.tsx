/** The bench for the paper: what to set out, the tubes, gases to be ready for, where the waste goes, the order of work, the checks. */

import { useEffect, useState } from "preact/hooks";
import * as say from "#words/paper-bench.ts";
import { CHECK, MIND, ORDER, TAKE_CARE, TUBES } from "#words/prepare.ts";
import { useLater } from "../later.ts";
import BenchPlan from "../prepare/BenchPlan.tsx";
import { GasesToExpect, Waste } from "../prepare/GasesAndWaste.tsx";
import { HeightsNote } from "../prepare/HeightsNote.tsx";
import { Extras, SetOut } from "../prepare/SetOut.tsx";
import { Words } from "../Words.tsx";
import { type Draft, written } from "./draft.ts";
import { desk } from "./paper-desk.ts";
import type { Order as OrderProps, PaperWork } from "./paper-work.types.ts";

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
          <b>{TAKE_CARE}</b>
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
      <Extras of={plan.extras} />
      <h3>{TUBES}</h3>
      <BenchPlan key={rack.tubes.map(({ labels, size }) => `${labels} ${size}`).join()} {...rack} />
      {rack.tubes.length > 0 && <HeightsNote />}
      {plan.warnings.map((warning) => (
        <p class="caution small" key={warning}>
          <b>{MIND}</b> <Words of={warning} />
        </p>
      ))}
      <GasesToExpect of={plan.gases} />
      <Waste of={plan.waste} />
      <Order draft={draft} work={work} />
      <h3>{CHECK}</h3>
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
      <h3>{ORDER}</h3>
      <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{say.MINUTE_BY_MINUTE}</summary>
        {refused && <p class="caution">{refused}</p>}
        {module && found.order && <module.default key={JSON.stringify(found.order)} {...found.order} />}
        {!refused && !(module && found.order) && <p class="soft">{say.WORKING}</p>}
      </details>
    </>
  );
}
