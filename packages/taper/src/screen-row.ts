import { type ArmRow, at, triple } from './arm-row.ts';
import type { Joint, ResolvedPressing } from './joint.ts';
import { createRowPress } from './screen-press.ts';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

/** Codes of the verdicts, places in `verdictNames`. @internal */
export const CODE = { seats: 0, marginal: 1, bottoms: 2, shoulder: 3, little: 4, noStart: 5, unknown: 6 } as const;

/** Judges row after row without making anything anew. */
interface RowJudge {
  /** Code of the verdict at the lower, nominal or upper end of the seat's depth. */
  verdictAt(corner: 0 | 1 | 2): number;
  /** Works out what the row's press depends on; to be called once the row is filled. */
  prepare(): void;
  /** Travel at nominal values, in mm. */
  travelMm(): number;
  /** Gaps at nominal values by hand, in mm. */
  endGapMm(): number;
  shoulderGapMm(): number;
}

/**
 * Makes the judge of one spindle and press: `predictSeat` for equal and exact face angles, with the verdict from whether the
 * travel passes a place instead of from the travel, so that no root is sought.
 * @internal
 */
export function createRowJudge(
  spindle: Joint['spindle'],
  pressing: ResolvedPressing | undefined,
  row: ArmRow,
): RowJudge {
  const tan = Math.tan((spindle.faceAngleDeg.nominal * Math.PI) / 180);
  const endFlats = triple(spindle.acrossFlatsAtEndMm);
  const flat = triple(spindle.flatLengthMm);
  const chamfer = triple(spindle.endChamferMm);
  const shoulder = triple(spindle.shoulderFromEndMm);
  const { acrossFlatsAtMouthMm, boreLengthMm: bore, mouthChamferMm: mouthChamfer } = row;
  const { boltSeatFromMouthMm: seat, seatIntrusionMm: intrusion } = row;

  const mouth = new Float64Array(3);
  const endGap = new Float64Array(3);
  const shoulderGap = new Float64Array(3);
  const engaged = new Float64Array(3);
  const middle = new Float64Array(3);
  const press = createRowPress(spindle, pressing, row, { mouth, endGap, shoulderGap, engaged, middle });
  const { travelPast } = press;
  /** Gaps, engaged length and across flats in its middle at one bound of each; the mouths have to be known. */
  function place(corner: number): void {
    const other = 2 - corner;
    const stands = at(mouth, corner);
    const opposed = at(mouth, other);
    const chamfered = at(mouthChamfer, other);
    endGap[corner] = at(seat, corner) - at(intrusion, other) - opposed;
    shoulderGap[corner] = Math.min(at(shoulder, corner), at(flat, corner) + at(mouthChamfer, corner)) - opposed;
    engaged[corner] = Math.min(
      stands - chamfered - at(chamfer, other),
      at(bore, corner) - chamfered,
      at(flat, corner) - at(chamfer, other),
      at(flat, corner) + at(bore, corner) - opposed,
    );
    middle[corner] =
      at(endFlats, corner) +
      (Math.max(at(chamfer, corner), stands - at(bore, other)) + Math.min(stands - chamfered, at(flat, corner))) * tan;
  }

  return {
    prepare() {
      for (let corner = 0; corner < 3; corner++) {
        mouth[corner] = (at(acrossFlatsAtMouthMm, corner) - at(endFlats, 2 - corner)) / 2 / tan;
      }
      for (let corner = 0; corner < 3; corner++) place(corner);
      press.prepare();
    },
    verdictAt(corner) {
      const other = 2 - corner;
      if (at(mouth, corner) - at(mouthChamfer, other) - at(chamfer, other) <= 0) return CODE.noStart;
      const end = at(endGap, other);
      const wall = at(shoulderGap, other);
      const nearest = Math.min(end, wall);
      if (travelPast(corner, nearest) >= 0) return end <= wall ? CODE.bottoms : CODE.shoulder;
      const usable = Math.min(at(flat, other) - at(chamfer, corner), at(bore, other) - at(mouthChamfer, corner));
      const least = USABLE_FLAT_SHARE * usable;
      const reaches = least + at(mouthChamfer, other) + at(chamfer, other) - at(mouth, corner);
      const leaves = at(flat, corner) + at(bore, corner) - at(mouth, other) - least;
      if (
        at(bore, corner) - at(mouthChamfer, other) < least ||
        at(flat, corner) - at(chamfer, other) < least ||
        travelPast(corner, reaches) < 0 ||
        travelPast(other, leaves) > 0
      )
        return CODE.little;
      return travelPast(corner, nearest - CLEAR_GAP_MM) > 0 ? CODE.marginal : CODE.seats;
    },
    travelMm: press.travelMm,
    endGapMm: () => at(endGap, 1),
    shoulderGapMm: () => at(shoulderGap, 1),
  };
}
