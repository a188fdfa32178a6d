/** The author's salts against the paper: allowed ions, possible samples, and what the paper says they share. */
import { cannotBe, solidForm } from "../../engine/bench/allowed-salts.ts";
import { ionsOf, type SimpleSalt } from "../../engine/bench/salt.ts";
import type { Solver } from "../../engine/equilibrium/solve.ts";
import type { Practical, Sample, Statement } from "../../engine/practical.ts";
import type { ContentFault } from "../faults.ts";
import type { MakeFault } from "./make-fault.ts";

/** Answers that are no salt the paper allows, or that break what the paper says. */
export function wrongAnswers({ samples, paper }: Practical, solve: Solver, fault: MakeFault): ContentFault[] {
  const salts = new Map(samples.map((sample) => [sample.label, ionsOf(sample.salt)]));
  return [
    ...samples.flatMap((sample, index) =>
      wrongAnswer(sample, salts.get(sample.label), paper, solve, (rest) => fault(["samples", index, "salt"], rest)),
    ),
    ...brokenStatements(paper, salts, fault),
  ];
}

type Rest = Parameters<MakeFault>[1];

function wrongAnswer(
  sample: Sample,
  salt: SimpleSalt | undefined,
  paper: Statement,
  solve: Solver,
  fault: (rest: Rest) => ContentFault,
): ContentFault[] {
  const what = `sample ${sample.label}: the answer`;
  if (!salt) {
    const found = "not a salt of one cation and one anion the engine knows";
    return [fault({ what, stated: sample.salt, found, advice: "name such a salt, for example ZnSO4" })];
  }
  const proper = [...new Set([salt.formula, solidForm(salt)])];
  if (!proper.includes(sample.salt)) {
    const found = "another way of writing it, or water of crystallisation no store's bottle has";
    return [fault({ what, stated: sample.salt, found, advice: `write ${proper.join(" or ")}` })];
  }
  const offered: readonly string[] = [...paper.cations, ...paper.anions];
  const missing = [salt.cation, salt.anion].filter((ion) => !offered.includes(ion));
  if (missing.length > 0) {
    const found = `${missing.join(" and ")} not among the ions the paper offers`;
    return [fault({ what, stated: sample.salt, found, advice: "add the ion to the paper's list, or change the salt" })];
  }
  const reason = cannotBe(salt, sample, solve);
  if (!reason) return [];
  const stated = `${sample.salt} as ${sample.given}`;
  return [fault({ what, stated, found: reason, advice: "choose another salt, concentration or form" })];
}

function brokenStatements(
  paper: Statement,
  salts: ReadonlyMap<string, SimpleSalt | undefined>,
  fault: MakeFault,
): ContentFault[] {
  const what = "the paper's statement";
  const faults: ContentFault[] = [];
  const held = (letters: Iterable<string>, kind: "cation" | "anion") =>
    [...letters].flatMap((letter) => salts.get(letter)?.[kind] ?? []);
  for (const kind of ["cation", "anion"] as const) {
    const said = paper.inAll?.[`${kind}s`];
    const different = new Set(held(salts.keys(), kind));
    if (said === undefined || different.size === said) continue;
    const found = `${different.size} in the author's salts: ${[...different].join(", ")}`;
    const stated = `${said} different ${kind}s in all`;
    faults.push(
      fault(["paper", "inAll", `${kind}s`], { what, stated, found, advice: "correct the number or the salts" }),
    );
  }
  const advice = "correct the statement or the salts";
  paper.share.forEach(({ samples, ion }, index) => {
    const ions = new Set(held(samples, ion));
    if (ions.size <= 1) return;
    const stated = `${samples.join(" and ")} hold the same ${ion}`;
    faults.push(
      fault(["paper", "share", index], {
        what,
        stated,
        found: `${[...ions].join(", ")} in the author's salts`,
        advice,
      }),
    );
  });
  paper.differ.forEach(({ samples, ion }, index) => {
    const ions = held(samples, ion);
    if (new Set(ions).size === ions.length) return;
    const stated = `no two of ${samples.join(", ")} hold the same ${ion}`;
    faults.push(
      fault(["paper", "differ", index], { what, stated, found: `${ions.join(", ")} in the author's salts`, advice }),
    );
  });
  return faults;
}
