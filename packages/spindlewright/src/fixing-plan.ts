import { hardLimits, type Limits } from '@spindlewright/quantity';
import { checkFixing, type FixingCheck, threadFor } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { bearingOf } from './press-plan.ts';
import type { PressPlan, SeatFacts } from './seat-part.ts';
import { withReadingError } from './with-reading-error.ts';

const NONE: Limits = { lower: 0, nominal: 0, upper: 0 };

/** Checks that the bolt can press the arm at all, when its length and the end gap were read. @internal */
export function fixingPlan(job: Job, press: PressPlan, seat: SeatFacts | undefined): FixingCheck | undefined {
  const { fixing } = job;
  if (fixing?.lengthUnderHeadMm === undefined) return undefined;
  // With a trial fit the arm still has to travel; a gap read on the joint as found is that of the pressed arm.
  const gap = seat === undefined ? undefined : seat.lead.prediction.handFit.endGapMm;
  const endGapMm = gap ?? asFound(job);
  if (endGapMm === undefined) return undefined;
  const length = (reading: NonNullable<typeof fixing.lengthUnderHeadMm>): Limits =>
    hardLimits(withReadingError(reading, jobDefaults.lengthReading));
  return checkFixing({
    fixing: 'bolt',
    thread: threadFor(fixing.thread),
    ...(fixing.spindleThread === undefined ? {} : { spindleThread: threadFor(fixing.spindleThread) }),
    lengthUnderHeadMm: length(fixing.lengthUnderHeadMm),
    ...(fixing.threadDepthMm === undefined ? {} : { threadDepthMm: length(fixing.threadDepthMm) }),
    ...(fixing.washerThicknessMm === undefined ? {} : { washerThicknessMm: hardLimits(fixing.washerThicknessMm) }),
    ...(fixing.head === undefined ? {} : { head: fixing.head }),
    endGapMm,
    travelMm: seat === undefined ? NONE : seat.lead.prediction.travelMm,
    // A washer that nobody looked for is not missing: only what was read can fail.
    ...(fixing.washerThicknessMm === undefined && fixing.head !== 'flanged'
      ? {}
      : {
          bearing: {
            outerDiameterMm: bearingOf(job, press.thread).outerDiameterMm,
            squareHoleMm: jobDefaults.squareUnderHead.value,
          },
        }),
  });
}

function asFound(job: Job): Limits | undefined {
  const reading = job.measurements?.endGapMm;
  return reading === undefined ? undefined : hardLimits(withReadingError(reading, jobDefaults.depthReading, null));
}
