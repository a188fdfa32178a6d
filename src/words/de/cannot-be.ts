/** Why a salt cannot be a sample, in half sentences. Strengths and amounts come as text with their units. */

export const NO_MIXTURE = "Gemische von Feststoffen werden nicht vorhergesagt, nur Gemische in Lösung";
export const oxidisesItself = (name: string) => `${name} oxidiert sich selbst, einen solchen Feststoff gibt es nicht`;
export const turnsIntoAmmonia = (name: string) =>
  `${name} wird zu Ammoniak, einen solchen Feststoff zum Ausgeben gibt es nicht`;
export const takenApart = (name: string) =>
  `Wasser zersetzt ${name} sofort, einen solchen Feststoff zum Ausgeben gibt es nicht`;
/** @param several the ions of a mixture do it to one another */
export const noSolution = (name: string, several: boolean) =>
  `${name} ${several ? "oxidieren einander" : "oxidiert sich selbst"}, eine solche Lösung gibt es nicht`;
export const hardlyDissolves = (name: string) => `${name} löst sich kaum (Regel aus dem Lehrbuch; keine Konstante)`;
export const notTogether = (name: string, at: string, amount: string, solid: string) =>
  `${name} bleiben bei ${at} nicht zusammen gelöst: ${amount} ${solid} fallen aus`;
export const doesNotDissolve = (name: string, at: string, amount: string) =>
  `${name} löst sich nicht zu ${at}: ${amount} bleiben fest`;
export const splits = (name: string, at: string, amount: string) =>
  `Wasser spaltet ${name} bei ${at}: ${amount} eines anderen Feststoffs fallen aus`;
