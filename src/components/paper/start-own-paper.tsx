/** Starts the page. It has nothing to show before its script runs, so it does without the element that wakes an island. */
import { render } from "preact";
import OwnPaper, { type Given } from "./OwnPaper.tsx";

const place = document.querySelector("#own-paper");
const given = document.querySelector("#own-paper-given")?.textContent;
if (place && given) render(<OwnPaper {...(JSON.parse(given) as Given)} />, place);
