import file from '../data/workshop.json' with { type: 'json' };
import type { ActionId, CheckId } from './types.ts';

/** Tools of the checks and parts of the actions: wanted for lists, not for a diagnosis, so kept out of its bundle. */
export const WORKSHOP = file as {
  tools: Readonly<Record<CheckId, readonly string[]>>;
  parts: Readonly<Record<ActionId, string>>;
};
