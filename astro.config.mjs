// Node itself loads a configuration of this kind, with the language it was started in (`imports` in package.json).
export { default } from "./site.config.ts";
