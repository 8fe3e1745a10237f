import { checkInput, DomainError, type FieldSpecs, type Measurand } from '@spindlewright/quantity';
import { identificationData } from './identification.generated.ts';
import { readingOf } from './reading-of.ts';
import { ACROSS_FLATS_RANGE, FLAT_LENGTH_RANGE, type Reading, type SquareReadings } from './square-hypotheses.ts';

/** One reading across a pair of opposite flats of a bore. */
export interface BoreFlatsReading {
  /** Size across the flats in mm, 8 to 20. */
  acrossFlatsMm: Measurand;
  /** Plane in which the jaws bear, from the inner mouth (the side of the frame) outward, in mm, 0 to 40. */
  atMm: Measurand;
}

/** Readings of the bore of an arm: of a square one or of a round one, at least one. */
export interface IdentifyBoreInput extends Partial<BoreFlatsReading> {
  /** Further readings across the flats of a square bore, each with its plane. */
  readings?: readonly BoreFlatsReading[];
  /** From the inner mouth of a square bore to the seat of the bolt, in mm, 3 to 40. */
  boreLengthMm?: Measurand;
  /** Diameter of a round bore in mm, 10 to 40; across the crests where it is toothed. */
  diameterMm?: Measurand;
  /** Whether a round bore is toothed. */
  toothed?: boolean;
}

/** Readings of a round bore. @internal */
export interface RoundReadings {
  diameter?: Reading;
  toothed?: boolean;
}

/** Diameters of round bores that are accepted, in mm. @internal */
export const BORE_DIAMETER_RANGE = { min: 10, max: 40 } as const;

const ACROSS_FLATS = { type: 'measurand', unit: 'mm', ...ACROSS_FLATS_RANGE } as const;
const AT = { type: 'measurand', unit: 'mm', min: -3, max: 40 } as const;
const FIELDS = {
  acrossFlatsMm: { ...ACROSS_FLATS, optional: true },
  atMm: { ...AT, optional: true },
  readings: {
    type: 'list',
    item: { type: 'object', fields: { acrossFlatsMm: ACROSS_FLATS, atMm: AT } },
    optional: true,
  },
  boreLengthMm: { type: 'measurand', unit: 'mm', ...FLAT_LENGTH_RANGE, optional: true },
  diameterMm: { type: 'measurand', unit: 'mm', ...BORE_DIAMETER_RANGE, optional: true },
  toothed: { type: 'flag', optional: true },
} as const satisfies FieldSpecs;

/** Checks the input and turns every reading into a value with its standard uncertainty. @internal */
export function boreReadings(input: IdentifyBoreInput): {
  square?: SquareReadings;
  round?: RoundReadings;
  assumed: boolean;
} {
  checkInput({ where: 'identifyBore', value: input, fields: FIELDS });
  const { acrossFlatsMm, atMm, boreLengthMm, diameterMm, toothed } = input;
  if ((acrossFlatsMm === undefined) !== (atMm === undefined)) {
    const path = acrossFlatsMm === undefined ? 'acrossFlatsMm' : 'atMm';
    throw refuse(path, 'nothing', 'a size across flats together with the plane in which it was read');
  }
  const first = acrossFlatsMm === undefined || atMm === undefined ? [] : [{ acrossFlatsMm, atMm }];
  const flats = [...first, ...(input.readings ?? [])];
  const isSquare = flats.length > 0 || boreLengthMm !== undefined;
  const isRound = diameterMm !== undefined || toothed !== undefined;
  if (isSquare && isRound) {
    const path = diameterMm === undefined ? 'toothed' : 'diameterMm';
    throw refuse(
      path,
      'a reading of a round bore beside one of a square bore',
      'readings of one bore, square or round',
    );
  }
  if (!isSquare && !isRound) throw refuse('', 'nothing', 'at least one reading');
  const { assumedUncertainty } = identificationData.bore;
  if (isRound) {
    return {
      round: {
        ...(diameterMm === undefined ? {} : { diameter: readingOf(diameterMm, assumedUncertainty.diameterMm.value) }),
        ...(toothed === undefined ? {} : { toothed }),
      },
      assumed: typeof diameterMm === 'number',
    };
  }
  const given = [...flats.flatMap((flat) => [flat.acrossFlatsMm, flat.atMm]), boreLengthMm];
  return {
    square: {
      flats: flats.map((flat) => {
        const at = readingOf(flat.atMm, assumedUncertainty.planeMm.value);
        return {
          acrossFlats: readingOf(flat.acrossFlatsMm, assumedUncertainty.acrossFlatsMm.value),
          // The bore narrows outward, and the hypotheses grow with their plane.
          at: { ...at, value: -at.value },
        };
      }),
      ...(boreLengthMm === undefined
        ? {}
        : { flatLength: readingOf(boreLengthMm, assumedUncertainty.boreLengthMm.value) }),
    },
    assumed: given.some((value) => typeof value === 'number'),
  };
}

const refuse = (path: string, received: string, allowed: string): DomainError =>
  new DomainError('identifyBore', [{ path, received, allowed }]);
