/** A part of the page that nothing around it waits for. */
import type { ComponentChildren } from "preact";
import { useAfterPaint } from "./use-after-paint.ts";

interface Props {
  /** Worked out anew when this is another one. */
  on: unknown;
  of(): ComponentChildren;
}

export const AfterPaint = ({ on, of }: Props) => <>{useAfterPaint(on, of)}</>;
