import { checkInput } from '@spindlewright/quantity';

/**
 * Gives the face angle of a taper from the ratio in which its diameter, or across flats, grows.
 *
 * @remarks
 * Formula: a = atan(C/2), C the growth over the length, so 1:12 is C = 1/12.
 *
 * Validity: ratios above 0 to 1.
 *
 * Accuracy: relative error about 1e-16.
 *
 * @param input - `taperRatio`, growth of diameter or across flats per unit of length, above 0 to 1.
 * @returns Angle of the face against the axis in deg; twice that is the included angle.
 * @throws {@link DomainError} for unknown keys and a ratio outside that range.
 * @example
 * ```ts
 * import { faceAngleFromTaper } from '@spindlewright/taper';
 * faceAngleFromTaper({ taperRatio: 1 / 12 }).faceAngleDeg.toFixed(5); // => '2.38594'
 * ```
 * @see Definition of a taper; Morse tapers in source `machinerys-handbook-31`.
 */
export function faceAngleFromTaper(input: { taperRatio: number }): { faceAngleDeg: number } {
  const taperRatio = { type: 'number', unit: '', above: 0, max: 1 } as const;
  checkInput({ where: 'faceAngleFromTaper', value: input, fields: { taperRatio } });
  return { faceAngleDeg: (Math.atan(input.taperRatio / 2) * 180) / Math.PI };
}
