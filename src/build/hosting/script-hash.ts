import { createHash } from "node:crypto";

/**
 * The source expression by which a policy allows one script or style inside a page: the SHA-256 of what stands between the tags, in base 64
 * (CSP Level 3, W3C, section 2.3.1).
 */
export const scriptHash = (content: string): `sha256-${string}` =>
  `sha256-${createHash("sha256").update(content).digest("base64")}`;
