// Generated from the files in data/ by `npm run generate`; edit those.
/**
 * Every interface record by its own name, so that one record costs no more than itself.
 *
 * @packageDocumentation
 */
export { squareTaperIso } from './square-taper-iso.generated.ts';
export { squareTaperJis } from './square-taper-jis.generated.ts';
