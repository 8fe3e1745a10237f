// A published example worked again: what is printed beside what these packages give.

/** One number of an example. */
export interface WorkedStep {
  /** What it is. */
  what: string;
  /** As printed. */
  printed: number;
  /** As worked out here, in the same unit. */
  ours: number;
  /** Unit. */
  unit: string;
  /** How far ours may lie from it, as a share of the printed value. */
  within: number;
  /** Why so far. */
  why: string;
}

/** An example of a book or page. */
export interface Worked {
  /** What is asked. */
  title: string;
  /** Id in the register of sources. */
  source: string;
  /** Where in it. */
  citation: string;
  /** Its numbers. */
  steps: WorkedStep[];
  /** Printed numbers known to be wrong: ours must not meet them. */
  misprints?: WorkedStep[];
}

/** Whether ours meets what is printed. */
export const meets = (step: WorkedStep): boolean =>
  Math.abs(step.ours - step.printed) <= step.within * Math.abs(step.printed);

/** Makes steps that share a tolerance: `[what, printed, ours, unit]`. */
export const steps = (
  within: number,
  why: string,
  rows: readonly (readonly [what: string, printed: number, ours: number, unit: string])[],
): WorkedStep[] => rows.map(([what, printed, ours, unit]) => ({ what, printed, ours, unit, within, why }));
