import type { Messages } from '@spindlewright/quantity';
import { messages as findings } from './findings.ts';
import { owner } from './owner.ts';
import { sides } from './sides.ts';
import { words } from './words.ts';

/** English templates of every finding, question, answer and sentence of this package, by code. */
export const messages: Messages = { ...findings, ...sides, ...words, ...owner };
