import { DomainError, type FieldSpecs } from '@spindlewright/quantity';

/** The square in a bore that has been opened. */
export interface SquareInBore {
  /** Half the across flats of the square, above 0 to 30 mm. */
  halfWidthMm: number;
  /** Width of its flats, above 0 mm to twice the half-width, which a sharp square has. */
  flatWidthMm: number;
  /** Length of the crank arm, 50 to 300 mm. */
  crankLengthMm: number;
}

/** Domain of the square in its bore. @internal */
export const squareSpec: FieldSpecs = {
  halfWidthMm: { type: 'number', unit: 'mm', above: 0, max: 30 },
  flatWidthMm: { type: 'number', unit: 'mm', above: 0, max: 60 },
  crankLengthMm: { type: 'number', unit: 'mm', min: 50, max: 300 },
};

/** Refuses flats wider than the square that they bound. @internal */
export function requireFlatInSquare(where: string, { halfWidthMm, flatWidthMm }: SquareInBore): void {
  if (flatWidthMm <= 2 * halfWidthMm) return;
  const allowed = `at most ${2 * halfWidthMm} mm, twice the half-width`;
  throw new DomainError(where, [{ path: 'flatWidthMm', received: String(flatWidthMm), allowed }]);
}
