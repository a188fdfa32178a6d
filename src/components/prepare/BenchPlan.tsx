/** The rack: every tube to scale with its fill marks, for the tubes the school really has. Reads fully as built, without script. */
import * as say from "#words/bench-plan.ts";
import { list } from "#words/language.ts";
import { brimCapacity } from "../../engine/planning/geometry.ts";
import { figures } from "../figures.ts";
import { Words } from "../Words.tsx";
import type { DrawnRack, DrawnSize, RackTube } from "./rack.ts";
import { depthWords, figure, Tube, upTo } from "./Tube.tsx";
import { TubeChoice, Unread } from "./TubeChoice.tsx";
import { sizeOf, useTubeSizes } from "./use-tube-sizes.ts";

/** A label stays on one line. */
const unbroken = (label: string) => label.replace(/ /g, "\u00a0");
/** Volumes that differ by less are the same, cm3. */
const ROUNDING = 1e-9;

/** Why the tube will not do, or nothing. Fillings are the greatest the tests may need. */
function faultOf(tube: RackTube, size: DrawnSize, shakenFill: number): string | undefined {
  const most = Math.max(0, ...tube.marks.map((mark) => mark.cm3));
  const brim = brimCapacity(size);
  if (most > brim) return say.tooFull(figure(most), upTo(brim));
  const limit = (tube.heatedFill ?? 1) * brim;
  if (most > limit + ROUNDING) return say.tooFullToHeat(figure(most), upTo(limit));
  if (most > brim * shakenFill) return say.tooFullToShake(figure(most), upTo(brim));
  return undefined;
}

interface Props extends DrawnRack {
  /** The page is one practical's: its address keeps the sizes chosen. */
  inAddress?: boolean;
  /** Ids of sizes chosen before this was there to choose. */
  asked?: readonly string[];
}

export default function BenchPlan({ tubes, kinds, shakenFill, inAddress = false, asked }: Props) {
  const sizes = useTubeSizes(tubes, kinds, inAddress, asked);
  const rack = tubes.map((tube) => {
    const size = sizeOf(tube, kinds, sizes.chosen);
    return { tube, size, ...(tube.heatedFill && { limitCm3: tube.heatedFill * brimCapacity(size) }) };
  });
  const faults = rack.flatMap(({ tube, size }) => {
    const fault = faultOf(tube, size, shakenFill);
    return fault ? [{ labels: list(tube.labels), fault }] : [];
  });
  return (
    <>
      <TubeChoice kinds={kinds} sizes={sizes} />
      <ul class="rack" aria-hidden="true">
        {rack.map(({ tube, size, limitCm3 }) => (
          <li key={tube.labels[0]}>
            <Tube tube={tube} size={size} limitCm3={limitCm3} />
          </li>
        ))}
      </ul>
      <table class="stack">
        <caption>{say.CAPTION}</caption>
        <thead>
          <tr>
            <th scope="col">{say.HEADS.label}</th>
            <th scope="col">{say.HEADS.tube}</th>
            <th scope="col">{say.HEADS.marks}</th>
          </tr>
        </thead>
        <tbody>
          {rack.map(({ tube, size, limitCm3 }) => (
            <tr key={tube.labels[0]}>
              <th scope="row">
                <b>{list(tube.labels.map(unbroken))}</b>
              </th>
              <td data-head={say.HEADS.tube}>{size.name}</td>
              <td data-head={say.MARKS}>
                {tube.solidG && say.solidFirst(figures(tube.solidG)) + (tube.marks.length > 0 ? "; " : "")}
                {tube.marks.map((mark, index) => (
                  <span key={mark.cm3}>
                    {index > 0 && "; "}
                    {figure(mark.cm3)} cm³{" "}
                    {mark.cm3 > brimCapacity(size) ? say.DOES_NOT_FIT : say.at(depthWords(mark.cm3, size))} (
                    <Words of={mark.what} />)
                  </span>
                ))}
                {limitCm3 && say.neverAbove(upTo(limitCm3))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div aria-live="polite">
        <Unread faults={sizes.faults} />
        {faults.map(({ labels, fault }) => (
          <p class="caution small" key={labels}>
            <b>{say.ANOTHER_TUBE}</b> {labels}: {fault}
          </p>
        ))}
      </div>
    </>
  );
}
