/** The tests as instructions, with the cautions of each part and what may mislead. */
import * as say from "#words/paper.ts";
import { Words } from "../Words.tsx";
import type { PaperWork } from "./paper-work.types.ts";

export function CarryOutPanel({ work: { parts, whole } }: { work: PaperWork }) {
  return (
    <>
      {parts.map((part) => (
        <div class="leaf part" key={part.label}>
          <h3>
            {part.label} <Words of={part.title} />
            {part.only.length > 0 && <span class="soft"> {say.only(part.only.join(", "))}</span>}
          </h3>
          {part.askFirst.map((says) => (
            <p class="caution" key={says}>
              <b>{say.ASK_FIRST}</b> <Words of={says} />
            </p>
          ))}
          {part.cautions.length > 0 && (
            <aside class="margin" aria-label={say.cautionsForPart(part.label)}>
              {part.cautions.map(({ title, says, href }) => (
                <div class="caution" key={href}>
                  <p>
                    <b>{title}.</b> <Words of={says} /> <a href={href}>{say.MORE}</a>
                  </p>
                </div>
              ))}
            </aside>
          )}
          <div>
            {part.tests.map(({ id, says, steps, warnings }) => (
              <div class="test" key={id}>
                {part.tests.length > 1 && <h4>{id}</h4>}
                {says && (
                  <p>
                    {say.PAPER_SAYS} <q>{says}</q>
                  </p>
                )}
                <ol>
                  {steps.map((step, index) => (
                    <li key={index}>
                      <Words of={step} />
                    </li>
                  ))}
                </ol>
                {warnings.map((warning) => (
                  <p class="soft" key={warning}>
                    <b>{say.MAY_MISLEAD}</b> <Words of={warning} />
                  </p>
                ))}
              </div>
            ))}
          </div>
        </div>
      ))}
      {!whole && <p class="soft">{say.STILL_LOOKING}</p>}
    </>
  );
}
