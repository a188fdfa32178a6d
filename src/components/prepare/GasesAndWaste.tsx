/** Which gas to be ready for, and where each tube is emptied. In a walkthrough and in a paper of one's own. */
import { GAS_NAMES } from "#words/gas-names.ts";
import * as say from "#words/prepare.ts";
import type { BenchPlan } from "../../engine/planning/bench-plan.ts";
import { capital } from "../capital.ts";
import { Words } from "../Words.tsx";
import { gasesTogether } from "./gases-together.ts";

/** A label stays on one line. */
const unbroken = (labels: readonly string[]) => labels.map((label) => label.replace(/ /g, "\u00a0")).join(", ");

function Heads({ of }: { of: Readonly<Record<string, string>> }) {
  return (
    <thead>
      <tr>
        {Object.values(of).map((head) => (
          <th scope="col" key={head}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
  );
}

export function GasesToExpect({ of }: { of: BenchPlan["gases"] }) {
  if (of.length === 0) return null;
  return (
    <div class="wide">
      <h3>{say.GASES}</h3>
      <table class="stack">
        <Heads of={say.GAS_HEADS} />
        <tbody>
          {gasesTogether(of).map(({ tests, gas, from, have }) => (
            <tr key={`${gas} ${tests[0]}`}>
              <th scope="row">{GAS_NAMES[gas]}</th>
              <td data-head={say.GAS_HEADS.tests}>{tests.join(", ")}</td>
              <td data-head={say.GAS_HEADS.from}>
                <Words of={from.join(", ")} />
              </td>
              <td data-head={say.GAS_HEADS.have}>
                <Words of={have} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

export function Waste({ of }: { of: BenchPlan["waste"] }) {
  if (of.length === 0) return null;
  return (
    <div class="wide">
      <h3>{say.EMPTIED}</h3>
      <p>{say.EMPTIED_ABOUT}</p>
      <table class="stack">
        <Heads of={say.WASTE_HEADS} />
        <tbody>
          {of.map(({ tubes, into, how }) => (
            <tr key={`${into} ${how}`}>
              <th scope="row">
                <b>{unbroken(tubes)}</b>
              </th>
              <td data-head={say.WASTE_HEADS.into}>{capital(into)}</td>
              <td data-head={say.WASTE_HEADS.how}>
                <Words of={how} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
