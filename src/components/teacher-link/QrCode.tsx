/** A link as a QR code (ISO/IEC 18004), drawn as one path. Dark on white on every paper, for cameras want it so. */

import { encode } from "uqr";
import { qrCode } from "#words/teacher-link.ts";

interface Props {
  of: string;
}

/** Modules of white around it that the standard asks for. */
const QUIET_ZONE = 4;

export function QrCode({ of }: Props) {
  const { size, data } = encode(of, { ecc: "M", border: QUIET_ZONE });
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : []))).join("");
  return (
    <svg class="qr" role="img" aria-label={qrCode(of)} viewBox={`0 0 ${size} ${size}`}>
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" shape-rendering="crispEdges" />
    </svg>
  );
}
