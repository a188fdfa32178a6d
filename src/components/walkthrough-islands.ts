/** The islands of a walkthrough from one module, so that they come in one file: a request of its own weighs some 500 bytes of heads. */
export { default as OtherTubes } from "./prepare/OtherTubes.tsx";
export { default as RecordAndConclusion } from "./record/RecordAndConclusion.tsx";
