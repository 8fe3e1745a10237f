/** One choice of a question. @internal */
export interface Choice {
  value: string;
  label: string;
  hint?: string;
  /** The key that answers it; one of the digits when absent. */
  key?: string;
}

/** Whoever is asked: a person at a terminal, or a test. Undefined means that the question was broken off. @internal */
export interface Asker {
  /** One of the choices. */
  one(question: string, choices: readonly Choice[]): Promise<string | undefined>;
  /** Any number of the choices, at least one. */
  some(question: string, choices: readonly Choice[]): Promise<readonly string[] | undefined>;
  /** A line of text that is not empty; `fault` says what is wrong with one. */
  text(question: string, example: string, fault?: (line: string) => string | undefined): Promise<string | undefined>;
  /** Says something. */
  say(text: string): void;
}
