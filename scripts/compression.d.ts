declare module "compression" {
  import type { IncomingMessage, ServerResponse } from "node:http";
  /** A handler that compresses what the next one writes, when the request accepts it. */
  export default function compression(): (request: IncomingMessage, response: ServerResponse, next: () => void) => void;
}
