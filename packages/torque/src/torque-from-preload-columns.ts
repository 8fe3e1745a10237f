import { type ColumnJoint, convertColumn, type NumberColumn } from './columns.ts';

/**
 * Gives the tightening torques for a column of preloads.
 *
 * @remarks
 * Formula: `torqueFromPreload` row by row; the friction radius is worked out once.
 *
 * Validity: a row whose number or friction lies outside the domain, or is a text, is marked in `refused` and holds 0;
 * nothing is thrown for it. Findings are not made.
 *
 * Accuracy: the same numbers as `torqueFromPreload`.
 *
 * @param input - `preloadN`: column in N; `thread`; `bearing` in mm; `threadFriction`, `bearingFriction` above 0 to 1,
 * each one number or a column of the same length; `method`; `out`: arrays of that length to write into, for a caller who
 * goes over many blocks.
 * @returns Column in Nm, and a column that is 1 where the row was refused.
 * @throws {@link DomainError} for an input without its column, columns of different lengths, arrays to write into of another
 * kind or length, a faulty thread or face, or unknown keys.
 * @example
 * ```ts
 * import { torqueFromPreloadColumns, threadFor } from '@spindlewright/torque';
 * const { torqueNm, refused } = torqueFromPreloadColumns({
 *   preloadN: [20_000, 25_000, -1],
 *   thread: threadFor('M8x1'),
 *   bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
 *   threadFriction: 0.12,
 *   bearingFriction: [0.1, 0.12, 0.12],
 * });
 * Array.from(torqueNm, Math.round); // => [26, 36, 0]
 * Array.from(refused); // => [0, 0, 1]
 * ```
 * @see `torqueFromPreload` and its sources.
 */
export function torqueFromPreloadColumns(
  input: { preloadN: NumberColumn; out?: { torqueNm: Float64Array; refused: Uint8Array } } & ColumnJoint,
): { torqueNm: Float64Array; refused: Uint8Array } {
  const { out, refused } = convertColumn('torqueFromPreloadColumns', 'preloadN', input, 'to-torque');
  return { torqueNm: out, refused };
}
