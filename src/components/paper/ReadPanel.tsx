/** What the paper leaves before any test is done, and what each test is for. */
import { OR } from "#words/language.ts";
import * as say from "#words/paper.ts";
import * as read from "#words/read.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import type { PaperWork } from "./paper-work.types.ts";

/** Ions named for one sight, and sights shown for one test, before the rest is counted or folded. */
const MANY = 12;
const SHOWN = 6;

const named = (ions: readonly string[]) =>
  ions.length > MANY ? read.andMore(ions.slice(0, MANY).join(", "), ions.length - MANY) : ions.join(", ");

export function ReadPanel({ work }: { work: PaperWork }) {
  const { given, says, pairs, table, purposes } = work;
  return (
    <>
      <h3>{say.LEAVES_OPEN}</h3>
      <ul class="print">
        {[...given, ...says].map((sentence) => (
          <li key={sentence}>
            <Words of={sentence} />
          </li>
        ))}
      </ul>
      <ul class="plain">
        {table.samples.map(({ label, set }) => {
          const { salts } = table.sets[set];
          return (
            <li key={label}>
              <details>
                <summary>{say.canBe(label, salts.length)}</summary>
                <p class="small">
                  <Words of={salts.map((salt) => table.salts[salt].formula).join(", ")} />
                </p>
              </details>
            </li>
          );
        })}
      </ul>
      {pairs.map(({ samples, pairs: all, possible, reasons }) => (
        <details key={samples}>
          <summary>{say.cannotBe(all - possible, all, samples)}</summary>
          <ul class="small">
            {reasons.map(({ salts, reason }) => (
              <li key={reason}>
                <Words of={`${list(salts)}: ${reason}.`} />
              </li>
            ))}
          </ul>
        </details>
      ))}
      {purposes.length > 0 && (
        <>
          <h3>{read.PURPOSES}</h3>
          <table class="stack purpose">
            <thead>
              <tr>
                <th scope="col">{read.TEST}</th>
                <th scope="col">{read.SEEN}</th>
                <th scope="col">{read.GAS_HEAD}</th>
              </tr>
            </thead>
            <tbody>
              {purposes.map((row) => (
                <Purpose key={row.id} row={row} />
              ))}
            </tbody>
          </table>
        </>
      )}
    </>
  );
}

function Purpose({ row }: { row: PaperWork["purposes"][number] }) {
  // Where salts decide and not ions alone, the list is long: it is folded away.
  const open = row.byIon ? row.sights.slice(0, SHOWN) : [];
  const folded = row.sights.slice(open.length);
  return (
    <tr>
      <th scope="row">
        <b>{row.id}</b> <Words of={row.test} />
      </th>
      <td>
        {open.length === 0 && row.tells}
        {open.length > 0 && (
          <ul class="sights">
            {open.map(({ seen, shownBy }) => (
              <li key={seen}>
                <Words of={seen} />:{" "}
                <b>
                  <Words of={named(shownBy)} />
                </b>
              </li>
            ))}
          </ul>
        )}
        {folded.length > 0 && (
          <details>
            <summary>
              {open.length > 0 ? say.more(folded.length) : read.theSights(folded.length)}
              <span class="vh"> {read.ofTest(row.id)}</span>
            </summary>
            <ul>
              {folded.map(({ seen, shownBy }) => (
                <li key={seen}>
                  <Words of={`${seen}: ${named(shownBy)}`} />
                </li>
              ))}
            </ul>
          </details>
        )}
      </td>
      <td data-head={read.GAS}>{row.gases.length > 0 ? list(row.gases, OR) : read.NO_GAS}</td>
    </tr>
  );
}
