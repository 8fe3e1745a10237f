import { checkInput, DomainError, type LimitsInput } from '@spindlewright/quantity';
import { type ArmColumns, readArms } from './arm-columns.ts';
import { resolveJoint, resolvePressing } from './joint.ts';
import { CODE, createRowJudge } from './screen-row.ts';
import { SEAT_VERDICTS, type SeatVerdict } from './seat.ts';
import { faceAngleSpec, type Pressing, pressingSpec, type SpindleShape, spindleSpec } from './shapes.ts';

/** A spindle end whose face angle is exact, and that of every arm. */
export interface ScreenSpindle extends Omit<SpindleShape<LimitsInput>, 'faceAngleDeg'> {
  /** Angle of each face against the axis, of spindle and arms; 0.2 to 10 deg (trade: 2). */
  faceAngleDeg: number;
}

/** One spindle, many arms. */
export interface ScreenSeatsInput {
  /** Shape of the spindle end. */
  spindle: ScreenSpindle;
  /** Sizes of the arms, a column each. */
  arms: ArmColumns;
  /** What presses the arms on; without it the verdict is that of the hand fit. */
  pressing?: Omit<Pressing<LimitsInput>, 'compliance'>;
  /** True to get travel and pressed gaps at nominal values too. */
  lengths?: boolean;
  /** Columns to write into, for a caller who goes over many blocks. */
  out?: Partial<Pick<ScreenedSeats, 'verdict' | 'worstLower' | 'worstUpper'>>;
}

/** Verdicts of many arms, a column each. */
export interface ScreenedSeats {
  /** Verdict at nominal values, lowered to `marginal` when a worst case is not `seats`; place in `verdictNames`, or 255. */
  verdict: Uint8Array;
  /** Verdict with everything at its bound so that the arm stands as far out as it may; likewise. */
  worstLower: Uint8Array;
  /** Verdict with the arm as far in as it may; likewise. */
  worstUpper: Uint8Array;
  /** Names of the verdicts by their code. */
  verdictNames: readonly (SeatVerdict | 'cannot-tell')[];
  /** Rows by code of the verdict, in the order of the names; then the refused ones. */
  counts: number[];
  /** Travel at nominal values in mm, if `lengths` was set; 0 in rows without verdict. */
  travelMm?: Float64Array;
  /** Pressed end gap at nominal values in mm, likewise. */
  endGapMm?: Float64Array;
  /** Pressed shoulder gap at nominal values in mm, likewise. */
  shoulderGapMm?: Float64Array;
}

const WHERE = 'screenSeats';
const REFUSED = 255;

/**
 * Judges many arms on one spindle: `predictSeat` by columns, for catalogues and studies.
 *
 * @remarks
 * Formula: hand fit, travel and verdicts of {@link predictSeat} with the model `fitted`, or `fitted-plastic` where the arm's
 * yield strength is given, for face angles that are equal and exact. The force that a travel d takes rises with d, so the
 * travel passes a place just when the force that is given is more than the place takes: no root is sought for a verdict.
 *
 * Validity: as there. Face angles that differ, or that are known within limits only, need `predictSeat`: refused. A row with
 * a size outside its domain gets 255, one with a size that is not known (NaN) `cannot-tell`; neither throws. Findings are not
 * made: without a yield strength the arms are judged as if they could not yield.
 *
 * Accuracy: the verdicts of `predictSeat`; seats within some 1e-12 mm of a limit may fall to either side. The lengths agree
 * within 1e-11 mm.
 *
 * @param input - `spindle` in mm and deg, numbers or limits; `arms`: each size in mm as a number, limits, or a column;
 * `pressing` with force in N, friction, materials; `lengths` true for the lengths too; `out`: arrays of as many rows to
 * write the verdicts into.
 * @returns Codes by row for the verdict at nominal values and at both worst cases, names, counts; lengths in mm when asked
 * for.
 * @throws {@link DomainError} for unknown keys, single numbers outside their domain, no column or columns of different
 * lengths, an angle of the arms of their own, arrays to write into of another kind or length.
 * @example
 * ```ts
 * import { screenSeats } from '@spindlewright/taper';
 * const { verdict, verdictNames, counts } = screenSeats({
 *   spindle: { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
 *   arms: { acrossFlatsAtMouthMm: { nominal: [13.6, 13.9, Number.NaN, -1], plusMinusMm: 0.01 }, boreLengthMm: 18 },
 *   pressing: { axialForceN: 15_000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 } },
 * });
 * Array.from(verdict, (code) => verdictNames[code] ?? 'refused');
 * // => ['seats', 'bottoms-on-end', 'cannot-tell', 'refused']
 * counts.at(-1); // => 1
 * ```
 * @see `predictSeat` and its sources.
 */
