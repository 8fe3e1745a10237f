import type { Datum } from '@spindlewright/quantity';
import { BORE_DIAMETER_RANGE, type RoundReadings } from './bore-readings.ts';
import { identificationData } from './identification.generated.ts';
import type { InterfaceRecord } from './record.ts';
import type { SpindleCandidate } from './square-candidates.ts';
import { type Spread, UNLISTED } from './square-hypotheses.ts';

/** One way in which a round bore could be made; without a diameter it could have any. */
interface RoundHypothesis {
  id: string;
  set: string;
  prior: number;
  diameterMm?: Spread;
  toothedProbability: number;
  sources: readonly string[];
}

/**
 * Every round bore of the records that give a diameter: of a plain one that of its spindle with some clearance, of a
 * toothed one the minor diameter where it is given and otherwise what teeth leave of the spindle's. Each record weighs
 * the same, and in it each distinct diameter. @internal
 */
export function roundHypotheses(records: readonly InterfaceRecord[]): RoundHypothesis[] {
  const { unlistedProbability, toothedUnlistedProbability } = identificationData.bore.round;
  const known = records.map((record) => ({ record, bores: boresOf(record) })).filter(({ bores }) => bores.length > 0);
  const share = (1 - unlistedProbability.value) / known.length;
  return [
    ...known.flatMap(({ record, bores }) =>
      bores.map((bore) => ({ id: record.id, prior: share / bores.length, ...bore })),
    ),
    {
      id: UNLISTED,
      set: UNLISTED,
      prior: unlistedProbability.value,
      toothedProbability: toothedUnlistedProbability.value,
      sources: [],
    },
  ];
}

type Bore = Omit<RoundHypothesis, 'id' | 'prior'>;

function boresOf(record: InterfaceRecord): Bore[] {
  const { round } = identificationData.bore;
  const slip = round.slipProbability.value;
  const bore = (data: readonly Datum[], offset: number, deviation: number, toothedProbability: number): Bore[] =>
    distinct(data).map(({ value, set, sources }) => ({
      set: set ?? `diameter-${String(value).replace('.', '-')}`,
      diameterMm: { mean: value + offset, deviation },
      toothedProbability,
      sources,
    }));
  switch (record.family) {
    case 'cottered':
      return bore([record.geometry.spindleDiameterMm], round.clearanceMm.value, round.clearanceSpreadMm.value, slip);
    case 'through-spindle': {
      const { driveSideDiameterMm, nonDriveSideDiameterMm } = record.geometry;
      const data = [driveSideDiameterMm, nonDriveSideDiameterMm];
      return bore(data, -round.toothDepthMm.value, round.toothDepthSpreadMm.value, 1 - slip);
    }
    case 'spline': {
      const { minorDiameterMm, spindleDiameterMm } = record.geometry;
      if (minorDiameterMm !== undefined) return bore([minorDiameterMm], 0, round.minorSpreadMm.value, 1 - slip);
      if (spindleDiameterMm === undefined) return [];
      return bore([spindleDiameterMm], -round.toothDepthMm.value, round.toothDepthSpreadMm.value, 1 - slip);
    }
    default:
      return [];
  }
}

/** The data and their alternatives, each value once. */
function distinct(data: readonly Datum[]): Datum[] {
  const all = data.flatMap((datum) => [datum, ...(datum.alternatives ?? [])]);
  return all.filter(({ value }, index) => all.findIndex((other) => other.value === value) === index);
}

/** Prior times likelihood of the readings under each hypothesis. @internal */
export function roundJoints(hypotheses: readonly RoundHypothesis[], readings: RoundReadings): number[] {
  const { diameter, toothed } = readings;
  const slip = identificationData.bore.round.slipProbability.value;
  return hypotheses.map(({ prior, diameterMm, toothedProbability }) => {
    const ofLook = toothed === undefined ? 1 : toothed ? toothedProbability : 1 - toothedProbability;
    if (diameter === undefined) return prior * ofLook;
    const anywhere = 1 / (BORE_DIAMETER_RANGE.max - BORE_DIAMETER_RANGE.min);
    if (diameterMm === undefined) return prior * ofLook * anywhere;
    const deviation = Math.hypot(diameterMm.deviation, diameter.uncertainty);
    const z = (diameter.value - diameterMm.mean) / deviation;
    const sound = Math.exp(-0.5 * z * z) / (deviation * Math.sqrt(2 * Math.PI));
    return prior * ofLook * ((1 - slip) * sound + slip * anywhere);
  });
}

/** The candidates with their probabilities, likeliest first. @internal */
export function roundCandidates(hypotheses: readonly RoundHypothesis[], joints: readonly number[]): SpindleCandidate[] {
  const total = joints.reduce((sum, joint) => sum + joint, 0);
  return [...new Set(hypotheses.map(({ id }) => id))]
    .map((id) => {
      const sets = hypotheses.flatMap((hypothesis, index) =>
        hypothesis.id === id ? [{ set: hypothesis.set, probability: (joints[index] ?? 0) / total }] : [],
      );
      const probability = sets.reduce((sum, set) => sum + set.probability, 0);
      return { id, probability, sets: sets.sort((a, b) => b.probability - a.probability) };
    })
    .sort((a, b) => b.probability - a.probability);
}

/** Chance of naming the right bore once it is known whether it is toothed. @internal */
export function afterLookAtTeeth(hypotheses: readonly RoundHypothesis[], readings: RoundReadings): number {
  const now = roundJoints(hypotheses, readings).reduce((sum, joint) => sum + joint, 0);
  const best = (toothed: boolean): number => {
    const joints = roundJoints(hypotheses, { ...readings, toothed });
    const total = joints.reduce((sum, joint) => sum + joint, 0);
    return ((roundCandidates(hypotheses, joints)[0]?.probability ?? 0) * total) / now;
  };
  return best(true) + best(false);
}
