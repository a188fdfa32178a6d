/** What stands ready: samples, reagents and glass, with how much of each. In a walkthrough and in a paper of one's own. */
import * as say from "#words/prepare.ts";
import type { BenchPlan } from "../../engine/planning/bench-plan.ts";
import { figures } from "../figures.ts";
import { Words } from "../Words.tsx";

const figure = (cm3: number) => figures(Math.round(cm3 * 100) / 100);

/** What is used of a liquid and what is set out, cm3. */
function Volumes({ used, setOut }: { used: number; setOut: number }) {
  return (
    <>
      <td class="num">{figure(used)} cm³</td>
      <td class="num">{figure(setOut)} cm³</td>
    </>
  );
}

export function SetOut({ plan }: { plan: Pick<BenchPlan, "samples" | "reagents" | "besides"> }) {
  return (
    <>
      <h3>{say.SET_OUT_HEADING}</h3>
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
                  {say.pieces(pieces)}
                </td>
              ) : (
                <Volumes used={neededCm3} setOut={setOutCm3} />
              )}
            </tr>
          ))}
          {plan.besides.map(({ what, neededCm3, setOutCm3 }) => (
            <tr key={what}>
              <th scope="row">
                <Words of={what} />
              </th>
              <Volumes used={neededCm3} setOut={setOutCm3} />
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** Glass, burner, papers and splints, each with its reason. */
export function Extras({ of }: { of: BenchPlan["extras"] }) {
  return (
    <ul class="ready">
      {of.map(({ what, count, prepare, because }) => (
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
  );
}
