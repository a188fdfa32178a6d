/**
 * A practical's questions as one assessment of QTI 1.2.1, in the profile of Common Cartridge 1.3 (ccv1p3_qtiasiv1p2p1_v1p0.xsd): one
 * section, one right choice a question or several, SCORE from 0 to 100, and a word of feedback on each choice.
 */
import type { Assessment, Question } from "./cartridge.types.ts";
import { NAMESPACES, schemaLocation } from "./namespaces.ts";
import { element, type XmlElement } from "./xml.ts";

/** The profile counts fewer choices than this as no choice (its rule 4d). */
export const FEWEST_CHOICES = 3;

/** The names within one question. */
export const RESPONSE = "answer";
export const RIGHT = "right";
export const saysOf = (choice: string): string => `says-${choice}`;

export const writeAssessment = ({ identifier, title, questions }: Assessment): XmlElement =>
  element(
    "questestinterop",
    {
      xmlns: NAMESPACES.questions,
      "xmlns:xsi": NAMESPACES.instance,
      "xsi:schemaLocation": schemaLocation("questions"),
    },
    element(
      "assessment",
      { ident: identifier, title },
      metadata({
        cc_profile: "cc.exam.v0p1",
        qmd_assessmenttype: "Examination",
        qmd_scoretype: "Percentage",
        qmd_feedbackpermitted: "Yes",
        cc_maxattempts: "unlimited",
      }),
      element("section", { ident: `${identifier}-section` }, ...questions.map(writeQuestion)),
    ),
  );

function writeQuestion({ identifier, title, stem, choices, correct, right }: Question): XmlElement {
  const several = correct.length > 1;
  return element(
    "item",
    { ident: identifier, title },
    element(
      "itemmetadata",
      {},
      metadata({
        cc_profile: several ? "cc.multiple_response.v0p1" : "cc.multiple_choice.v0p1",
        qmd_scoringpermitted: "Yes",
        qmd_computerscored: "Yes",
      }),
    ),
    element(
      "presentation",
      {},
      material(stem, "text/html"),
      element(
        "response_lid",
        { ident: RESPONSE, rcardinality: several ? "Multiple" : "Single" },
        element(
          "render_choice",
          { shuffle: "No" },
          ...choices.map((choice) => element("response_label", { ident: choice.identifier }, material(choice.words))),
        ),
      ),
    ),
    element(
      "resprocessing",
      {},
      element(
        "outcomes",
        {},
        element("decvar", { varname: "SCORE", vartype: "Decimal", minvalue: "0", maxvalue: "100" }),
      ),
      ...choices.flatMap((choice) =>
        choice.says === undefined
          ? []
          : [
              element(
                "respcondition",
                { continue: "Yes" },
                element("conditionvar", {}, chosen(choice.identifier)),
                tell(saysOf(choice.identifier)),
              ),
            ],
      ),
      element(
        "respcondition",
        { continue: "No" },
        element("conditionvar", {}, several ? justThese(choices, correct) : chosen(correct[0])),
        element("setvar", { action: "Set", varname: "SCORE" }, "100"),
        tell(RIGHT),
      ),
    ),
    feedback(RIGHT, right),
    ...choices.flatMap(({ identifier, says }) => (says === undefined ? [] : [feedback(saysOf(identifier), says)])),
  );
}

const metadata = (fields: Readonly<Record<string, string>>): XmlElement =>
  element(
    "qtimetadata",
    {},
    ...Object.entries(fields).map(([label, entry]) =>
      element("qtimetadatafield", {}, element("fieldlabel", {}, label), element("fieldentry", {}, entry)),
    ),
  );

const material = (text: string, texttype: "text/plain" | "text/html" = "text/plain"): XmlElement =>
  element("material", {}, element("mattext", { texttype }, text));

const chosen = (choice: string): XmlElement => element("varequal", { respident: RESPONSE }, choice);

const justThese = (choices: Question["choices"], correct: readonly string[]): XmlElement =>
  element(
    "and",
    {},
    ...choices.map(({ identifier }) =>
      correct.includes(identifier) ? chosen(identifier) : element("not", {}, chosen(identifier)),
    ),
  );

const tell = (feedback: string): XmlElement =>
  element("displayfeedback", { feedbacktype: "Response", linkrefid: feedback });

const feedback = (identifier: string, words: string): XmlElement =>
  element("itemfeedback", { ident: identifier }, element("flow_mat", {}, material(words)));
