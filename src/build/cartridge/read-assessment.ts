/** Reads back an assessment of the Common Cartridge profile: the questions with choices, and how many of other kinds there are. */
import { RIGHT, saysOf } from "./assessment.ts";
import type { Assessment, Choice, Question } from "./cartridge.types.ts";
import { CartridgeFault } from "./cartridge-fault.ts";
import { NAMESPACES } from "./namespaces.ts";
import { allOf, at, elementsOf, textOf, type XmlElement } from "./xml.ts";

export interface ReadAssessment extends Pick<Assessment, "title" | "questions"> {
  /** Questions that are no choice: to be filled in, an essay. */
  otherQuestions: number;
}

const CHOICE = ["cc.multiple_choice.v0p1", "cc.multiple_response.v0p1", "cc.true_false.v0p1"];

/** @throws CartridgeFault with all that is wrong in it */
export function readAssessment(file: string, root: XmlElement): ReadAssessment {
  const assessment = at(root, "assessment");
  if (root.name !== "questestinterop" || root.namespace !== NAMESPACES.questions || !assessment) {
    throw new CartridgeFault(`${file}: found <${root.name}>, expected an assessment of QTI 1.2.1.`);
  }
  const items = allOf(assessment, "item");
  const choices = items.filter((item) => CHOICE.includes(profileOf(item)));
  const faults = choices.flatMap((item) => faultsIn(file, item));
  if (faults.length > 0) throw new CartridgeFault(...faults);
  return {
    title: assessment.attributes.title ?? "",
    questions: choices.map(readQuestion),
    otherQuestions: items.length - choices.length,
  };
}

function profileOf(item: XmlElement): string {
  const fields = allOf(item, "qtimetadatafield");
  return textOf(
    at(
      fields.find((field) => textOf(at(field, "fieldlabel")) === "cc_profile"),
      "fieldentry",
    ),
  ).trim();
}

const labelsOf = (item: XmlElement): XmlElement[] => allOf(item, "response_label");
const identOf = ({ attributes }: XmlElement): string => attributes.ident ?? "";

/** The choices that a condition asks for; those under `not` are asked to be absent. */
const askedFor = (condition: XmlElement | undefined): string[] =>
  (condition?.children ?? []).flatMap((child) => {
    if (typeof child === "string" || child.name === "not") return [];
    return child.name === "varequal" ? [textOf(child).trim()] : askedFor(child);
  });

/** The condition that gives full marks. */
const rightCondition = (item: XmlElement): XmlElement | undefined =>
  allOf(item, "respcondition").find((one) => elementsOf(one, "setvar").some((set) => Number(textOf(set)) > 0));

function faultsIn(file: string, item: XmlElement): string[] {
  const about = `${file}: question ${identOf(item)}`;
  const labels = labelsOf(item);
  const known = new Set(labels.map(identOf));
  const right = askedFor(at(rightCondition(item), "conditionvar"));
  if (known.size === 0) return [`${about} has no choices.`];
  if (known.size < labels.length) return [`${about} has two choices of one name.`];
  if (right.length === 0) return [`${about} has no right answer.`];
  return right
    .filter((choice) => !known.has(choice))
    .map((choice) => `${about} takes ${choice} for right, which is none of its choices.`);
}

function readQuestion(item: XmlElement): Question {
  const told = new Map(elementsOf(item, "itemfeedback").map((one) => [identOf(one), textOf(one)]));
  return {
    identifier: identOf(item),
    title: item.attributes.title ?? "",
    stem: textOf(allOf(item, "material")[0]),
    choices: labelsOf(item).map((label): Choice => {
      const identifier = identOf(label);
      const says = told.get(saysOf(identifier));
      return { identifier, words: textOf(label), ...(says !== undefined && { says }) };
    }),
    correct: askedFor(at(rightCondition(item), "conditionvar")),
    right: told.get(RIGHT) ?? "",
  };
}
