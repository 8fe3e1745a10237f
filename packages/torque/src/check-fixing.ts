import { type Finding, hardLimits, type Limits, type LimitsInput } from '@spindlewright/quantity';
import { cornerFindings, isSquare } from './bearing.ts';
import { dataEdition } from './data-edition.ts';
import { checkFixingInput, type FixingBolt, type FixingNut } from './fixing-input.ts';
import { atLeastZero, boltStage, type FixingStage, given, nutStage, shankEnd, startOf } from './fixing-stage.ts';
import { minus } from './limits-math.ts';
import { raise } from './raise.ts';

/** Whether a fixing can clamp the arm. */
export interface FixingCheck {
  /** The answer; `cannot-tell` when a fact is missing. */
  state: 'fits' | 'does-not-fit' | 'cannot-tell';
  /** The field whose knowledge would decide; null unless `cannot-tell`. */
  missing: string | null;
  /** With the arm pushed on by hand. */
  handFit: FixingStage;
  /** With the arm pressed. */
  pressed: FixingStage;
  /** Edition of the data. */
  dataEdition: string;
  /** Faults as `stop`, doubts as `caution`. */
  findings: Finding[];
}

// Judgement: fewer turns strip before the arm starts to move.
const TURNS_AT_START = 4;

/** Lengths that decide how deep a fixing stands. */
const TIP = ['lengthUnderHeadMm', 'endGapMm', 'travelMm', 'washerThicknessMm'] as const;

/**
 * Checks that a bolt or nut can press the arm on: gap to the spindle's end, end and length of thread, shank, washer.
 *
 * @remarks
 * Formula: bolt: tip depth = length under head - washer - end gap; way left = depth of the thread (or hole) - tip depth;
 * engagement = min(tip depth, depth of the thread) - max(start of the thread, end of the shank). Nut, the mirror of it:
 * its face stands end gap + washer from the spindle's end; way left = that - run-out of the stud; engagement =
 * min(nut height, stud - face). End gap pressed = end gap - travel: every bolt dives deeper while the arm is pressed, so
 * one that is free at hand fit can go solid before the arm is tight. Where nothing is left of the gap (0 or below) the
 * fixing clamps the spindle's end instead of the arm and no preload reaches the taper; it then goes no deeper, so depths
 * are reckoned with a gap of 0.
 *
 * Validity: limits are taken at their worst. `does-not-fit` only if it fails everywhere inside them, `cannot-tell` if it
 * fails in a part, with the field that is known worst. Wanted engagement 1 d in steel, or the whole nut.
 * A depth of the hole without one of the thread stands in for it, with a caution: the thread ends before the hole does.
 *
 * Accuracy: sums of lengths. The first turn of a tapped hole and the point of a bolt carry less than their length:
 * within one pitch comes a finding.
 *
 * @param input - `fixing`: `bolt` or `nut`; `thread`, `spindleThread`; lengths in mm, each a number or limits:
 * `lengthUnderHeadMm`, `threadLengthMm`, `threadStartMm`, `threadDepthMm`, `holeDepthMm`, or `nutHeightMm`,
 * `studLengthMm`, `threadRunoutMm`; `endGapMm`, `travelMm`, `washerThicknessMm`; `head`; `bearing`;
 * `neededEngagementRatio`.
 * @returns The state, the missing fact, both stages in mm (way left below 0: the thread ends first), findings.
 * @throws {@link DomainError} for lengths outside 0 to 500 mm (end gap: -500 to 500), crossed limits, a thread whose sizes
 * contradict each other, an unknown kind, or unknown keys.
 * @example
 * ```ts
 * import { checkFixing, threadFor } from '@spindlewright/torque';
 * const check = checkFixing({
 *   fixing: 'bolt',
 *   thread: threadFor('M8x1'),
 *   spindleThread: threadFor('M8x1'),
 *   lengthUnderHeadMm: 22,
 *   threadDepthMm: 20,
 *   washerThicknessMm: 1.5,
 *   endGapMm: { lower: 2, nominal: 2.5, upper: 3 },
 *   travelMm: { lower: 0.8, nominal: 1, upper: 1.3 },
 *   bearing: { outerDiameterMm: 20, squareHoleMm: 12.6 },
 * });
 * check.state; // => 'fits'
 * check.pressed.clearanceMm?.lower.toFixed(1); // => '0.2'
 * ```
 * @see VDI 2230 (`vdi-2230-2001-quoted`), minimum engagement; 1 d in steel: `judgement`.
 */
