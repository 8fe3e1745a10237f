// Generated from the files in data/ by `npm run generate`; edit those.
import type { InterfaceRecord } from '../record.ts';
import { cotteredMetric } from './cottered-metric.generated.ts';
import { spline10 } from './spline-10.generated.ts';
import { squareTaperIso } from './square-taper-iso.generated.ts';
import { squareTaperJis } from './square-taper-jis.generated.ts';
import { throughSpindle24 } from './through-spindle-24.generated.ts';

/** Records by id, former ids included. */
export const registry: Readonly<Record<string, InterfaceRecord>> = {
  "cottered-metric": cotteredMetric,
  "spline-10": spline10,
  "square-taper-iso": squareTaperIso,
  "square-taper-jis": squareTaperJis,
  "through-spindle-24": throughSpindle24,
};

/** Every record, in the order of the ids. */
export const interfaceRecords: readonly InterfaceRecord[] = [
  cotteredMetric,
  spline10,
  squareTaperIso,
  squareTaperJis,
  throughSpindle24,
];
