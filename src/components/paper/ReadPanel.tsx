/** What the paper leaves before any test is done, and what each test is for. */
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import type { PaperWork } from "./paper-work.types.ts";

/** Ions named for one sight, and sights shown for one test, before the rest is counted or folded. */
const MANY = 12;
const SHOWN = 6;

const named = (ions: readonly string[]) =>
  ions.length > MANY ? `${ions.slice(0, MANY).join(", ")} and ${ions.length - MANY} more` : ions.join(", ");

export function ReadPanel({ work }: { work: PaperWork }) {
  const { given, says, pairs, table, purposes } = work;
  return (
    <>
      <h3>What the paper leaves open</h3>
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
                <summary>
                  {label} can be {salts.length === 1 ? "one salt" : `${salts.length} salts`}
                  {salts.length === 0 && ": no such sample can be made of these ions"}
                </summary>
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
          <summary>
            {all - possible} of {all} pairs of ions cannot be {samples}, and why
          </summary>
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
          <h3>What each test is for</h3>
          <table class="stack purpose">
            <thead>
              <tr>
                <th scope="col">Test</th>
                <th scope="col">What may be seen, and for which ions</th>
                <th scope="col">Gas that may come off</th>
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
  const byIon = row.tells.startsWith("Tells apart") && !row.tells.includes(" and which ");
  const open = byIon ? row.sights.slice(0, SHOWN) : [];
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
              {open.length > 0 ? `${folded.length} more` : `the ${folded.length} sights`}
              <span class="vh"> of {row.id}</span>
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
      <td data-head="Gas">{row.gases.length > 0 ? list(row.gases, "or") : "none"}</td>
    </tr>
  );
}