export function checkFixing(input: FixingBolt | FixingNut): FixingCheck {
  checkFixingInput('checkFixing', input);
  const travelMm = hardLimits(input.travelMm);
  const gapLeftMm = minus(hardLimits(input.endGapMm), travelMm);
  // Once the fixing meets the spindle's end it goes no deeper, so that lengths count from a gap that ends at 0.
  const gapMm = atLeastZero(hardLimits(input.endGapMm));
  const pressedGapMm = atLeastZero(gapLeftMm);
  const stageAt = (gap: Limits): FixingStage =>
    input.fixing === 'bolt' ? boltStage(input, gap) : nutStage(input, gap);
  const handFit = stageAt(gapMm);
  const pressed = stageAt(pressedGapMm);
  const findings: Finding[] = [];
  const doubts: string[] = [];

  findings.push(...threadFindings(input), ...washerFindings(input));
  if (gapLeftMm.upper <= 0) {
    const values = { endGapMm: hardLimits(input.endGapMm).upper, travelMm: travelMm.lower };
    findings.push(raise('clamps-the-spindle', 'stop', values, { path: 'endGapMm' }));
  } else if (gapLeftMm.lower <= 0) {
    const values = { lowerMm: gapLeftMm.lower, upperMm: gapLeftMm.upper };
    findings.push(raise('may-clamp-the-spindle', 'caution', values, { path: 'endGapMm' }));
    doubts.push(widest(input, ['endGapMm', 'travelMm']));
  }
  const stopPath = input.fixing === 'bolt' ? 'threadDepthMm' : 'threadRunoutMm';
  if (input.fixing === 'bolt' && input.threadDepthMm === undefined && input.holeDepthMm !== undefined) {
    findings.push(raise('hole-depth-for-thread', 'caution', {}, { path: 'threadDepthMm' }));
  }
  if (pressed.clearanceMm === null) {
    const code = input.fixing === 'bolt' ? 'stop-unknown' : 'runout-unknown';
    findings.push(raise(code, 'caution', {}, { path: stopPath }));
    doubts.push(stopPath);
  } else if (pressed.clearanceMm.upper < 0) {
    findings.push(raise(...bottoming(input, handFit, pressed.clearanceMm, travelMm)));
  } else if (pressed.clearanceMm.lower < 0) {
    const { lower, upper } = pressed.clearanceMm;
    findings.push(raise('may-bottom', 'caution', { lowerMm: lower, upperMm: upper }));
    doubts.push(widest(input, [...TIP, stopPath, 'holeDepthMm']));
  } else if (pressed.clearanceMm.lower < input.thread.pitchMm) {
    findings.push(raise('nearly-bottoms', 'caution', { clearanceMm: pressed.clearanceMm.lower }));
  }
  if (input.fixing === 'bolt' && input.threadLengthMm !== undefined) {
    const entryMm = minus(startOf(input), shankEnd(input, pressedGapMm));
    if (entryMm.upper < 0) findings.push(raise('shank-jams', 'stop', { overlapMm: -entryMm.upper }));
    else if (entryMm.lower < 0) {
      findings.push(raise('may-bottom', 'caution', { lowerMm: entryMm.lower, upperMm: entryMm.upper }));
      doubts.push(widest(input, ['threadLengthMm', 'threadStartMm', ...TIP]));
    }
  }
  const neededDiameters = input.neededEngagementRatio ?? 1;
  const carried = neededDiameters * input.thread.majorDiameterMm;
  const neededMm = input.fixing === 'bolt' ? carried : Math.min(carried, hardLimits(input.nutHeightMm).lower);
  const { lower, upper } = pressed.engagementMm;
  const sources = ['vdi-2230-2001-quoted'];
  if (upper < neededMm) {
    findings.push(
      input.fixing === 'bolt'
        ? raise('bolt-too-short', 'stop', { engagementMm: upper, neededMm, neededDiameters }, { sources })
        : raise('nut-not-filled', 'stop', { engagementMm: upper, neededMm }, { sources }),
    );
  } else if (lower < neededMm) {
    findings.push(raise('may-be-short', 'caution', { lowerMm: lower, upperMm: upper, neededMm }, { sources }));
    doubts.push(
      widest(input, [
        ...TIP,
        'studLengthMm',
        'nutHeightMm',
        'threadDepthMm',
        'holeDepthMm',
        'threadStartMm',
        'threadLengthMm',
      ]),
    );
  }
  if (upper >= neededMm && handFit.engagedTurns.lower < TURNS_AT_START) {
    findings.push(raise('few-turns-at-start', 'caution', { turns: handFit.engagedTurns.lower }));
  }
  const fault = findings.some((finding) => finding.severity === 'stop');
  return {
    state: fault ? 'does-not-fit' : doubts.length > 0 ? 'cannot-tell' : 'fits',
    missing: fault ? null : (doubts[0] ?? null),
    handFit,
    pressed,
    dataEdition,
    findings,
  };
}

function threadFindings(input: FixingBolt | FixingNut): Finding[] {
  const { thread, spindleThread } = input;
  if (spindleThread === undefined) {
    const values = { fixingThread: thread.designation };
    return [raise('spindle-thread-assumed', 'note', values, { path: 'spindleThread' })];
  }
  const same =
    Math.abs(thread.majorDiameterMm - spindleThread.majorDiameterMm) < 0.01 &&
    Math.abs(thread.pitchMm - spindleThread.pitchMm) < 0.001 &&
    thread.hand === spindleThread.hand;
  if (same) return [];
  const values = { fixingThread: thread.designation, spindleThread: spindleThread.designation };
  return [raise('wrong-thread', 'stop', values, { path: 'thread' })];
}

function washerFindings(input: FixingBolt | FixingNut): Finding[] {
  if (input.bearing === undefined || !isSquare(input.bearing)) return [];
  const washer = given(input.washerThicknessMm).upper > 0 || input.head === 'flanged';
  return washer ? cornerFindings(input.bearing) : [raise('washer-missing', 'stop', {}, { path: 'washerThicknessMm' })];
}

function bottoming(
  input: FixingBolt | FixingNut,
  handFit: FixingStage,
  clearanceMm: Limits,
  travelMm: Limits,
): Parameters<typeof raise> {
  const overlapMm = -clearanceMm.upper;
  if (input.fixing === 'nut') return ['nut-runs-out-of-thread', 'stop', { overlapMm }];
  if (handFit.clearanceMm !== null && handFit.clearanceMm.upper < 0) return ['bottoms-in-hole', 'stop', { overlapMm }];
  return ['bottoms-when-pressed', 'stop', { overlapMm, travelMm: travelMm.upper }];
}

/** The field known worst among those that decide. */
function widest(input: FixingBolt | FixingNut, keys: readonly string[]): string {
  const fields = input as unknown as Record<string, LimitsInput | undefined>;
  const widthOf = (key: string): number => {
    const { lower, upper } = given(fields[key]);
    return upper - lower;
  };
  return keys.reduce((best, key) => (widthOf(key) > widthOf(best) ? key : best));
}
