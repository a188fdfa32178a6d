/**
 * Assessments against the profile of QTI 1.2.1. Rules with a number are the Schematron rules of the published schema
 * ccv1p1_qtiasiv1p2p1_v1p0.xsd (Common Cartridge 1.1); that version 1.3 keeps them, under the same namespace, is from memory.
 */
import { describe, expect, test } from "vitest";
import { writeAssessment } from "../../../src/build/cartridge/assessment.ts";
import type { Assessment } from "../../../src/build/cartridge/cartridge.types.ts";
import { readXml } from "../../../src/build/cartridge/read-xml.ts";
import { allOf, at, elementsOf, textOf, writeDocument, type XmlElement } from "../../../src/build/cartridge/xml.ts";
import { breaches, type Rule } from "./content-model.ts";
import { AWKWARD, ofCourse } from "./courses.ts";

const RULES: Record<string, Rule> = {
  // questestinteropType: one assessment, or one bank of objects.
  questestinterop: { holds: /^assessment $/ },
  // assessmentType: one section, and only one.
  assessment: { holds: /^qtimetadata (rubric )?(presentation_material )?section $/, required: ["ident", "title"] },
  qtimetadata: { holds: /^(qtimetadatafield )+$/ },
  qtimetadatafield: { holds: /^fieldlabel fieldentry $/ },
  fieldlabel: { holds: "text" },
  fieldentry: { holds: "text" },
  // sectionType: items only, one at least.
  section: { holds: /^(item )+$/, required: ["ident"], optional: ["title"] },
  // itemType
  item: {
    holds: /^itemmetadata presentation resprocessing (itemfeedback )*$/,
    required: ["ident"],
    optional: ["title"],
  },
  itemmetadata: { holds: /^qtimetadata $/ },
  presentation: { holds: /^(material |response_lid )+$/ },
  // materialType, mattextType
  material: { holds: /^(mattext |matref |matbreak )+$/ },
  mattext: { holds: "text", optional: ["texttype"] },
  response_lid: { holds: /^render_choice $/, required: ["ident"], optional: ["rcardinality", "rtiming"] },
  render_choice: { holds: /^(response_label )+$/, optional: ["shuffle"] },
  response_label: { holds: /^material $/, required: ["ident"] },
  // resprocessingType, outcomesType (one variable), decvarType, respconditionType
  resprocessing: { holds: /^outcomes (respcondition )+$/ },
  outcomes: { holds: /^decvar $/ },
  decvar: { holds: "text", required: ["varname"], optional: ["vartype", "minvalue", "maxvalue"] },
  respcondition: { holds: /^conditionvar (setvar )*(displayfeedback )*$/, optional: ["title", "continue"] },
  conditionvar: { holds: /^(and |other |varequal |varsubstring )+$/ },
  and: { holds: /^(not |varequal )+$/ },
  not: { holds: /^(varequal )+$/ },
  varequal: { holds: "text", required: ["respident"], optional: ["case"] },
  setvar: { holds: "text", optional: ["varname", "action"] },
  displayfeedback: { holds: "text", required: ["feedbacktype", "linkrefid"] },
  // itemfeedbackType, flow_matType
  itemfeedback: { holds: /^flow_mat $/, required: ["ident"] },
  flow_mat: { holds: /^material $/ },
};

/** The fields of the metadata, by label, each with all its entries. */
function fieldsOf(of: XmlElement | undefined): Record<string, string[]> {
  const fields = of ? elementsOf(of, "qtimetadatafield") : [];
  return Object.groupBy(
    fields.map((field) => textOf(at(field, "fieldlabel"))),
    (label) => label,
  ) as Record<string, string[]> & object;
}
const entryOf = (of: XmlElement | undefined, label: string): string =>
  textOf(
    at(
      elementsOf(of as XmlElement, "qtimetadatafield").find((field) => textOf(at(field, "fieldlabel")) === label),
      "fieldentry",
    ),
  );

const course = ofCourse().cartridge.units.flatMap(({ assessment }) => assessment ?? []);
const awkward = AWKWARD.units.flatMap(({ assessment }) => assessment ?? []);