export function screenSeats(input: ScreenSeatsInput): ScreenedSeats {
  const { arms, lengths = false, out, ...rest } = (input ?? {}) as ScreenSeatsInput;
  const { compliance: _, ...press } = pressingSpec('limits');
  checkInput({
    where: WHERE,
    value: { ...rest, lengths },
    fields: {
      spindle: { type: 'object', fields: { ...spindleSpec('limits'), faceAngleDeg: faceAngleSpec('number') } },
      pressing: { type: 'object', fields: press, optional: true },
      lengths: { type: 'flag' },
    },
  });
  const { spindle, pressing } = rest;
  const { rows, row, read } = readArms(WHERE, arms);
  const joint = resolveJoint(spindle, { acrossFlatsAtMouthMm: 1, faceAngleDeg: spindle.faceAngleDeg, boreLengthMm: 1 });
  const judge = createRowJudge(joint.spindle, pressing && resolvePressing(pressing), row);

  const verdict = codes(out?.verdict, 'verdict', rows);
  const worstLower = codes(out?.worstLower, 'worstLower', rows);
  const worstUpper = codes(out?.worstUpper, 'worstUpper', rows);
  const verdictNames = [...SEAT_VERDICTS, 'cannot-tell'] as const;
  const counts = new Array<number>(verdictNames.length + 1).fill(0);
  const travelMm = new Float64Array(lengths ? rows : 0);
  const endGapMm = new Float64Array(travelMm.length);
  const shoulderGapMm = new Float64Array(travelMm.length);
  for (let index = 0; index < rows; index++) {
    const state = read(index);
    let code: number = state === 'unknown' ? CODE.unknown : REFUSED;
    let low = code;
    let high = code;
    if (state === 'known') {
      judge.prepare();
      low = judge.verdictAt(0);
      high = judge.verdictAt(2);
      code = judge.verdictAt(1);
      if (code === CODE.seats && (low !== CODE.seats || high !== CODE.seats)) code = CODE.marginal;
      if (lengths) {
        const travel = judge.travelMm();
        travelMm[index] = travel;
        endGapMm[index] = judge.endGapMm() - travel;
        shoulderGapMm[index] = judge.shoulderGapMm() - travel;
      }
    }
    verdict[index] = code;
    worstLower[index] = low;
    worstUpper[index] = high;
    const place = code === REFUSED ? verdictNames.length : code;
    counts[place] = (counts[place] ?? 0) + 1;
  }
  return {
    verdict,
    worstLower,
    worstUpper,
    verdictNames,
    counts,
    ...(lengths ? { travelMm, endGapMm, shoulderGapMm } : {}),
  };
}

function codes(given: unknown, name: string, rows: number): Uint8Array {
  if (given === undefined) return new Uint8Array(rows);
  if (given instanceof Uint8Array && given.length === rows) return given;
  const received = given instanceof Uint8Array ? `a Uint8Array of ${given.length}` : typeof given;
  throw new DomainError(WHERE, [{ path: `out.${name}`, received, allowed: `a Uint8Array of ${rows}` }]);
}
