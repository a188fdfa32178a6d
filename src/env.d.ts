declare namespace App {
  interface Locals {
    /** Terms of the glossary used on this page so far: each has an id of its own. */
    terms?: number;
  }
}

/** The department's colours and type: see src/build/department/vite-plugin.ts. */
declare module "department:theme.css";
