/** Takes the page over. It starts at once and is all of its page that runs, so the element that wakes an island would be idle weight. */
import { hydrate } from "preact";
import Practice from "./Practice.tsx";
import type { PracticeProps } from "./practice-table.ts";

const place = document.querySelector("#practice");
const given = document.querySelector("#practice-given")?.textContent;
if (place && given) hydrate(<Practice {...(JSON.parse(given) as PracticeProps)} />, place);
