/** What a cartridge carries into a learning platform, apart from the form it is written in. */

/** The whole course. Every identifier is an XML name and stands once in the cartridge. */
export interface Cartridge {
  identifier: string;
  title: string;
  description: string;
  units: Unit[];
}

/** One practical: a folder of the course. */
export interface Unit {
  identifier: string;
  title: string;
  links: WebLink[];
  assessment?: Assessment;
}

export interface WebLink {
  identifier: string;
  title: string;
  /** Whole address, with host. */
  url: string;
}

export interface Assessment {
  identifier: string;
  title: string;
  questions: Question[];
}

/** A question with choices, marked by the platform: full marks for just the right ones, none for anything else. */
export interface Question {
  identifier: string;
  title: string;
  /** HTML of all that is given and what is asked; needs nothing from outside. */
  stem: string;
  choices: Choice[];
  /** Identifiers of the right choices. */
  correct: string[];
  /** Told with the right answer. */
  right: string;
}

export interface Choice {
  identifier: string;
  words: string;
  /** Told to whoever chooses it wrongly. */
  says?: string;
}
