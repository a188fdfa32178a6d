import { useEffect, useState } from "preact/hooks";

/** False in the page as built and until the island's script runs: its controls stay disabled, or a choice made early would be lost. */
export function useAwake(): boolean {
  const [awake, wake] = useState(false);
  useEffect(() => wake(true), []);
  return awake;
}
