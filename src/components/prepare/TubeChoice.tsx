/** The tubes a school really has: a list of sizes for each kind of which there are several. */
import { NOT_UNDERSTOOD } from "#words/bench-plan.ts";
import { useAwake } from "../awake.ts";
import type { TubeKind } from "./rack.ts";
import type { TubeSizes } from "./use-tube-sizes.ts";

interface Props {
  kinds: readonly TubeKind[];
  sizes: TubeSizes;
}

export function TubeChoice({ kinds, sizes: { chosen, choose } }: Props) {
  const awake = useAwake();
  return (
    <p class="tools screen">
      {kinds.map(
        (kind, index) =>
          kind.sizes.length > 1 && (
            <label key={kind.name}>
              {kind.name}:{" "}
              <select
                autocomplete="off"
                disabled={!awake}
                value={chosen[index]}
                onChange={(event) => choose(index, event.currentTarget.value)}
              >
                {kind.sizes.map((size) => (
                  <option key={size.id} value={size.id}>
                    {size.name}
                  </option>
                ))}
              </select>
            </label>
          ),
      )}
    </p>
  );
}

/** What of a link could not be read. */
export function Unread({ faults }: Pick<TubeSizes, "faults">) {
  return (
    <>
      {faults.map((fault) => (
        <p class="caution small" key={fault}>
          <b>{NOT_UNDERSTOOD}</b> {fault}
        </p>
      ))}
    </>
  );
}
