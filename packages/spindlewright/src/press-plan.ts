import { hardLimits, type Limits, limitsOf } from '@spindlewright/quantity';
import { flatFriction } from '@spindlewright/taper';
import { preloadRange, threadFor } from '@spindlewright/torque';
import { tradeTorques } from '@spindlewright/torque/data';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import type { PressPlan } from './seat-part.ts';

/** Joint of the trade torques that a square taper's fixing belongs to. */
const JOINT = 'square-taper-bolt';

/** A hand torque wrench of the common kind; its permissible deviation is in the torque data. @internal */
export const TOOL = 'click-wrench-iso-6789';

/** What presses the arm on: torque, preload with its range, friction of the flats. @internal */
export function pressPlan(job: Job): PressPlan {
  const fixing = job.fixing ?? { thread: 'M8x1', lubrication: 'unknown' as const };
  const flats = job.flats ?? 'unknown';
  const rows = tradeTorques.filter((row) => row.joint === JOINT);
  // A range that the maker gives is the mechanic's to choose from, so one value of it is set and only the tool spreads it.
  const torqueNm =
    job.partMakerTorqueNm === undefined
      ? mostAgreed(rows.map((row) => [row.minNm, row.maxNm] as const))
      : hardLimits(job.partMakerTorqueNm).nominal;
  const friction = threadFrictionOf(fixing.lubrication);
  const range = preloadRange({
    torqueNm,
    tool: TOOL,
    thread: threadFor(fixing.thread),
    threadFriction: friction,
    bearingFriction: friction,
    bearing: bearingOf(job, fixing.thread),
  });
  return {
    torqueNm: range.torqueNm,
    torqueFrom: job.partMakerTorqueNm === undefined ? 'trade-range' : 'part-maker',
    tradeTorques: rows.map(({ id, minNm, maxNm, sources }) => ({ id, lowerNm: minNm, upperNm: maxNm, sources })),
    preloadN: range.preloadN,
    flatsFriction: flatsFrictionOf(flats),
    threadFriction: friction,
    flats,
    thread: fixing.thread,
    lubrication: fixing.lubrication,
  };
}

/** The face that turns under the bolt head: a ring on the washer. @internal */
export function bearingOf(job: Job, thread: string): { outerDiameterMm: number; holeDiameterMm: number } {
  const holeDiameterMm = threadFor(thread).majorDiameterMm + jobDefaults.bearingHoleClearance.value;
  const read = job.fixing?.bearingOuterDiameterMm;
  return {
    outerDiameterMm: read === undefined ? holeDiameterMm + 2 * jobDefaults.bearingRing.value : hardLimits(read).nominal,
    holeDiameterMm,
  };
}

/** One setting has to be named: the lowest torque that most of the ranges contain. The sheet keeps the ranges apart. @internal */
export function mostAgreed(ranges: readonly (readonly [number, number])[]): number {
  const ends = ranges.flat().sort((a, b) => a - b);
  const support = (torque: number): number =>
    ranges.filter(([lower, upper]) => lower <= torque && torque <= upper).length;
  const most = Math.max(...ends.map(support));
  const agreed = ends.find((torque) => support(torque) === most);
  if (agreed === undefined) throw new Error('the torque data hold no row for this joint');
  return agreed;
}

/** Friction of thread and head by what is on them. @internal */
export function threadFrictionOf(lubrication: PressPlan['lubrication']): Limits {
  const { lubricatedThread, dryThread, unknownThread } = jobDefaults;
  return limitsOf({ lubricated: lubricatedThread, dry: dryThread, unknown: unknownThread }[lubrication]);
}

function flatsFrictionOf(flats: PressPlan['flats']): Limits {
  return limitsOf({ ...flatFriction, unknown: jobDefaults.unknownFlats }[flats]);
}
