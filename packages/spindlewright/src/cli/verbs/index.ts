import { checkDataVerb } from './check-data.ts';
import { completionVerb } from './completion.ts';
import { identifyVerb } from './identify.ts';
import { jobVerb } from './job.ts';
import { screenVerb } from './screen.ts';
import { torqueVerb } from './torque.ts';
import type { Verb } from './verb.ts';

export type { Flag, Verb } from './verb.ts';

/** Every verb, in the order of the help. @internal */
export const VERBS: readonly Verb[] = [jobVerb, screenVerb, identifyVerb, torqueVerb, checkDataVerb, completionVerb];
