import { checkInput, DomainError, type FieldSpecs, type Measurand } from '@spindlewright/quantity';
import { identificationData } from './identification.generated.ts';
import { readingOf } from './reading-of.ts';
import { ACROSS_FLATS_RANGE, FLAT_LENGTH_RANGE, type SquareReadings } from './square-hypotheses.ts';

/** One reading across a pair of opposite flats. */
export interface FlatsReading {
  /** Size across the flats in mm, 8 to 20. */
  acrossFlatsMm: Measurand;
  /** Plane in which the jaws bear, from the end of the spindle inward, in mm, -5 to 30. */
  atMm: Measurand;
}

/** Readings of a square spindle end; at least one. */
export interface IdentifySpindleInput extends Partial<FlatsReading> {
  /** Further readings across flats, each with its plane. */
  readings?: readonly FlatsReading[];
  /** Length of the flats in mm, 3 to 40. */
  flatLengthMm?: Measurand;
}

const ACROSS_FLATS = { type: 'measurand', unit: 'mm', ...ACROSS_FLATS_RANGE } as const;
const AT = { type: 'measurand', unit: 'mm', min: -5, max: 30 } as const;
const FIELDS = {
  acrossFlatsMm: { ...ACROSS_FLATS, optional: true },
  atMm: { ...AT, optional: true },
  readings: {
    type: 'list',
    item: { type: 'object', fields: { acrossFlatsMm: ACROSS_FLATS, atMm: AT } },
    optional: true,
  },
  flatLengthMm: { type: 'measurand', unit: 'mm', ...FLAT_LENGTH_RANGE, optional: true },
} as const satisfies FieldSpecs;

/** Checks the input and turns every reading into a value with its standard uncertainty. @internal */
export function squareReadings(input: IdentifySpindleInput): { readings: SquareReadings; assumed: boolean } {
  checkInput({ where: 'identifySpindle', value: input, fields: FIELDS });
  const { acrossFlatsMm, atMm, flatLengthMm } = input;
  if ((acrossFlatsMm === undefined) !== (atMm === undefined)) {
    const path = acrossFlatsMm === undefined ? 'acrossFlatsMm' : 'atMm';
    throw refuse(path, 'a size across flats together with the plane in which it was read');
  }
  const first = acrossFlatsMm === undefined || atMm === undefined ? [] : [{ acrossFlatsMm, atMm }];
  const flats = [...first, ...(input.readings ?? [])];
  if (flats.length === 0 && flatLengthMm === undefined) throw refuse('', 'at least one reading');
  const given = [
    ...flats.flatMap((flat) => [flat.acrossFlatsMm, flat.atMm]),
    ...(flatLengthMm === undefined ? [] : [flatLengthMm]),
  ];
  const { acrossFlatsMm: size, planeMm: plane, flatLengthMm: length } = identificationData.assumedUncertainty;
  return {
    readings: {
      flats: flats.map((flat) => ({
        acrossFlats: readingOf(flat.acrossFlatsMm, size.value),
        at: readingOf(flat.atMm, plane.value),
      })),
      ...(flatLengthMm === undefined ? {} : { flatLength: readingOf(flatLengthMm, length.value) }),
    },
    assumed: given.some((value) => typeof value === 'number'),
  };
}

const refuse = (path: string, allowed: string): DomainError =>
  new DomainError('identifySpindle', [{ path, received: 'nothing', allowed }]);