describe.each([...course, ...awkward].map((one): [string, Assessment] => [one.title, one]))("%s", (_, given) => {
  const root = readXml("questions.xml", writeDocument(writeAssessment(given)));
  const assessment = at(root, "assessment") as XmlElement;
  const items = allOf(root, "item");

  test("elements, their order and their attributes (complex types of the schema)", () => {
    expect(breaches(root, RULES)).toEqual([]);
    expect(root.namespace).toBe("http://www.imsglobal.org/xsd/ims_qtiasiv1p2");
  });

  test("metadata of the assessment: known labels, none twice (1a, 1k to 1s), known entries (1b, 1c, 1d, 1i, 1j)", () => {
    const metadata = at(assessment, "qtimetadata");
    expect(Object.entries(fieldsOf(metadata)).map(([label, all]) => [label, all.length])).toEqual([
      ["cc_profile", 1],
      ["qmd_assessmenttype", 1],
      ["qmd_scoretype", 1],
      ["qmd_feedbackpermitted", 1],
      ["cc_maxattempts", 1],
    ]);
    expect(entryOf(metadata, "cc_profile")).toBe("cc.exam.v0p1");
    expect(entryOf(metadata, "qmd_assessmenttype")).toBe("Examination");
    expect(entryOf(metadata, "qmd_scoretype")).toBe("Percentage");
    expect(["Yes", "No"]).toContain(entryOf(metadata, "qmd_feedbackpermitted"));
    expect(["1", "2", "3", "4", "5", "unlimited"]).toContain(entryOf(metadata, "cc_maxattempts"));
  });

  test("identifiers of items stand once (13a)", () => {
    const idents = items.map(({ attributes }) => attributes.ident);
    expect(new Set(idents).size).toBe(idents.length);
  });

  describe.each(items.map((item, index): [string, XmlElement, number] => [item.attributes.ident, item, index]))(
    "%s",
    (_, item, index) => {
      const metadata = at(item, "itemmetadata", "qtimetadata");
      const lid = at(item, "presentation", "response_lid") as XmlElement;
      const labels = allOf(lid, "response_label").map(({ attributes }) => attributes.ident);
      const several = given.questions[index].correct.length > 1;

      test("metadata of the item: known labels once (2a, 2f to 2j), known entries (2b, 2d, 2e)", () => {
        expect(Object.entries(fieldsOf(metadata)).map(([label, all]) => [label, all.length])).toEqual([
          ["cc_profile", 1],
          ["qmd_scoringpermitted", 1],
          ["qmd_computerscored", 1],
        ]);
        expect(entryOf(metadata, "cc_profile")).toBe(several ? "cc.multiple_response.v0p1" : "cc.multiple_choice.v0p1");
        expect(entryOf(metadata, "qmd_scoringpermitted")).toBe("Yes");
        expect(entryOf(metadata, "qmd_computerscored")).toBe("Yes");
      });

      test("cardinality (4a, 5a) and number of choices (4d: three, 5d: two), each named once", () => {
        expect(lid.attributes.rcardinality).toBe(several ? "Multiple" : "Single");
        expect(labels.length).toBeGreaterThan(several ? 1 : 2);
        expect(new Set(labels).size).toBe(labels.length);
      });

      test("conditions ask this response (4e, 5e) for choices it has (9a)", () => {
        for (const asked of allOf(item, "varequal")) {
          expect(asked.attributes.respident).toBe(lid.attributes.ident);
          expect(labels).toContain(textOf(asked));
        }
      });

      test("SCORE is set to 100 by the right answer alone (decvarType, setvarType)", () => {
        expect(allOf(item, "decvar").map(({ attributes }) => attributes.varname)).toEqual(["SCORE"]);
        const scoring = allOf(item, "respcondition").filter((one) => at(one, "setvar"));
        expect(scoring).toHaveLength(1);
        expect(at(scoring[0], "setvar")?.attributes).toEqual({ action: "Set", varname: "SCORE" });
        expect(textOf(at(scoring[0], "setvar"))).toBe("100");
        const asked = at(scoring[0], "conditionvar", ...(several ? ["and"] : [])) as XmlElement;
        expect(elementsOf(asked, "varequal").map(textOf).toSorted()).toEqual(given.questions[index].correct.toSorted());
        // The scale from 0 to 100 is from memory.
        expect(allOf(item, "decvar")[0].attributes).toMatchObject({ minvalue: "0", maxvalue: "100" });
      });

      test("each feedback is shown by a condition, and each condition has its feedback (10, 11, 12a to 12d)", () => {
        const shown = allOf(item, "displayfeedback");
        expect(shown.map(({ attributes }) => attributes.feedbacktype).filter((type) => type !== "Response")).toEqual(
          [],
        );
        const idents = allOf(item, "itemfeedback").map(({ attributes }) => attributes.ident);
        expect(shown.map(({ attributes }) => attributes.linkrefid).toSorted()).toEqual(idents.toSorted());
        expect(idents).not.toContain("hint");
        expect(idents).not.toContain("solution");
      });
    },
  );
});
