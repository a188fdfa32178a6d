/** The author's salts against the paper: allowed ions, possible samples, and what the paper says they share. */

import type { ContentFault } from "../../authoring/faults.ts";
import { cannotBe } from "../../engine/bench/allowed-salts.ts";
import { contentNamed } from "../../engine/bench/contents.ts";
import type { Content } from "../../engine/bench/salt.ts";
import { solidForm } from "../../engine/bench/weighed-as.ts";
import type { Solver } from "../../engine/equilibrium/solve.ts";
import type { Practical, Sample, Statement } from "../../engine/practical.ts";
import type { MakeFault } from "./make-fault.ts";

/** Answers that are no salt the paper allows, or that break what the paper says. */
export function wrongAnswers({ samples, paper }: Practical, solve: Solver, fault: MakeFault): ContentFault[] {
  const salts = new Map(samples.map((sample) => [sample.label, contentNamed(sample.salt)]));
  return [
    ...samples.flatMap((sample, index) =>
      wrongAnswer(sample, salts.get(sample.label), paper, solve, (rest) => fault(["samples", index, "salt"], rest)),
    ),
    ...brokenStatements(paper, salts, fault),
  ];
}

const counted = (count: number, kind: string) => (count === 1 ? `one ${kind}` : `${count} ${kind}s`);

type Rest = Parameters<MakeFault>[1];

function wrongAnswer(
  sample: Sample,
  salt: Content | undefined,
  paper: Statement,
  solve: Solver,
  fault: (rest: Rest) => ContentFault,
): ContentFault[] {
  const what = `sample ${sample.label}: the answer`;
  if (!salt) {
    const found = "not a salt of one cation and one anion the engine knows, nor such salts joined by +";
    return [fault({ what, stated: sample.salt, found, advice: "name such a salt, for example ZnSO4, or NaCl + KNO3" })];
  }
  const { cations = 1, anions = 1 } = sample.holds ?? {};
  if (salt.cations.length !== cations || salt.anions.length !== anions) {
    const found = `${[...salt.cations, ...salt.anions].join(", ")} where the sample holds ${counted(cations, "cation")} and ${counted(anions, "anion")}`;
    return [fault({ what, stated: sample.salt, found, advice: "correct the salt, or what the sample holds" })];
  }
  const proper = [...new Set([salt.formula, solidForm(salt)])];
  const single = cations === 1 && anions === 1;
  if (single && !proper.includes(sample.salt)) {
    const found = "another way of writing it, or water of crystallisation no store's bottle has";
    return [fault({ what, stated: sample.salt, found, advice: `write ${proper.join(" or ")}` })];
  }
  const offered: readonly string[] = [...paper.cations, ...paper.anions];
  const missing = [...salt.cations, ...salt.anions].filter((ion) => !offered.includes(ion));
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
  salts: ReadonlyMap<string, Content | undefined>,
  fault: MakeFault,
): ContentFault[] {
  const what = "the paper's statement";
  const faults: ContentFault[] = [];
  const held = (letters: Iterable<string>, kind: "cation" | "anion") =>
    [...letters].flatMap((letter) => salts.get(letter)?.[`${kind}s`] ?? []);
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
    if ([...ions].some((one) => samples.every((letter) => held([letter], ion).includes(one)))) return;
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
  paper.same.forEach((samples, index) => {
    const different = new Set(
      samples.map((letter) => [...held([letter], "cation"), ...held([letter], "anion")].sort().join(", ")),
    );
    if (different.size <= 1) return;
    const stated = `${samples.join(" and ")} are the same salt`;
    faults.push(
      fault(["paper", "same", index], {
        what,
        stated,
        found: `${[...different].join("; ")} in the author's salts`,
        advice,
      }),
    );
  });
  paper.contains.forEach(({ ion, samples = [...salts.keys()], count }, index) => {
    const kind = ion.endsWith("+") ? "cation" : "anion";
    const holders = samples.filter((letter) => held([letter], kind).includes(ion));
    if (count === undefined ? holders.length > 0 : holders.length === count) return;
    const stated = `${count ?? "at least one"} of ${samples.join(", ")} contains ${ion}`;
    const found = holders.length > 0 ? `${holders.join(" and ")} in the author's salts` : "none in the author's salts";
    faults.push(fault(["paper", "contains", index], { what, stated, found, advice }));
  });
  return faults;
}
