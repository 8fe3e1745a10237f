import type { Finding, Severity } from '@spindlewright/quantity';
import { CONDITIONS } from './ids.ts';
import { say } from './say.ts';
import type { ActionId, ConditionId, FamilyId } from './types.ts';

// Judgement: from one chance in ten a danger is worth a sentence; a crack from one in fifty.
const WORTH_SAYING = 0.1;
const CRACK_WORTH_SAYING = 0.02;
const MIXED_WORTH_SAYING = 0.3;
const DOUBT_WORTH_SAYING = 0.005;

const made = (code: string, severity: Severity, values: Record<string, string | number> = {}): Finding =>
  say(code, severity, values, { sources: SOURCES[code] ?? [] });

const SOURCES: Readonly<Record<string, readonly string[]>> = {
  'caution-bolt-needed': ['fitting-answers-qa', 'forum-mixed-signs'],
  'caution-no-shim': ['service-manual-page-16', 'forum-mixed-signs'],
  'caution-look-for-cracks': ['spindle-failures', 'crank-fracture-open-university'],
  'caution-tighten-once': ['forum-roadbike-304978', 'forum-2005-933904', 'fitting-workshop-page'],
};

/** What to heed, the gravest first. */
export function cautionsOf(input: {
  family: FamilyId;
  /** Probability by index into CONDITIONS. */
  conditions: readonly number[];
  action: ActionId;
  doNotRide: boolean;
  /** Probability of a condition that can let the arm or the foot go. */
  unsafe: number;
  mixedInterface: number;
  contradicted: boolean;
}): Finding[] {
  const { action } = input;
  const of = (id: ConditionId): number => input.conditions[CONDITIONS.indexOf(id)] ?? 0;
  const found: Finding[] = [];
  if (input.doNotRide) found.push(made('caution-do-not-ride', 'stop', { action }));
  else if (input.unsafe >= DOUBT_WORTH_SAYING)
    found.push(made('caution-doubt-left', 'caution', { probability: input.unsafe }));
  const crack = of('arm-cracked') + of('spindle-damaged');
  if (crack >= CRACK_WORTH_SAYING) found.push(made('caution-look-for-cracks', 'caution', { probability: crack }));
  if (of('loose-but-sound') + of('bolt-not-clamping') + of('fixing-thread-damaged') >= WORTH_SAYING) {
    found.push(made('caution-bolt-needed', 'caution'));
  }
  if (input.family === 'through-spindle' && of('sound') < 1 - WORTH_SAYING)
    found.push(made('caution-safety-catch', 'caution'));
  if (of('bore-deformed') >= WORTH_SAYING) found.push(made('caution-no-shim', 'caution'));
  if (action === 'tighten-and-recheck') found.push(made('caution-tighten-once', 'caution'));
  if (action === 'replace-fixing' && of('fixing-thread-damaged') >= WORTH_SAYING) {
    found.push(made('caution-spindle-thread', 'caution'));
  }
  if (input.mixedInterface >= MIXED_WORTH_SAYING) found.push(made('caution-other-arm', 'caution'));
  if (input.contradicted) found.push(made('caution-contradiction', 'caution'));
  found.push(made('caution-maker-first', 'caution'));
  return found;
}
