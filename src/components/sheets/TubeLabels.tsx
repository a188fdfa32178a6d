/** Labels for the tubes, to cut out, with the marks of the tubes the school really has. Reads fully as built, without script. */
import * as say from "#words/sheets.ts";
import { brimCapacity } from "../../engine/planning/geometry.ts";
import { figures } from "../figures.ts";
import type { RackTube, TubeKind } from "../prepare/rack.ts";
import { depthWords, figure, upTo } from "../prepare/Tube.tsx";
import { TubeChoice, Unread } from "../prepare/TubeChoice.tsx";
import { sizeOf, useTubeSizes } from "../prepare/use-tube-sizes.ts";

interface Props {
  tubes: RackTube[];
  kinds: TubeKind[];
}

export default function TubeLabels({ tubes, kinds }: Props) {
  const sizes = useTubeSizes(tubes, kinds, true);
  return (
    <>
      <TubeChoice kinds={kinds} sizes={sizes} />
      <Unread faults={sizes.faults} />
      <ul class="cut">
        {tubes.flatMap((tube) => {
          const size = sizeOf(tube, kinds, sizes.chosen);
          const brim = brimCapacity(size);
          return tube.labels.map((label) => (
            <li key={label}>
              <b>{label}</b>
              <span>{size.name}</span>
              {tube.solidG && <span>{say.ofSolid(figures(tube.solidG))}</span>}
              {tube.marks.map(({ cm3 }) => (
                <span key={cm3}>
                  {figure(cm3)} cm³: {cm3 > brim ? say.DOES_NOT_FIT : depthWords(cm3, size)}
                </span>
              ))}
              {tube.heatedFill && <span>{say.hotAtMost(upTo(tube.heatedFill * brim))}</span>}
            </li>
          ));
        })}
      </ul>
    </>
  );
}
