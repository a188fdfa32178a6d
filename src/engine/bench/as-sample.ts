/** A salt made up as a sample. */
import type { Form } from "./allowed-salts.ts";
import type { Content } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";
import { weighedAs } from "./weighed-as.ts";

/** The salt as a sample of that form: at its strength, and as the solid of the store where a solid is given. */
export function asSample(salt: Content, { given, concentration }: Form): TestedSalt {
  const strength = concentration && { molPerDm3: concentration.molPerDm3 };
  if (given === "solution") return { ions: salt.ions, ...strength };
  const { formula, ions } = weighedAs(salt);
  return { ions, ...strength, solid: formula };
}
