/** What the command line needs of its surroundings. */
export interface CliHost {
  /** Reads a file as text, `-` being standard input; throws when it cannot. */
  readText(path: string): string;
  /** Writes a file whole, making its folder; throws when it cannot. */
  writeText(path: string, text: string): void;
  /** Prints to standard output. */
  print(text: string): void;
  /** Prints to standard error. */
  complain(text: string): void;
}
