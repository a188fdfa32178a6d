/** Why a salt cannot be a sample, in half sentences. Strengths and amounts come as text with their units. */

export const NO_MIXTURE = "no mixture of solids is predicted, only mixtures in solution";
export const oxidisesItself = (name: string) => `${name} oxidises itself, so there is no such solid`;
export const turnsIntoAmmonia = (name: string) => `${name} turns into ammonia, so there is no such solid to give out`;
export const takenApart = (name: string) => `water takes ${name} apart at once, so there is no such solid to give out`;
/** @param several the ions of a mixture do it to one another */
export const noSolution = (name: string, several: boolean) =>
  `${name} ${several ? "oxidise one another" : "oxidises itself"}, so there is no such solution`;
export const hardlyDissolves = (name: string) => `${name} hardly dissolves (textbook rule; no constant)`;
export const notTogether = (name: string, at: string, amount: string, solid: string) =>
  `${name} do not stay dissolved together at ${at}: ${amount} of ${solid} comes out`;
export const doesNotDissolve = (name: string, at: string, amount: string) =>
  `${name} does not dissolve to ${at}: ${amount} stays solid`;
export const splits = (name: string, at: string, amount: string) =>
  `water splits ${name} at ${at}: ${amount} of another solid comes out`;
