/** What the search form offers to choose among: only what some page is about. */
import { getCollection } from "astro:content";
import { GAS_NAMES } from "#words/gas-names.ts";
import { LANGUAGE } from "#words/language.ts";
import { FACETS, hazard } from "#words/search.ts";
import { reagentName } from "#words/steps.ts";
import { HAZARD_KINDS } from "../../engine/constants/hazard-kinds.ts";
import { ANIONS, CATIONS } from "../../engine/constants/ions.ts";
import { reagents } from "../../engine/constants/reagents.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import { toUnicode } from "../../engine/formula/typeset.ts";
import { capital } from "../capital.ts";
import type { Facet } from "./facets.ts";
import { facetsOfCaution, facetsOfIonTest } from "./page-facets.ts";

export interface FacetChoices {
  facet: Facet;
  label: string;
  choices: { value: string; says: string }[];
}

export async function facetChoices(): Promise<FacetChoices[]> {
  const cautions = await getCollection("cautions");
  const pages = [
    ...cautions.map(facetsOfCaution),
    ...(await getCollection("ionTests")).map((entry) => facetsOfIonTest(entry, [])),
    // Of a practical only what its frontmatter says: the rest follows from it and has pages of its own.
    ...(await getCollection("practicals")).map(({ data }) => ({
      ion: [...data.paper.cations, ...data.paper.anions],
      reagent: data.parts.flatMap(({ tests }) =>
        tests.flatMap(({ steps }) => steps.flatMap((step) => (step.do === "add" ? [step.reagent] : []))),
      ),
    })),
  ];
  const met = (facet: Facet) => {
    const values = new Set(pages.flatMap((page: { [one in Facet]?: readonly string[] }) => page[facet] ?? []));
    return (value: string) => values.has(value);
  };
  return [
    {
      facet: "ion",
      label: FACETS.ion,
      choices: [...CATIONS, ...ANIONS]
        .filter(met("ion"))
        .map((value) => ({ value, says: `${capital(ionName(value))}, ${toUnicode(value)}` })),
    },
    {
      facet: "gas",
      label: FACETS.gas,
      choices: Object.entries(GAS_NAMES)
        .filter(([value]) => met("gas")(value))
        .map(([value, name]) => ({ value, says: `${capital(name)}, ${toUnicode(value)}` }))
        .toSorted(byWords),
    },
    {
      facet: "reagent",
      label: FACETS.reagent,
      choices: reagents
        .filter(({ id }) => met("reagent")(id))
        .map(({ id, name }) => ({ value: id, says: capital(reagentName(id, name)) }))
        .toSorted(byWords),
    },
    {
      facet: "hazard",
      label: FACETS.hazard,
      choices: HAZARD_KINDS.filter(met("hazard")).map((value) => ({ value, says: capital(hazard(value)) })),
    },
  ];
}

const byWords = (a: { says: string }, b: { says: string }) => a.says.localeCompare(b.says, LANGUAGE);
