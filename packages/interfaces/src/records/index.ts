// Generated from the files in data/ by `npm run generate`; edit those.
/**
 * Every interface record by its own name, so that one record costs no more than itself.
 *
 * @packageDocumentation
 */
export { cotteredMetric } from './cottered-metric.generated.ts';
export { spline10 } from './spline-10.generated.ts';
export { squareTaperIso } from './square-taper-iso.generated.ts';
export { squareTaperJis } from './square-taper-jis.generated.ts';
export { throughSpindle24 } from './through-spindle-24.generated.ts';
