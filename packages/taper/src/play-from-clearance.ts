import { checkInput, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { playMessages as messages } from './messages/play.ts';
import { requireFlatInSquare, type SquareInBore, squareSpec } from './square-in-bore.ts';

/** How far an arm with an opened bore can turn. */
export interface BorePlay {
  /** Free rotation from the middle to either stop, in deg, at least 0; null when nothing stops it. */
  rotationDeg: number | null;
  /** Arc that the pedal describes from stop to stop, in mm, at least 0; null when nothing stops it. */
  playAtPedalMm: number | null;
  /** Advance up the taper that would take the clearance up, in mm, when the face angle was given. */
  takeUpAdvanceMm?: number;
  /** Cautions. */
  findings: Finding[];
}

/**
 * Gives the free rotation of a square in an opened bore, and the play that it makes at the pedal.
 *
 * @remarks
 * Formula: the ends of a flat of width b meet the opposite sides when h cos f + (b/2) sin f = h + c, h the half-width, c the
 * clearance per side; about f = 2 c/b. Play = 2 f times crank length, an arc from stop to stop. Advance that takes the
 * clearance up = c/tan a.
 *
 * Validity: a bore with plane flats, opened evenly; c above sqrt(h^2 + (b/2)^2) - h lets the square turn through, which is
 * the finding `rotation-unbounded`. Flats wider than the square are refused.
 *
 * Accuracy: closed form without cancellation for small c; relative error about 1e-15 away from the largest clearance.
 *
 * @param input - `clearanceMm` per side, 0 to 10 mm; `halfWidthMm` above 0 to 30 mm; `flatWidthMm` above 0 to
 * 2 `halfWidthMm`; `crankLengthMm` 50 to 300 mm; `faceAngleDeg` 0.2 to 10 deg, only for the advance.
 * @returns Rotation in deg either way and play in mm, both at least 0, or null without bound.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { playFromClearance } from '@spindlewright/taper';
 * const play = playFromClearance({ clearanceMm: 0.05, halfWidthMm: 6.5, flatWidthMm: 10, crankLengthMm: 170 });
 * [play.rotationDeg?.toFixed(3), play.playAtPedalMm?.toFixed(2)]; // => ['0.577', '3.42']
 * ```
 * @see Plane geometry; nothing but the definition of the clearance is needed.
 */
export function playFromClearance(input: SquareInBore & { clearanceMm: number; faceAngleDeg?: number }): BorePlay {
  checkInput({
    where: 'playFromClearance',
    value: input,
    fields: {
      clearanceMm: { type: 'number', unit: 'mm', min: 0, max: 10 },
      ...squareSpec,
      faceAngleDeg: { type: 'number', unit: 'deg', min: 0.2, max: 10, optional: true },
    },
  });
  requireFlatInSquare('playFromClearance', input);
  const { clearanceMm, halfWidthMm, flatWidthMm, crankLengthMm, faceAngleDeg } = input;
  const findings: Finding[] = [];
  if (clearanceMm > 0) findings.push(find(messages, 'bore-is-open', 'stop', { clearanceMm }));
  // With t = tan(f/2) the condition is (2 h + c) t^2 - b t + c = 0; its smaller root, written so that nothing cancels.
  const root = flatWidthMm ** 2 - 4 * clearanceMm * (2 * halfWidthMm + clearanceMm);
  const rotation = root < 0 ? null : 2 * Math.atan((2 * clearanceMm) / (flatWidthMm + Math.sqrt(root)));
  if (rotation === null) {
    const largestMm = Math.hypot(halfWidthMm, flatWidthMm / 2) - halfWidthMm;
    findings.push(find(messages, 'rotation-unbounded', 'stop', { clearanceMm, largestMm }));
  }
  return {
    rotationDeg: rotation === null ? null : (rotation * 180) / Math.PI + 0,
    playAtPedalMm: rotation === null ? null : 2 * crankLengthMm * rotation + 0,
    ...(faceAngleDeg === undefined
      ? {}
      : { takeUpAdvanceMm: clearanceMm / Math.tan((faceAngleDeg * Math.PI) / 180) + 0 }),
    findings,
  };
}
