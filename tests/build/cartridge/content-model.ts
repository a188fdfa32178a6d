/**
 * A schema's rules on elements and attributes, small enough to be read beside it, and what in a document breaks them.
 */
import type { XmlElement } from "../../../src/build/cartridge/xml.ts";

export interface Rule {
  /** A pattern over the names of the child elements, each followed by a blank; text is allowed only where it is "text". */
  holds: RegExp | "text" | "nothing";
  required?: string[];
  optional?: string[];
}

/** @param rules by the path of names from the root, or by name alone where an element is the same everywhere */
export function breaches(root: XmlElement, rules: Readonly<Record<string, Rule>>, path = root.name): string[] {
  const rule = rules[path] ?? rules[root.name];
  if (!rule) return [`${path} is not in the schema`];
  const children = root.children.filter((child): child is XmlElement => typeof child !== "string");
  const text = root.children.filter((child) => typeof child === "string").join("");
  const names = children.map(({ name }) => `${name} `).join("");
  const found: string[] = [];
  if (rule.holds === "text" ? children.length > 0 : text.trim() !== "") found.push(`${path} is mixed`);
  if (rule.holds === "nothing" && names !== "") found.push(`${path} holds ${names}`);
  if (rule.holds instanceof RegExp && !rule.holds.test(names)) found.push(`${path} holds ${names}`);
  for (const name of rule.required ?? []) if (!(name in root.attributes)) found.push(`${path} lacks ${name}`);
  for (const name of Object.keys(root.attributes)) {
    if (![...(rule.required ?? []), ...(rule.optional ?? [])].includes(name)) found.push(`${path} has ${name}`);
  }
  return [...found, ...children.flatMap((child) => breaches(child, rules, `${path}/${child.name}`))];
}
