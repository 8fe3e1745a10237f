import { identificationData } from './identification.generated.ts';
import { publishedSpindle } from './published-spindle.ts';
import type { SquareTaperRecord } from './record.ts';
import { priorOf, type SquareHypothesis, setShare, UNLISTED } from './square-hypotheses.ts';

/**
 * All hypotheses of a square bore, one for each published set of each record, and an unlisted one. No size of a bore is
 * published: each is derived, as in `armGeometries`, from the spindle of its set, with the width of the judgements that
 * takes. Sizes are those at the inner mouth; a plane counts against the growth, so it is negative inside. @internal
 */
export function boreHypotheses(records: readonly SquareTaperRecord[]): SquareHypothesis[] {
  const { unlisted } = identificationData.bore;
  return [
    ...records.flatMap(recordBores),
    {
      id: UNLISTED,
      set: UNLISTED,
      prior: priorOf(UNLISTED),
      acrossFlatsMm: { mean: unlisted.acrossFlatsAtMouthMm.value, deviation: unlisted.acrossFlatsSpreadMm.value },
      faceAngleDeg: { mean: unlisted.faceAngleDeg.value, deviation: unlisted.faceAngleSpreadDeg.value },
      flatLengthMm: { mean: unlisted.boreLengthMm.value, deviation: unlisted.boreLengthSpreadMm.value },
      sizeWithLength: 0,
      sources: [],
    },
  ];
}

function recordBores(record: SquareTaperRecord): SquareHypothesis[] {
  const { sets, fallback, handFitShoulderGapMm, handFitEndGapMm } = record.geometry;
  const { spread } = identificationData;
  const depth = {
    // From the spindle end to the mouth of the arm: the flats less the gap that a hand fit leaves to their inner end.
    variance: spread.flatLengthMm.value ** 2 + rectangular(handFitShoulderGapMm) ** 2,
    endGapVariance: rectangular(handFitEndGapMm) ** 2,
  };
  return sets.map((set) => {
    const angle = (set.faceAngleDeg ?? fallback.faceAngleDeg).value;
    const growth = 2 * Math.tan((angle * Math.PI) / 180);
    const mouthFromEnd = (set.flatLengthMm ?? fallback.flatLengthMm).value - handFitShoulderGapMm.value;
    return {
      id: record.id,
      set: set.id,
      prior: priorOf(record.id) * setShare(record, set.acrossFlatsAtEndMm.value),
      acrossFlatsMm: {
        mean: set.acrossFlatsAtEndMm.value + growth * mouthFromEnd,
        deviation: Math.hypot(spread.acrossFlatsMm.value, growth * Math.sqrt(depth.variance)),
      },
      faceAngleDeg: { mean: angle, deviation: spread.faceAngleDeg.value },
      flatLengthMm: {
        mean: mouthFromEnd + handFitEndGapMm.value,
        deviation: Math.sqrt(depth.variance + depth.endGapVariance),
      },
      // A deeper mouth makes the arm both wider there and longer.
      sizeWithLength: growth * depth.variance,
      sources: publishedSpindle(set, fallback).sources,
    };
  });
}

/** Standard deviation of a judgement that is given by its bounds. */
const rectangular = ({
  value,
  lower = value,
  upper = value,
}: {
  value: number;
  lower?: number;
  upper?: number;
}): number => (upper - lower) / Math.sqrt(12);
