/** What an ion shows, in words for a table. */
import { GAS_NAMES } from "#words/gas-names.ts";
import * as say from "#words/ions.ts";
import { reagentName } from "#words/steps.ts";
import type { Prediction } from "../../engine/bench/prediction.ts";
import { GAS_SAFETY } from "../../engine/constants/gas-safety.ts";
import { reagents } from "../../engine/constants/reagents.ts";
import type { StandardTest, WrittenStep } from "../../engine/constants/standard-tests.ts";
import { step } from "../../engine/practical/step.ts";
import type { GivenOff } from "../../engine/practical.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { wordTest } from "../carry-out/step-words.ts";
import { list } from "../sentence.ts";

/** "white precipitate, or no visible change". */
export const readingWords = ({ readings }: Prediction): string =>
  readings.map((reading) => phrase(reading)).join(say.OR);

const BENCH = { reagents: reagents.map(({ id, name }) => ({ id, name: reagentName(id, name) })) };

/** What is done in a stage of a standard test: "sodium hydroxide, 5 drops". */
const stageWords = (steps: readonly WrittenStep[]): string =>
  say.short(wordTest({ steps: steps.map((one) => step.parse(one)) }, BENCH));

/** What is done in each stage; of a test of one stage its title says enough. */
export const stagesOf = ({ tests }: StandardTest): string[] => (tests.length > 1 ? tests.map(stageWords) : [""]);

/** Equations printed of one stage: manganate(VII) in drops has a way of its own for each degree of acid. */
const MOST = 2;

/** Net ionic equations of what happens, each once. */
export const equationsOf = (stages: readonly Prediction[]): string[] => [
  ...new Set(
    stages.flatMap(({ events }) => [...new Set(events.flatMap(({ equation }) => equation ?? []))].slice(0, MOST)),
  ),
];

/** "carbon dioxide, ammonia" of what is given off. */
export const gasesWords = (gases: readonly GivenOff[]): string => list(gases.map((gas) => GAS_NAMES[gas]));

/** "carbon dioxide: limewater turns milky". */
export const gasWords = (gas: GivenOff): string => `${GAS_NAMES[gas]}: ${say.shownBy(gas, GAS_SAFETY[gas].test)}`;
