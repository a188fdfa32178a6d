/** Pages of cautions. */

export const CAUTIONS = "Cautions";
export const DESCRIPTION = "Reagents, gases and operations of salt analysis that can hurt, and what to do.";
export const ABOUT =
  "School reagents are dilute, but some blind, some poison, and a heated tube shoots. Read the page for each reagent you are going to open. What your teacher says and what your school's rules say comes first, always.";
export const WHAT_THEY_ARE_NOT = "What these pages are not";
export const NO_DATA_SHEET =
  "These pages are no safety data sheet and no risk assessment. Your school keeps both; ask for them.";
export const KINDS = { operation: "Operations", reagent: "Reagents and samples", gas: "Gases" };

/** One caution. */
export const titleOf = (caution: string) => `Take care: ${caution}`;
export const CAUTION = "Caution";
export const KIND = { operation: "operation", reagent: "reagent", gas: "gas" };
export const FIRST_OF_ALL = "First of all";
export const TEACHER_DECIDES =
  "Your teacher in charge and your school's rules decide. If anything goes wrong, tell them at once.";
/** Before tests. */
export const MET_IN = "Met in";

/** Where its facts come from. */
export const readFor = (sources: string) => `Read for this page: ${sources}.`;
export const FROM_MEMORY = "From memory, confirm with your school's safety data:";
