import { createFinding, type Finding, type Limits } from '@spindlewright/quantity';
import type { Decided, Step, StepCode } from './decide-facts.ts';
import { screenMessages } from './messages.ts';
import type { Need } from './need.ts';
import type { Doubt, Facts, PartField } from './part.ts';
import type { ScreenedPart } from './screened.ts';
import type { JudgedSeat } from './seat-by-readings.ts';

/** Everything of a screened part but its place and its id; one object serves all rows alike. @internal */
export interface Outcome extends Omit<ScreenedPart, 'line' | 'partId'> {
  state: ScreenedPart['state'];
}

/** A finding of the screen. @internal */
export const say = (
  code: keyof typeof screenMessages,
  severity: Finding['severity'],
  values: Finding['values'] = {},
): Finding => createFinding({ code, severity, template: screenMessages[code], values });

/** What is not as severe as a step of its state mostly is. */
const SEVERITY: Readonly<Partial<Record<StepCode, Finding['severity']>>> = { 'same-bolt-circle': 'note' };

function findingsOf(step: Step): readonly Finding[] {
  if ('mate' in step) return step.mate.findings ?? [];
  const usual = step.state === 'does-not-fit' ? 'stop' : 'caution';
  return [say(step.code, SEVERITY[step.code] ?? usual, step.values)];
}

/** Words of a row that were not understood, each with its field. @internal */
export function unmappedOf({ doubts }: Facts): (readonly [PartField, string])[] {
  return (Object.entries(doubts) as [PartField, Doubt][]).flatMap(([field, doubt]) =>
    doubt.code === 'word-not-mapped' ? [[field, doubt.received] as const] : [],
  );
}

/** What the steps over the facts, and the seat where its sizes were read, come to. @internal */
export function outcomeOf(
  need: Need,
  facts: Facts,
  decided: Decided,
  seatFor: (facts: Facts, own: string | undefined) => JudgedSeat | undefined,
): Outcome {
  const reasons = decided.steps.flatMap(findingsOf);
  const base = { state: decided.state, basis: 'names' as const, reasons };
  if (decided.steps.some((step) => 'code' in step && step.code === 'another-kind')) return base;
  const own = facts.words.interface?.length === 1 ? facts.words.interface[0] : undefined;
  const joint = need.for === 'arm' || need.for === 'spindle';
  const seat = joint ? seatFor(facts, own) : undefined;
  const chainlineEffectMm = joint ? chainlineOf(need, facts, decided) : undefined;
  const extras = {
    ...(seat === undefined ? {} : { predictedSeat: seat.seat }),
    ...(chainlineEffectMm === undefined ? {} : { chainlineEffectMm }),
  };
  if (seat !== undefined && seat.seat.basis === 'readings') {
    // Stated sizes outweigh names on the seat; they do not outweigh a side, a length or a shell that rules the part out.
    const others = decided.steps.filter((step) => !isJoint(step, own));
    const ruledOut = others.find((step) => step.state === 'does-not-fit');
    const open = others.find((step) => step.state === 'cannot-tell');
    const seatSaid = say('seat-by-readings', seat.state === 'fits' ? 'note' : 'stop', { verdict: seat.seat.verdict });
    if (seat.state === 'does-not-fit') {
      return { state: 'does-not-fit', basis: 'sizes', reasons: [seatSaid, ...reasons], ...extras };
    }
    if (ruledOut === undefined) {
      const missingFact = seat.state === 'cannot-tell' ? seat.missingFact : open?.missingFact;
      const state = seat.state === 'cannot-tell' || open !== undefined ? 'cannot-tell' : 'fits';
      const told = open === undefined || seat.state === 'cannot-tell' ? [] : findingsOf(open);
      return {
        state,
        basis: 'sizes',
        ...(missingFact === undefined ? {} : { missingFact }),
        reasons: [...told, seatSaid, ...reasons.filter((reason) => !told.includes(reason))],
        ...extras,
      };
    }
  }
  const alike = decided.state === 'fits' && seat !== undefined ? [say('named-alike-only', 'caution')] : [];
  return {
    ...base,
    ...(decided.missingFact === undefined ? {} : { missingFact: decided.missingFact }),
    reasons: [...reasons, ...alike],
    ...extras,
  };
}

/** True for the step that judges the joint by its names, or that misses the name. */
function isJoint(step: Step, own: string | undefined): boolean {
  if ('mate' in step) return own !== undefined && step.mate.shiftMm !== undefined;
  return step.values.fact === 'interface';
}

/** A seat nearer to the frame carries the chainline in; half of a change of a symmetric spindle carries it out. */
function chainlineOf(need: Need, facts: Facts, decided: Decided): Limits | undefined {
  if (need.side === 'non-drive') return undefined;
  const { shiftMm } = decided;
  const { spindleLengthMm } = facts.numbers;
  const half =
    need.for === 'spindle' && spindleLengthMm !== undefined && need.spindleLengthMm !== undefined
      ? (spindleLengthMm - need.spindleLengthMm) / 2
      : undefined;
  if (need.for === 'spindle' && half === undefined) return undefined;
  if (half === undefined && shiftMm === undefined) return undefined;
  const { lower, nominal, upper } = shiftMm ?? { lower: 0, nominal: 0, upper: 0 };
  const by = half ?? 0;
  return { lower: by - upper + 0, nominal: by - nominal + 0, upper: by - lower + 0 };
}
