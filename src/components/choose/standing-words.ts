import type { Standing } from "../../engine/deduction/hardness.ts";

export const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  easy: "easy",
  middling: "middling",
  hard: "hard",
  undecided: "not decided",
};
