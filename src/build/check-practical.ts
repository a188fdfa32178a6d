/** Holds a practical against the engine: what the author states must be what the engine finds, and the tests must decide the answer. */
import { mayBe } from "../engine/bench/agreement.ts";
import { cannotBe } from "../engine/bench/allowed-salts.ts";
import { hasChemistry } from "../engine/bench/predict.ts";
import type { PredictionTable } from "../engine/bench/prediction-table.ts";
import { ionsOf } from "../engine/bench/salt.ts";
import { reagents } from "../engine/constants/reagents.ts";
import { undecided } from "../engine/deduction/deduce.ts";
import { createSolver } from "../engine/equilibrium/solve.ts";
import { cellsOf, type Practical } from "../engine/practical.ts";
import { phrase } from "../engine/wording/phrase.ts";
import type { ContentFault } from "./faults.ts";
import type { PracticalFile } from "./practical-files.ts";
import { type Walkthrough, walkthrough } from "./walkthrough.ts";

const solve = createSolver();

/** All faults of one practical that reads well but is wrong; empty when it may be published. */
export function checkPractical({ source, practical }: PracticalFile): ContentFault[] {
  const fault = (
    path: (string | number)[],
    rest: Omit<ContentFault, "file" | "line" | "column" | "excerpt">,
  ): ContentFault => ({
    ...source.placeOf(path),
    ...rest,
  });
  const early = [...unknownSteps(practical, fault), ...wrongAnswers(practical, fault)];
  if (early.length > 0) return early;
  const computed = walkthrough(practical);
  return [...wrongObservations(practical, computed, fault), ...undecidedSamples(practical, computed, fault)];
}

type MakeFault = (
  path: (string | number)[],
  rest: Omit<ContentFault, "file" | "line" | "column" | "excerpt">,
) => ContentFault;

/** Steps the engine cannot carry out on the samples given. */
function unknownSteps({ parts, samples }: Practical, fault: MakeFault): ContentFault[] {
  const ids = reagents.map(({ id }) => id);
  const faults: ContentFault[] = [];
  parts.forEach((part, p) => {
    const done = samples.filter(({ label }) => part.samples?.includes(label) ?? true);
    part.tests.forEach((test, t) => {
      test.steps.forEach((step, s) => {
        const path = ["parts", p, "tests", t, "steps", s];
        if (step.do === "add" && !ids.includes(step.reagent)) {
          faults.push(
            fault([...path, "add"], {
              what: `part ${part.label}: unknown reagent`,
              stated: step.reagent,
              found: "no such reagent in the engine's list",
              advice: `use one of ${ids.join(", ")}, or add the reagent to src/engine/constants/reagents.ts with its source`,
            }),
          );
        }
        if (step.do !== "take") return;
        const wrong = done.filter(({ given }) => given === ("volume" in step ? "solid" : "solution"));
        if (wrong.length === 0) return;
        const letters = wrong.map(({ label }) => label).join(", ");
        const [given, amount] =
          "volume" in step ? ["a solid", "a mass such as 0.2 g"] : ["a solution", "a volume such as 1 cm3"];
        faults.push(
          fault([...path, "take"], {
            what: `part ${part.label}: the sample cannot be taken so`,
            stated: "volume" in step ? `${step.volume.cm3} cm3` : `${step.mass.g} g`,
            found: `${letters} given as ${given}`,
            advice: `take ${amount}, or name the samples of this part`,
          }),
        );
      });
    });
  });
  return faults;
}

/** Answers that are no salt the paper allows, or that break what the paper says. */
function wrongAnswers({ samples, paper }: Practical, fault: MakeFault): ContentFault[] {
  const faults: ContentFault[] = [];
  const answers = samples.map((sample, index) => {
    const path = ["samples", index, "salt"];
    const salt = ionsOf(sample.salt);
    if (!salt) {
      faults.push(
        fault(path, {
          what: `sample ${sample.label}: the answer`,
          stated: sample.salt,
          found: "not a salt of one cation and one anion the engine knows",
          advice: "name such a salt, for example ZnSO4",
        }),
      );
      return undefined;
    }
    const missing = [salt.cation, salt.anion].filter(
      (ion) => !([...paper.cations, ...paper.anions] as string[]).includes(ion),
    );
    if (missing.length > 0) {
      faults.push(
        fault(path, {
          what: `sample ${sample.label}: the answer`,
          stated: sample.salt,
          found: `${missing.join(" and ")} not among the ions the paper offers`,
          advice: "add the ion to the paper's list, or change the salt",
        }),
      );
    }
    const reason = cannotBe(salt, sample, solve);
    if (reason) {
      faults.push(
        fault(path, {
          what: `sample ${sample.label}: the answer cannot be given so`,
          stated: `${sample.salt} as ${sample.given}`,
          found: reason,
          advice: "choose another salt, concentration or form",
        }),
      );
    }
    return salt;
  });
  for (const kind of ["cation", "anion"] as const) {
    const of = (letter: string) => answers[samples.findIndex(({ label }) => label === letter)]?.[kind];
    const different = new Set(answers.map((salt) => salt?.[kind]));
    const said = paper.inAll?.[`${kind}s`];
    if (said !== undefined && !different.has(undefined) && different.size !== said) {
      faults.push(
        fault(["paper", "inAll", `${kind}s`], {
          what: "the paper's statement",
          stated: `${said} different ${kind}s in all`,
          found: `${different.size} in the author's salts: ${[...different].join(", ")}`,
          advice: "correct the number or the salts",
        }),
      );
    }
    paper.share.forEach((group, index) => {
      const held = new Set(group.samples.map(of));
      if (group.ion === kind && held.size > 1) {
        faults.push(
          fault(["paper", "share", index], {
            what: "the paper's statement",
            stated: `${group.samples.join(" and ")} hold the same ${kind}`,
            found: `${[...held].join(", ")} in the author's salts`,
            advice: "correct the statement or the salts",
          }),
        );
      }
    });
    paper.differ.forEach((group, index) => {
      const held = group.samples.map(of);
      if (group.ion === kind && new Set(held).size < held.length) {
        faults.push(
          fault(["paper", "differ", index], {
            what: "the paper's statement",
            stated: `no two of ${group.samples.join(", ")} hold the same ${kind}`,
            found: `${held.join(", ")} in the author's salts`,
            advice: "correct the statement or the salts",
          }),
        );
      }
    });
  }
  return faults;
}

