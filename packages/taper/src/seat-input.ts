import { checkInput, DomainError, type FieldSpecs, hardLimits, type Measurand } from '@spindlewright/quantity';
import { requireBothShapes, requireYieldStrength, resolveJoint, resolvePressing } from './joint.ts';
import type { SeatPrediction, SeatWay } from './seat.ts';
import type { KnownSeat } from './seat-places.ts';
import { type ArmShape, armSpec, type Pressing, pressingSpec, type SpindleShape, spindleSpec } from './shapes.ts';

/** Readings of a trial fit: the arm pushed on by hand, gaps taken with a depth rod. */
export interface TrialFit {
  /** From the face where the bolt seats down to the spindle end; -100 to 100 mm, negative when the end stands proud. */
  endGapMm?: Measurand;
  /** From the inner face of the arm to the run-out or shoulder; -100 to 100 mm. */
  shoulderGapMm?: Measurand;
}

/** The mark that an arm has left on the flats. */
export interface WitnessMark {
  /** Inner end of the mark, from the spindle end; 0 to 100 mm. */
  markEndFromSpindleEndMm: Measurand;
}

/** What is known of a joint: by trial fit, witness mark or shapes, the best way leading. */
export interface SeatInput {
  /** Shape of the spindle end; together with `arm`. */
  spindle?: SpindleShape<Measurand>;
  /** Shape of the arm's bore; together with `spindle`. */
  arm?: ArmShape<Measurand>;
  /** Gaps of a trial fit, at least one. */
  trialFit?: TrialFit;
  /** Mark left by an arm. */
  witnessMark?: WitnessMark;
  /** What presses the arm on; needs both shapes. */
  pressing?: Pressing<Measurand>;
  /**
   * True puts all ways of knowing the place together by their widths: where the shapes were measured on these very parts.
   * If not given the best way alone tells it, and the others only contradict it.
   */
  mixWays?: boolean;
}

/** What is known of a joint, and what of the answer is wanted. */
export interface PredictSeatInput extends SeatInput {
  /** False leaves the sensitivities out, half of the work; their list is empty then. They are worked out if not given. */
  sensitivities?: boolean;
}

/** Refuses what no seat can be predicted from. `more` are fields that the function asks for beside those of a seat. @internal */
export function checkSeatInput(where: string, input: SeatInput, more: FieldSpecs = {}): void {
  const gap = { type: 'measurand', unit: 'mm', min: -100, max: 100, optional: true } as const;
  const mark = { type: 'measurand', unit: 'mm', min: 0, max: 100 } as const;
  checkInput({
    where,
    value: input,
    fields: {
      spindle: { type: 'object', fields: spindleSpec('measurand'), optional: true },
      arm: { type: 'object', fields: armSpec('measurand'), optional: true },
      trialFit: { type: 'object', fields: { endGapMm: gap, shoulderGapMm: gap }, optional: true },
      witnessMark: { type: 'object', fields: { markEndFromSpindleEndMm: mark }, optional: true },
      pressing: { type: 'object', fields: pressingSpec('measurand'), optional: true },
      mixWays: { type: 'flag', optional: true },
      ...more,
    },
  });
  const { spindle, trialFit, witnessMark, pressing } = input;
  const refuse = (path: string, allowed: string): DomainError =>
    new DomainError(where, [{ path, received: 'nothing', allowed }]);
  requireBothShapes(where, input);
  if (trialFit && trialFit.endGapMm === undefined && trialFit.shoulderGapMm === undefined) {
    throw refuse('trialFit.endGapMm', 'at least one of endGapMm and shoulderGapMm');
  }
  if (spindle !== undefined) {
    if (pressing) requireYieldStrength(where, 'pressing.', pressing);
    return;
  }
  if (pressing !== undefined)
    throw refuse('spindle', 'the shapes of both parts, on which the stiffness of the press rests');
  if (trialFit === undefined && witnessMark === undefined) {
    throw refuse('trialFit', 'something to go by: trialFit, witnessMark, or spindle and arm');
  }
}

const mapLimits = ({ endGapMm, shoulderGapMm }: TrialFit): NonNullable<KnownSeat['trialFit']> => ({
  ...(endGapMm === undefined ? {} : { endGapMm: hardLimits(endGapMm) }),
  ...(shoulderGapMm === undefined ? {} : { shoulderGapMm: hardLimits(shoulderGapMm) }),
});

/** Every reading as its hard bounds, with what was not given filled in. @internal */
export const knownSeat = ({ spindle, arm, trialFit, witnessMark, pressing }: SeatInput): KnownSeat => ({
  ...(spindle && arm ? resolveJoint(spindle, arm) : {}),
  ...(trialFit ? { trialFit: mapLimits(trialFit) } : {}),
  ...(witnessMark ? { witnessMark: { markEndFromSpindleEndMm: hardLimits(witnessMark.markEndFromSpindleEndMm) } } : {}),
  ...(pressing ? { pressing: resolvePressing(pressing) } : {}),
});

/** The ways that tell the place where nothing had to be put together. @internal */
export function waysOf({ trialFit, witnessMark }: SeatInput): SeatWay[] {
  if (!trialFit) return [witnessMark ? 'witness-mark' : 'shapes'];
  const gaps = { endGapMm: 'end-gap', shoulderGapMm: 'shoulder-gap' } as const;
  return (['endGapMm', 'shoulderGapMm'] as const).flatMap((key) => (trialFit[key] === undefined ? [] : [gaps[key]]));
}

/** The best way of knowing that was given. @internal */
export const basisOf = ({ trialFit, witnessMark }: SeatInput): SeatPrediction['basis'] =>
  trialFit ? 'trial-fit' : witnessMark ? 'witness-mark' : 'shapes';
