/** Keeping the whole course on the device: how large it is, how it stands, and a button for each thing that can be done. */
import * as say from "#words/keep.ts";
import { faultWords, keepWords, megabytes, roomWords, standingWords } from "./keep-words.ts";
import { type KeptCourse, type Standing, useKeptCourse } from "./use-kept-course.ts";

interface Props {
  /** Path of the course on its host, ending in a slash. */
  base: string;
}

export default function KeepCourse({ base }: Props) {
  const { state, isPersistent, keep, stop, remove } = useKeptCourse(base);
  switch (state.at) {
    case "looking":
      return <p class="soft screen">{say.LOOKING}</p>;
    case "impossible":
      return <p class="caution">{say.NOT_HERE}</p>;
    case "storing":
      return (
        <p class="tools">
          <progress max={state.of} value={state.files} aria-label={say.FILES_STORED} />
          <span>{say.filesOf(state.files, state.of)}</span>
          <button type="button" onClick={stop}>
            {say.STOP}
          </button>
        </p>
      );
    case "standing":
      return <Stands of={state} isPersistent={isPersistent} keep={keep} remove={remove} />;
  }
}

interface StandsProps extends Pick<KeptCourse, "isPersistent" | "keep" | "remove"> {
  of: Standing;
}

function Stands({ of: { kept, newest, free, fault, partly }, isPersistent, keep, remove }: StandsProps) {
  const isNewest = kept !== undefined && kept.version === newest?.version;
  // Of a newer edition only what has changed is fetched, so only a first storing can be held against what is free.
  const noRoom = newest && !kept ? roomWords(newest.bytes, free) : undefined;
  return (
    <>
      <p role="status">{standingWords(kept, newest)}</p>
      {fault && <p class="caution">{faultWords(fault, newest?.bytes ?? 0)}</p>}
      {noRoom && fault !== "no room" && <p class="caution">{noRoom}</p>}
      {kept && isPersistent === false && <p class="small soft">{say.NOT_FOR_GOOD}</p>}
      <p class="tools">
        {newest && !isNewest && (
          <button type="button" disabled={noRoom !== undefined} onClick={keep}>
            {keepWords(newest, kept !== undefined)}
          </button>
        )}
        {(kept || partly) && (
          <button type="button" onClick={remove}>
            {kept ? say.remove(megabytes(kept.bytes)) : say.REMOVE_FETCHED}
          </button>
        )}
      </p>
    </>
  );
}