/** Observations the author's own salts would not show. */
function wrongObservations(practical: Practical, { predicted, table }: Walkthrough, fault: MakeFault): ContentFault[] {
  const cells = cellsOf(practical.parts);
  return Object.entries(practical.record).flatMap(([sample, row]) =>
    Object.entries(row).flatMap(([id, seen]) => {
      const path = ["record", sample, id];
      const cell = cells.find((each) => each.id === id);
      const solid = table.cells.find((each) => each.id === id)?.dry ? "solid" : "precipitate";
      const readings = predicted[sample]?.[id]?.readings ?? [];
      const stated = phrase(seen, solid);
      if (readings.length === 0) {
        const hard = cell?.test.steps.find((step) => !hasChemistry(step))?.do ?? "an earlier step of this part";
        return fault(path, {
          what: `record ${sample} ${id}`,
          stated,
          found: `the engine does not predict this test (${hard}), so nobody could check it`,
          advice: "leave this observation out",
        });
      }
      if (readings.some((reading) => mayBe(seen, reading))) return [];
      return fault(path, {
        what: `record ${sample} ${id}`,
        stated,
        found: `the engine finds ${readings.map((reading) => phrase(reading, solid)).join(", or ")} for ${practical.samples.find(({ label }) => label === sample)?.salt}`,
        advice: "correct the observation, the steps or the salt",
      });
    }),
  );
}

/** Samples the tests leave open without the page saying so, and openness claimed where there is none. */
function undecidedSamples(practical: Practical, { table, record }: Walkthrough, fault: MakeFault): ContentFault[] {
  const left = undecided(table, record);
  return practical.samples.flatMap((sample, index) => {
    const answer = ionsOf(sample.salt)?.formula;
    const others = left[sample.label].map((salt) => table.salts[salt].formula).filter((formula) => formula !== answer);
    const said = (practical.undecided?.[sample.label] ?? []).map((formula) => ionsOf(formula)?.formula ?? formula);
    const silent = others.filter((formula) => !said.includes(formula));
    const wrong = said.filter((formula) => !others.includes(formula));
    const faults: ContentFault[] = [];
    if (silent.length > 0) {
      faults.push(
        fault(["samples", index], {
          what: `sample ${sample.label}: the tests do not decide it`,
          stated: `${sample.salt} is the answer`,
          found: `${silent.join(", ")} would give the same record`,
          advice: `add a test that tells them apart${hint(table, sample.label, answer, silent)}, or list them under undecided`,
        }),
      );
    }
    if (wrong.length > 0) {
      faults.push(
        fault(["undecided", sample.label], {
          what: `sample ${sample.label}: not as open as stated`,
          stated: `${wrong.join(", ")} stays possible`,
          found: "the record rules it out",
          advice: "take it off the list",
        }),
      );
    }
    return faults;
  });
}

/** A test of the procedure that tells the answer from the others but is not in the record, when there is one. */
function hint(table: PredictionTable, label: string, answer: string | undefined, others: readonly string[]): string {
  const at = table.samples.find((each) => each.label === label);
  if (!at) return "";
  const set = table.sets[at.set];
  const row = (formula: string | undefined) =>
    set.accepts[set.salts.findIndex((salt) => table.salts[salt].formula === formula)];
  const mine = row(answer);
  const cell = table.cells.find(
    (_, c) => mine?.[c] && others.every((other) => row(other)?.[c] && (row(other)[c] & mine[c]) === 0),
  );
  return cell ? ` (${cell.id} does, but the record leaves it out)` : "";
}
