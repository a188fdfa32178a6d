/** The rack of a bench card, with the marks of the tubes the school really has. Reads fully as built, without script. */
import { TOO_MUCH } from "#words/sheets.ts";
import { brimCapacity, depthOfVolume } from "../../engine/planning/geometry.ts";
import type { RackRow } from "../../engine/planning/rack-places.ts";
import { figures } from "../figures.ts";
import { RackPlaces } from "../prepare/RackPlaces.tsx";
import type { DrawnSize, RackTube, TubeKind } from "../prepare/rack.ts";
import { figure } from "../prepare/Tube.tsx";
import { TubeChoice, Unread } from "../prepare/TubeChoice.tsx";
import { sizeOf, useTubeSizes } from "../prepare/use-tube-sizes.ts";

interface Props {
  rows: RackRow[];
  tubes: RackTube[];
  kinds: TubeKind[];
}

/** What stands under a label: "0.2 g", "1 cm³ 9 mm". */
const underLabel = ({ solidG, marks }: RackTube, size: DrawnSize): string[] => [
  ...(solidG ? [`${figures(solidG)} g`] : []),
  ...marks.map(({ cm3 }) =>
    cm3 > brimCapacity(size)
      ? `${figure(cm3)} cm³ ${TOO_MUCH}`
      : `${figure(cm3)} cm³ ${Math.round(depthOfVolume(cm3, size))} mm`,
  ),
];

export default function CardRack({ rows, tubes, kinds }: Props) {
  const sizes = useTubeSizes(tubes, kinds, true);
  const under = (label: string) => {
    const tube = tubes.find(({ labels }) => labels.includes(label));
    return tube ? underLabel(tube, sizeOf(tube, kinds, sizes.chosen)) : [];
  };
  return (
    <>
      <TubeChoice kinds={kinds} sizes={sizes} />
      <Unread faults={sizes.faults} />
      <RackPlaces rows={rows} under={under} />
    </>
  );
}
