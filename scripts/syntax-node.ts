/** A node of the syntax tree of a module, as far as the plugins that rewrite the constants look at it. */
export interface Node {
  type: string;
  start: number;
  end: number;
  [child: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

/** The nodes right below a node. */
export const childrenOf = (node: Node): Node[] => Object.values(node).flat().filter(isNode);

/** Modules of nothing but data. */
export const CONSTANTS = /[\\/]src[\\/]engine[\\/]constants[\\/].*\.ts$/;
