declare namespace App {
  interface Locals {
    /** Terms of the glossary used on this page so far: each has an id of its own. */
    terms?: number;
  }
}
