/** A fault of a file. @internal */
export interface Fault {
  /** Line, from 1; absent where the whole file is meant. */
  line?: number;
  /** Path of the field, or the code of what is wrong with a row. */
  path: string;
  /** What came. */
  received: string;
  /** What is allowed, or what the matter is. */
  allowed: string;
  /** The nearest name that is known. */
  nearest?: string;
}

/** What was found in a file. @internal */
export interface FileReport {
  file: string;
  kind: string;
  faults: readonly Fault[];
  /** How many there are; of a catalogue only the first are kept in `faults`. */
  faultCount: number;
  /** Worth a look, and no fault. */
  cautions: readonly string[];
  /** Rows of a catalogue that were looked at. */
  rowCount?: number;
}
