import { getInterface } from '@spindlewright/interfaces';
import type { Limits } from '@spindlewright/quantity';
import { predictSeat, type SeatVerdict } from '@spindlewright/taper';
import { decideSeat } from '../decide-seat.ts';
import type { ArmReadings, Job, SpindleReadings } from '../job.ts';
import { pressPlan } from '../press-plan.ts';
import { publishedShapes } from '../published-shapes.ts';
import { leastRoom, pressingOf } from '../seat.ts';
import { seatNumbers } from '../seat-numbers.ts';
import type { SeatBasis } from '../seat-part.ts';
import type { FitState } from '../sheet.ts';
import type { Need } from './need.ts';
import type { Facts } from './part.ts';

/** Where a part is predicted to sit. */
export interface PredictedSeat {
  /** How the seat is known. */
  basis: SeatBasis;
  /** Name of the published set that fills in what was not stated. */
  set: string;
  /** What becomes of it at nominal sizes. */
  verdict: SeatVerdict;
  /** End gap when pressed, mm. */
  endGapMm: Limits;
  /** Shoulder gap when pressed, mm. */
  shoulderGapMm: Limits;
}

/** A predicted seat and what to make of it. @internal */
export interface JudgedSeat {
  seat: PredictedSeat;
  state: FitState;
  missingFact?: string;
}

/** Squares for which sizes are published, so that a seat can be reckoned. */
const SQUARES = ['square-taper-jis', 'square-taper-iso'];

/** Stated sizes hold at the mouth or the end, give or take the width of a jaw; judgement. */
const AT_MM = { lower: 0, nominal: 0, upper: 0.1 };

/**
 * The seat by the sizes of both parts: by readings where the squares of both are stated, else by published sizes of the
 * two names. Undefined for joints that are no square taper. @internal
 */
export function seatByReadings(need: Need, facts: Facts, partInterface: string | undefined): JudgedSeat | undefined {
  if (need.interface === undefined || !SQUARES.includes(need.interface)) return undefined;
  const own = partInterface ?? need.interface;
  if (!SQUARES.includes(own)) return undefined;
  const [spindleId, armId] = need.for === 'spindle' ? [own, need.interface] : [need.interface, own];
  const job = jobOf(need, facts, spindleId, armId);
  const sets = publishedShapes(job, getInterface(spindleId), getInterface(armId));
  const read = sets.filter(({ flatsRead }) => flatsRead);
  // Without an interface of its own only the stated sizes speak for the part.
  if (partInterface === undefined && read.length === 0) return undefined;
  const pressing = pressingOf(job, pressPlan(job));
  const basis = read.length > 0 ? 'readings' : 'published-set';
  const shapes = leastRoom(
    (read.length > 0 ? read : sets).map((given) => ({ given, prediction: seatNumbers(given.read, pressing) })),
  )?.given;
  if (shapes === undefined) return undefined;
  const { set, assumed, sources } = shapes;
  const lead = { basis, set, prediction: predictSeat({ ...shapes.read, pressing }), assumed, sources } as const;
  const { state, missingFact } = decideSeat(job, { lead, others: [], mate: NO_MATE });
  const { verdict, pressed } = lead.prediction;
  return {
    seat: {
      basis: lead.basis,
      set: lead.set,
      verdict,
      endGapMm: pressed.endGapMm,
      shoulderGapMm: pressed.shoulderGapMm,
    },
    state,
    ...(missingFact === undefined ? {} : { missingFact }),
  };
}

/** The verdict by name is told beside this one. */
const NO_MATE = {
  verdict: 'unknown',
  shiftMm: [],
  claims: [],
  consequence: '',
  findings: [],
  cautions: [],
  sources: [],
  dataEdition: '',
} as const;

function jobOf(need: Need, facts: Facts, spindle: string, arm: string): Job {
  const { numbers } = facts;
  const flat = (acrossFlatsMm: number | undefined) =>
    acrossFlatsMm === undefined ? {} : { flats: [{ acrossFlatsMm, atMm: AT_MM, pair: 'a' as const }] };
  const angle = numbers.faceAngleDeg === undefined ? {} : { faceAngleDeg: numbers.faceAngleDeg };
  const part: ArmReadings & SpindleReadings =
    need.for === 'spindle'
      ? {
          ...flat(numbers.acrossFlatsAtEndMm),
          ...angle,
          ...(numbers.flatLengthMm === undefined ? {} : { flatLengthMm: numbers.flatLengthMm }),
          ...(numbers.shoulderFromEndMm === undefined ? {} : { shoulderFromEndMm: numbers.shoulderFromEndMm }),
        }
      : {
          ...flat(numbers.acrossFlatsAtMouthMm),
          ...angle,
          ...(numbers.boreLengthMm === undefined ? {} : { boreLengthMm: numbers.boreLengthMm }),
          ...(numbers.boltSeatFromMouthMm === undefined ? {} : { boltSeatFromMouthMm: numbers.boltSeatFromMouthMm }),
        };
  const counterpart = need.for === 'spindle' ? need.arm : need.spindle;
  const [ofSpindle, ofArm] = need.for === 'spindle' ? [part, counterpart] : [counterpart, part];
  return {
    format: 'spindlewright-job-1',
    title: '',
    date: '2000-01-01',
    bike: '',
    side: need.side ?? 'drive',
    interface: { spindle, arm },
    ...(ofSpindle === undefined ? {} : { spindle: ofSpindle }),
    ...(ofArm === undefined ? {} : { arm: ofArm }),
    ...(need.flats === undefined ? {} : { flats: need.flats }),
    ...(need.fixing === undefined ? {} : { fixing: need.fixing }),
    ...(need.partMakerTorqueNm === undefined ? {} : { partMakerTorqueNm: need.partMakerTorqueNm }),
  };
}
