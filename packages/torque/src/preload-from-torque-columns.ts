import { type ColumnJoint, convertColumn, type NumberColumn } from './columns.ts';

/**
 * Gives the preloads for a column of tightening torques.
 *
 * @remarks
 * Formula: `preloadFromTorque` row by row; the friction radius is worked out once.
 *
 * Validity: a row whose number or friction lies outside the domain, or is a text, is marked in `refused` and holds 0;
 * nothing is thrown for it. Findings are not made.
 *
 * Accuracy: the same numbers as `preloadFromTorque`.
 *
 * @param input - `torqueNm`: column in Nm; `thread`; `bearing` in mm; `threadFriction`, `bearingFriction` above 0 to 1,
 * each one number or a column of the same length; `method`; `out`: arrays of that length to write into, for a caller who
 * goes over many blocks.
 * @returns Column in N, and a column that is 1 where the row was refused.
 * @throws {@link DomainError} for an input without its column, columns of different lengths, arrays to write into of another
 * kind or length, a faulty thread or face, or unknown keys.
 * @example
 * ```ts
 * import { preloadFromTorqueColumns, threadFor } from '@spindlewright/torque';
 * const { preloadN, refused } = preloadFromTorqueColumns({
 *   torqueNm: [30, 40, Number.NaN],
 *   thread: threadFor('M8x1'),
 *   bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
 *   threadFriction: 0.12,
 *   bearingFriction: [0.1, 0.12, 0.12],
 * });
 * Array.from(preloadN, Math.round); // => [23122, 28121, 0]
 * Array.from(refused); // => [0, 0, 1]
 * ```
 * @see `preloadFromTorque` and its sources.
 */
export function preloadFromTorqueColumns(
  input: { torqueNm: NumberColumn; out?: { preloadN: Float64Array; refused: Uint8Array } } & ColumnJoint,
): { preloadN: Float64Array; refused: Uint8Array } {
  const { out, refused } = convertColumn('preloadFromTorqueColumns', 'torqueNm', input, 'to-preload');
  return { preloadN: out, refused };
}
