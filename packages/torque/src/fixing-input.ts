import { checkInput, type FieldSpecs, type LimitsInput } from '@spindlewright/quantity';
import { type Bearing, bearingSpec, checkRing } from './bearing.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** What bolt and nut have in common when they hold an arm on a spindle. */
export interface FixingSurroundings {
  /** Thread of the bolt or nut. */
  thread: Thread;
  /** Thread of the spindle; taken as that of the fixing when absent. */
  spindleThread?: Thread;
  /** How far the seat in the arm stands proud of the spindle's end at hand fit, in mm; below 0: it lies within. */
  endGapMm: LimitsInput;
  /** How far the arm moves in when it is pressed, in mm, at least 0; 0 if `endGapMm` was measured pressed. */
  travelMm: LimitsInput;
  /** Thickness of all washers under the head in mm; absent: none. */
  washerThicknessMm?: LimitsInput;
  /** `flanged` when head and washer are one piece; `plain` when absent. */
  head?: 'plain' | 'flanged';
  /** The face that bears, for the washer check. */
  bearing?: Bearing;
  /** Thread engagement wanted, in diameters; 1 (steel) when absent. */
  neededEngagementRatio?: number;
}

/** A bolt screwed into the spindle. */
export interface FixingBolt extends FixingSurroundings {
  /** Kind of fixing. */
  fixing: 'bolt';
  /** Length from the face of the head to the tip in mm. */
  lengthUnderHeadMm: LimitsInput;
  /** Threaded length from the tip in mm; threaded up to the head when absent. */
  threadLengthMm?: LimitsInput;
  /** Where the thread in the spindle begins, from its end, in mm; 0 when absent. */
  threadStartMm?: LimitsInput;
  /** Depth from the spindle's end to the last full thread in mm. */
  threadDepthMm?: LimitsInput;
  /** Depth of the hole in mm; stands in, with a caution, for the depth of the thread when that is absent. */
  holeDepthMm?: LimitsInput;
}

/** A nut on a stud of the spindle. */
export interface FixingNut extends FixingSurroundings {
  /** Kind of fixing. */
  fixing: 'nut';
  /** Threaded height of the nut in mm. */
  nutHeightMm: LimitsInput;
  /** Length of the stud beyond the spindle's end in mm. */
  studLengthMm: LimitsInput;
  /** Length without full thread at the foot of the stud in mm. */
  threadRunoutMm?: LimitsInput;
}

const limits = (min: number) => ({ type: 'limits', unit: 'mm', min, max: 500 }) as const;
const optional = (min: number) => ({ ...limits(min), optional: true }) as const;

/** Checks the input of `checkFixing`. @internal */
export function checkFixingInput(where: string, input: FixingBolt | FixingNut): void {
  const given = (input ?? {}) as { fixing?: unknown; bearing?: unknown };
  const own: FieldSpecs =
    given.fixing === 'nut'
      ? { nutHeightMm: limits(0), studLengthMm: limits(0), threadRunoutMm: optional(0) }
      : {
          lengthUnderHeadMm: limits(0),
          threadLengthMm: optional(0),
          threadStartMm: optional(0),
          threadDepthMm: optional(0),
          holeDepthMm: optional(0),
        };
  const fields: FieldSpecs = {
    fixing: { type: 'choice', values: ['bolt', 'nut'] },
    thread: { type: 'object', fields: threadFields },
    spindleThread: { type: 'object', fields: threadFields, optional: true },
    ...own,
    endGapMm: limits(-500),
    travelMm: limits(0),
    washerThicknessMm: optional(0),
    head: { type: 'choice', values: ['plain', 'flanged'], optional: true },
    bearing: { ...bearingSpec(input), optional: true },
    neededEngagementRatio: { type: 'number', unit: 'd', min: 0.1, max: 5, optional: true },
  };
  checkInput({ where, value: input, fields });
  checkThread(where, input.thread);
  if (input.spindleThread !== undefined) checkThread(where, input.spindleThread, 'spindleThread');
  if (input.bearing !== undefined) checkRing(where, input.bearing);
}
