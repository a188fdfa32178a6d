import { TOO_MUCH } from "./finding.ts";

/** In place of a conclusion that nobody could follow. */
export const TooMuch = () => (
  <p class="caution">
    <b>{TOO_MUCH}</b> All that you entered is kept.
  </p>
);
