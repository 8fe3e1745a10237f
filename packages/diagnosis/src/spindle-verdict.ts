import type { Case } from './check-case.ts';
import { KINDS } from './ids.ts';
import type { Model } from './model.ts';
import type { Marginals } from './posterior.ts';
import type { CheckId, SpindleVerdict } from './types.ts';

// Judgement: below one chance in twenty it goes back into service, above four in five it does not.
const GOOD_BELOW = 0.05;
const NOT_GOOD_ABOVE = 0.8;
// The two checks that look at the spindle itself: worn or cracked, then bent.
const DECIDING: readonly CheckId[] = ['spindle-flats', 'spindle-runout'];

/** Whether the spindle is still good; where that cannot be told, the open check that decides it. */
export function spindleVerdictOf(model: Model, at: Marginals, { asked }: Case, contradicted: boolean): SpindleVerdict {
  const of = (kind: (typeof KINDS)[number]): number => at.kind[KINDS.indexOf(kind)] ?? 0;
  const probability = Math.min(1, of('spindle-damaged') + of('bore-deformed/spindle-too'));
  if (probability >= NOT_GOOD_ABOVE) return { state: 'not-good', probability };
  const deciding = DECIDING.filter((id) => model.checks.includes(id));
  const [check] = deciding.filter((id) => !asked.has(id));
  // The first is the look that shows wear and cracks; that a damaged spindle is rare does not stand in for it.
  const isSeen = deciding[0] === undefined || asked.has(deciding[0]);
  if (probability < GOOD_BELOW && !contradicted && isSeen) return { state: 'good', probability };
  return { state: 'cannot-tell', probability, ...(check === undefined ? {} : { check }) };
}
