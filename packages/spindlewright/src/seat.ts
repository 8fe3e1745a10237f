import { describeSeat, drawSeat } from '@spindlewright/drawing';
import { checkMate, type InterfaceRecord } from '@spindlewright/interfaces';
import { limitsOf, type Measurand } from '@spindlewright/quantity';
import { assumedMaterials, type Pressing, predictSeat, type SeatInput } from '@spindlewright/taper';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { publishedShapes, type SetShapes } from './published-shapes.ts';
import { chancesOf } from './seat-chances.ts';
import type { PressPlan, SeatPart, SeatWay } from './seat-part.ts';
import { withReadingError } from './with-reading-error.ts';

/** Predicts the seat by every way of knowing it that the job allows, and draws the one that leads. @internal */
export function seatOf(
  job: Job,
  press: PressPlan,
  spindleRecord: InterfaceRecord,
  armRecord: InterfaceRecord,
  withChances = false,
): SeatPart {
  const pressing = pressingOf(job, press);
  const sets = publishedShapes(job, spindleRecord, armRecord);
  const better = job.trialFit !== undefined || sets.some(({ flatsRead }) => flatsRead);
  const published = sets.map((shapes) => publishedWay(shapes, pressing, better));
  const read = sets.flatMap((shapes) => (shapes.flatsRead ? [readWay(shapes, pressing)] : []));
  const trialFit = job.trialFit;
  const tried = trialFit === undefined ? [] : sets.map((shapes) => triedWay(shapes, trialFit, pressing));
  // Sets only fill in what was not read, so within a better way they differ little; the one that leaves the least room leads.
  const lead = leastRoom(tried) ?? leastRoom(read) ?? leastRoom(published);
  if (lead === undefined) throw new Error('the records of the two interfaces share no published set');
  const others = [...[leastRoom(tried), leastRoom(read)].filter((way) => way !== undefined), ...published];
  const shapes = sets.find((candidate) => candidate.set === lead.set);
  const shown = shapes?.read;
  const chances =
    withChances && shapes !== undefined ? chancesOf(lead, seatInput(lead.basis, shapes, job, pressing)) : undefined;
  const picture = {
    ...shown,
    handFit: lead.prediction.handFit,
    pressed: lead.prediction.pressed,
    verdict: lead.prediction.verdict,
  };
  return {
    lead,
    others: others.filter((way) => way !== lead),
    mate: checkMate({ spindle: spindleRecord, arm: armRecord }),
    drawing: {
      narrowSvg: drawSeat({ ...picture, idPrefix: 'seat-narrow' }),
      wideSvg: drawSeat({ ...picture, idPrefix: 'seat-wide', widthPx: 720 }),
      description: describeSeat(picture),
    },
    ...(chances === undefined ? {} : { chances }),
  };
}

/** What a way of knowing was predicted from. */
function seatInput(basis: SeatWay['basis'], shapes: SetShapes, job: Job, pressing: Press): SeatInput {
  const shown = { ...shapes.read, pressing };
  return basis === 'trial-fit' && job.trialFit !== undefined
    ? { ...shown, trialFit: gapsWithError(job.trialFit) }
    : shown;
}

type Press = Pressing<Measurand>;

const pressingOf = (job: Job, press: PressPlan): Press => ({
  axialForceN: press.preloadN,
  friction: press.flatsFriction,
  materials: {
    arm: {
      youngsModulusGPa: limitsOf(assumedMaterials.arm.youngsModulusGPa),
      poissonsRatio: limitsOf(assumedMaterials.arm.poissonsRatio),
      yieldStrengthMPa: job.arm?.yieldStrengthMPa ?? limitsOf(jobDefaults.armYield),
    },
  },
});

/** The published set by itself where a better way leads; where none does, with whatever was read laid over it. */
const publishedWay = (shapes: SetShapes, pressing: Press, alone: boolean): SeatWay => ({
  basis: 'published-set',
  set: shapes.set,
  prediction: predictSeat({ ...(alone ? shapes.published : shapes.read), pressing }),
  assumed: alone
    ? [
        ...Object.keys(shapes.published.spindle).map((key) => `spindle.${key}`),
        ...Object.keys(shapes.published.arm).map((key) => `arm.${key}`),
      ]
    : shapes.assumed,
  sources: shapes.sources,
});

const readWay = (shapes: SetShapes, pressing: Press): SeatWay => ({
  basis: 'readings',
  set: shapes.set,
  prediction: predictSeat({ ...shapes.read, pressing }),
  assumed: shapes.assumed,
  sources: shapes.sources,
});

const triedWay = (shapes: SetShapes, trialFit: NonNullable<Job['trialFit']>, pressing: Press): SeatWay => ({
  basis: 'trial-fit',
  set: shapes.set,
  prediction: predictSeat({ ...shapes.read, trialFit: gapsWithError(trialFit), pressing }),
  assumed: shapes.assumed,
  sources: shapes.sources,
});

function gapsWithError({ endGapMm, shoulderGapMm }: NonNullable<Job['trialFit']>) {
  const gap = (reading: Measurand) => withReadingError(reading, jobDefaults.depthReading, 'zero');
  return {
    ...(endGapMm === undefined ? {} : { endGapMm: gap(endGapMm) }),
    ...(shoulderGapMm === undefined ? {} : { shoulderGapMm: gap(shoulderGapMm) }),
  };
}

function leastRoom(ways: readonly SeatWay[]): SeatWay | undefined {
  const room = ({ prediction: { pressed } }: SeatWay): number =>
    Math.min(pressed.endGapMm.lower, pressed.shoulderGapMm.lower);
  return [...ways].sort((a, b) => room(a) - room(b))[0];
}
