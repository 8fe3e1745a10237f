import { checkInput } from '@spindlewright/quantity';
import type { SpindleGeometry } from './published-geometry.ts';
import { publishedSpindle } from './published-spindle.ts';
import type { InterfaceRecord } from './record.ts';
import { requireRecord } from './require-record.ts';

/**
 * Gives the spindle ends of a square-taper record, one for each published set of sizes, never merged.
 *
 * @remarks
 * Formula: sizes as published. Where a set gives no face angle or no length of flats, the fallback of the record stands
 * in and the field is listed in `assumed`; so are fields whose wording had to be interpreted. With a spindle length,
 * `endFromMidplaneMm` is half of it, which assumes a symmetric spindle.
 *
 * Validity: records of the family `square-taper`; another family has no square taper and gives an empty list. End
 * chamfer, shoulder and corner are in no published set and are left out. The length does not change the taper.
 *
 * Accuracy: as published. No tolerance of the square is published; the sets of one standard differ by 0.1 mm across
 * flats, which is 1.4 mm of seat.
 *
 * @param record - Interface record.
 * @param options - `spindleLengthMm`: overall length of the spindle, 80 to 200 mm.
 * @returns One entry a set: `geometry` (mm and degrees, a number or limits), `set`, `sources`, `standing`, `assumed`,
 * `note`, `dataEdition`.
 * @throws {@link DomainError} for a value that is no record, an unknown option or a length outside 80 to 200 mm.
 * @example
 * ```ts
 * import { spindleGeometries } from '@spindlewright/interfaces';
 * import { squareTaperIso } from '@spindlewright/interfaces/records';
 * const [first] = spindleGeometries(squareTaperIso);
 * first?.geometry; // => { acrossFlatsAtEndMm: 12.5, faceAngleDeg: 2, flatLengthMm: 18 }
 * first?.assumed; // => ['flatLengthMm', 'faceAngleDeg']
 * ```
 * @see Sources `taper-jp-ham-2013`, `taper-jp-sizes-2014`, `taper-de-wiki`, `taper-fr-workshop-wiki`, `taper-nl-workshop`.
 */
export function spindleGeometries(
  record: InterfaceRecord,
  options: { spindleLengthMm?: number } = {},
): SpindleGeometry[] {
  requireRecord('spindleGeometries', 'record', record);
  checkInput({
    where: 'spindleGeometries',
    value: options,
    fields: { spindleLengthMm: { type: 'number', unit: 'mm', min: 80, max: 200, optional: true } },
  });
  if (record.family !== 'square-taper') return [];
  const { sets, fallback } = record.geometry;
  const { spindleLengthMm } = options;
  return sets.map((set) => {
    const published = publishedSpindle(set, fallback);
    if (spindleLengthMm === undefined) return published;
    return {
      ...published,
      endFromMidplaneMm: spindleLengthMm / 2,
      assumed: [...published.assumed, 'endFromMidplaneMm'],
    };
  });
}
