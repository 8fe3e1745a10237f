/** A flag of a verb. @internal */
export interface Flag {
  /** Name without its dashes. */
  name: string;
  /** What stands behind it in the help; a switch when absent. */
  value?: string;
  /** The values that it takes, when they can be listed. */
  choices?: readonly string[];
  /** True when a file is named, so that a shell may complete it. */
  file?: true;
  /** True when it may be given again. */
  repeats?: true;
  /** What it is for. */
  about: string;
  /** Heading under which the help lists it, where a verb has many. */
  group?: string;
}

/** What stands behind a verb without a flag. */
interface Operand {
  /** Its name in the help. */
  name: string;
  /** The values that it takes, when they can be listed. */
  choices?: readonly string[];
  /** True when a file is named. */
  file?: true;
  /** True when it may be left out. */
  optional?: true;
  /** True when more of them may follow; the last one only. */
  repeats?: true;
  /** What it is for. */
  about: string;
}

/** A verb of the command line: help, refusals and completion are made from it, so that they cannot differ. @internal */
export interface Verb {
  /** What is typed. */
  name: string;
  /** What it does, in one line. */
  about: string;
  /** Ways to call it, without the command's name and the verb. */
  usage: readonly string[];
  /** What stands behind it, in order. */
  operands: readonly Operand[];
  /** Flags beside `--help`. */
  flags: readonly Flag[];
  /** Paragraphs that the flags leave open. */
  notes: readonly string[];
  /** Commands that work, each with what it shows; a test runs them in a folder with the files that they name. */
  examples: readonly { about: string; command: string }[];
  /** Exit codes beyond those that all verbs share. */
  exits?: readonly (readonly [number, string])[];
}
