import { checkInput, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { playMessages as messages } from './messages/play.ts';
import { requireFlatInSquare, type SquareInBore, squareSpec } from './square-in-bore.ts';

/**
 * Gives the clearance of an opened bore from the play felt at the pedal; the exact inverse of {@link playFromClearance}.
 *
 * @remarks
 * Formula: f = play/(2 crank length); c = (b/2) sin f - 2 h sin^2(f/2).
 *
 * Validity: play of the arm on its spindle, not of the bearing. Up to f = atan(b/(2 h)); beyond, no clearance stops the
 * square and the result is null with the finding `clearance-unbounded`.
 *
 * Accuracy: closed form; the round trip with its inverse holds to 1e-12 away from that end.
 *
 * @param input - `playAtPedalMm` from stop to stop along the arc, 0 to 500 mm; `halfWidthMm` above 0 to 30 mm;
 * `flatWidthMm` above 0 to 2 `halfWidthMm`; `crankLengthMm` 50 to 300 mm.
 * @returns Clearance per side in mm, at least 0, or null without bound, and the rotation either way in deg.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { clearanceFromPlay } from '@spindlewright/taper';
 * clearanceFromPlay({ playAtPedalMm: 3.42, halfWidthMm: 6.5, flatWidthMm: 10, crankLengthMm: 170 }).clearanceMm?.toFixed(3);
 * // => '0.050'
 * ```
 * @see Plane geometry; nothing but the definition of the clearance is needed.
 */
export function clearanceFromPlay(input: SquareInBore & { playAtPedalMm: number }): {
  clearanceMm: number | null;
  rotationDeg: number;
  findings: Finding[];
} {
  checkInput({
    where: 'clearanceFromPlay',
    value: input,
    fields: { playAtPedalMm: { type: 'number', unit: 'mm', min: 0, max: 500 }, ...squareSpec },
  });
  requireFlatInSquare('clearanceFromPlay', input);
  const { playAtPedalMm, halfWidthMm, flatWidthMm, crankLengthMm } = input;
  const rotation = playAtPedalMm / (2 * crankLengthMm);
  const largest = Math.atan2(flatWidthMm / 2, halfWidthMm);
  const rotationDeg = (rotation * 180) / Math.PI + 0;
  if (rotation > largest) {
    const values = { largestDeg: (largest * 180) / Math.PI };
    return { clearanceMm: null, rotationDeg, findings: [find(messages, 'clearance-unbounded', 'stop', values)] };
  }
  const clearanceMm = (flatWidthMm / 2) * Math.sin(rotation) - 2 * halfWidthMm * Math.sin(rotation / 2) ** 2 + 0;
  const findings = clearanceMm > 0 ? [find(messages, 'bore-is-open', 'stop', { clearanceMm })] : [];
  return { clearanceMm, rotationDeg, findings };
}
