import { describeSeat, drawSeat } from '@spindlewright/drawing';
import { checkMate, type InterfaceRecord } from '@spindlewright/interfaces';
import { limitsOf, type Measurand } from '@spindlewright/quantity';
import { assumedMaterials, predictSeat, type SeatInput } from '@spindlewright/taper';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { publishedShapes, type SetShapes } from './published-shapes.ts';
import { chancesOf } from './seat-chances.ts';
import { type SeatPressing, seatNumbers } from './seat-numbers.ts';
import type {
  OtherWay,
  PressPlan,
  SeatBasis,
  SeatFacts,
  SeatNumbers,
  SeatPart,
  SeatWay,
  SheetDrawing,
} from './seat-part.ts';
import { withReadingError } from './with-reading-error.ts';

/** A seat with what it was predicted from, so that it can be drawn. @internal */
export interface KnownSeat {
  facts: SeatFacts;
  /** What the leading way was predicted from. */
  input: SeatInput;
  /** Both parts as the leading way has them. */
  shown: SetShapes['read'];
}

/** Predicts the seat by every way of knowing it that the job allows; the best of them leads and may tell what it is sensitive to. @internal */
export function knowSeat(
  job: Job,
  press: PressPlan,
  spindleRecord: InterfaceRecord,
  armRecord: InterfaceRecord,
  how: { sensitivities: boolean },
): KnownSeat {
  const pressing = pressingOf(job, press);
  const sets = publishedShapes(job, spindleRecord, armRecord);
  const { trialFit } = job;
  const flatsRead = sets.filter((shapes) => shapes.flatsRead);
  const better = trialFit !== undefined || flatsRead.length > 0;
  // Where nothing better leads, the sets are worked with whatever was read laid over.
  const published = sets.map((shapes) =>
    way('published-set', shapes, better ? shapes.published : shapes.read, better, pressing),
  );
  const read = leastRoom(flatsRead.map((shapes) => way('readings', shapes, shapes.read, false, pressing)));
  const tried = trialFit === undefined ? undefined : leastRoom(sets.map((shapes) => tryOn(shapes, trialFit, pressing)));
  const readInput = (set: string) => shapesOf(sets, set).read;
  if (tried !== undefined && trialFit !== undefined) {
    const shown = readInput(tried.set);
    const input = triedInput(shapesOf(sets, tried.set), trialFit, pressing);
    const lead = how.sensitivities ? { ...tried, prediction: predictSeat(input) } : tried;
    const others = [...(read === undefined ? [] : [read]), ...published];
    return { facts: factsOf(lead, others, spindleRecord, armRecord), input, shown };
  }
  // Sets only fill in what was not read, so within a better way they differ little; the one that leaves the least room leads.
  const first = read ?? leastRoom(published);
  if (first === undefined) throw new Error('the records of the two interfaces share no published set');
  const shown = readInput(first.set);
  const input = { ...shown, pressing };
  const lead = { ...first, prediction: predictSeat({ ...input, ...how }) };
  const others = published.filter((other) => other !== first);
  return { facts: factsOf(lead, others, spindleRecord, armRecord), input, shown };
}

/** Predicts the seat, and draws it as the leading way has it. @internal */
export function seatOf(
  job: Job,
  press: PressPlan,
  spindleRecord: InterfaceRecord,
  armRecord: InterfaceRecord,
): SeatPart {
  const known = knowSeat(job, press, spindleRecord, armRecord, { sensitivities: true });
  const { facts, input } = known;
  return { ...facts, drawing: seatDrawing(known), chances: chancesOf(facts.lead, input) };
}

/** The section of a seat as its leading way has it. @internal */
export function seatDrawing({ facts, shown }: KnownSeat): SheetDrawing {
  const { handFit, pressed, verdict } = facts.lead.prediction;
  const picture = { ...shown, handFit, pressed, verdict };
  return {
    narrowSvg: drawSeat({ ...picture, idPrefix: 'seat-narrow' }),
    wideSvg: drawSeat({ ...picture, idPrefix: 'seat-wide', widthPx: 720 }),
    description: describeSeat(picture),
  };
}

const factsOf = (
  lead: SeatWay,
  others: readonly OtherWay[],
  spindle: InterfaceRecord,
  arm: InterfaceRecord,
): SeatFacts => ({ lead, others, mate: checkMate({ spindle, arm }) });

function shapesOf(sets: readonly SetShapes[], name: string): SetShapes {
  const found = sets.find(({ set }) => set === name);
  if (found === undefined) throw new Error(`no set ${name}`);
  return found;
}

/** What presses an arm on, by the job's plan. @internal */
export const pressingOf = (job: Job, press: PressPlan): SeatPressing => ({
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

/** One way of knowing by shapes; `alone`: with nothing but the sizes of the set. */
const way = (
  basis: SeatBasis,
  { set, published, assumed, sources }: SetShapes,
  shapes: SetShapes['read'],
  alone: boolean,
  pressing: SeatPressing,
): OtherWay => ({
  basis,
  set,
  prediction: seatNumbers(shapes, pressing),
  assumed: alone
    ? [
        ...Object.keys(published.spindle).map((key) => `spindle.${key}`),
        ...Object.keys(published.arm).map((key) => `arm.${key}`),
      ]
    : assumed,
  sources,
});

const tryOn = (shapes: SetShapes, trialFit: NonNullable<Job['trialFit']>, pressing: SeatPressing): SeatWay => ({
  basis: 'trial-fit',
  set: shapes.set,
  prediction: predictSeat({ ...triedInput(shapes, trialFit, pressing), sensitivities: false }),
  assumed: shapes.assumed,
  sources: shapes.sources,
});

/** A trial fit is put together with flats that were read; a published set is a claim about other parts, and only beside it. */
const triedInput = (shapes: SetShapes, trialFit: NonNullable<Job['trialFit']>, pressing: SeatPressing) => ({
  ...shapes.read,
  trialFit: gapsWithError(trialFit),
  pressing,
  mixWays: shapes.flatsRead,
});

function gapsWithError({ endGapMm, shoulderGapMm }: NonNullable<Job['trialFit']>) {
  const gap = (reading: Measurand) => withReadingError(reading, jobDefaults.depthReading, 'zero');
  return {
    ...(endGapMm === undefined ? {} : { endGapMm: gap(endGapMm) }),
    ...(shoulderGapMm === undefined ? {} : { shoulderGapMm: gap(shoulderGapMm) }),
  };
}

/** The way that leaves the least room at its worst. @internal */
export function leastRoom<W extends { prediction: SeatNumbers }>(ways: readonly W[]): W | undefined {
  const room = ({ prediction: { pressed } }: W): number =>
    Math.min(pressed.endGapMm.lower, pressed.shoulderGapMm.lower);
  return [...ways].sort((a, b) => room(a) - room(b))[0];
}
