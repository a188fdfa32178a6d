export { BORDERLINE_VOLTS, type RedoxChange, type RedoxState, redoxChanges } from "./redox-changes.ts";
