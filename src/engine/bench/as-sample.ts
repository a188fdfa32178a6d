/** A salt made up as a sample. */
import { type Form, solidForm } from "./allowed-salts.ts";
import type { SimpleSalt } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";

/** The salt as a sample of that form: at its strength, and as the solid of the store where a solid is given. */
export function asSample(salt: SimpleSalt, { given, concentration }: Form): TestedSalt {
  return {
    ions: salt.ions,
    ...(concentration && { molPerDm3: concentration.molPerDm3 }),
    ...(given !== "solution" && { solid: solidForm(salt) }),
  };
}
