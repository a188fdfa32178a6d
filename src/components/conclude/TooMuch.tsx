import { ALL_KEPT, TOO_MUCH } from "#words/conclude.ts";

/** In place of a conclusion that nobody could follow. */
export const TooMuch = () => (
  <p class="caution">
    <b>{TOO_MUCH}</b> {ALL_KEPT}
  </p>
);
