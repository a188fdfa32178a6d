/** A salt made up as a sample. */
import { type Form, solidForm } from "./allowed-salts.ts";
import type { Content } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";

/** The salt as a sample of that form: at its strength, and as the solid of the store where a solid is given. */
export function asSample(salt: Content, { given, concentration }: Form): TestedSalt {
  return {
    ions: salt.ions,
    ...(concentration && { molPerDm3: concentration.molPerDm3 }),
    ...(given !== "solution" && { solid: solidForm(salt) }),
  };
}
