// Generated from the files in data/ by `npm run generate`; edit those.
import type { InterfaceRecord } from '../record.ts';
import { squareTaperIso } from './square-taper-iso.generated.ts';
import { squareTaperJis } from './square-taper-jis.generated.ts';

/** Records by id, former ids included. */
export const registry: Readonly<Record<string, InterfaceRecord>> = {
  "square-taper-iso": squareTaperIso,
  "square-taper-jis": squareTaperJis,
};

/** Every record, in the order of the ids. */
export const interfaceRecords: readonly InterfaceRecord[] = [
  squareTaperIso,
  squareTaperJis,
];
