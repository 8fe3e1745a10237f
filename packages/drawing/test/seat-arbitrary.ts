import fc from 'fast-check';
import type { SeatPicture } from '../src/seat-picture.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A number, limits or a reading with uncertainty, all of it inside the range. */
const measurand = (min: number, max: number) =>
  fc.oneof(
    double(min, max),
    fc.tuple(double(min, max), double(min, max), double(min, max)).map((three) => {
      const [lower = 0, nominal = 0, upper = 0] = three.sort((a, b) => a - b);
      return { lower, nominal, upper };
    }),
    fc
      .tuple(double(min, max), double(0, 0.33))
      .map(([value, part]) => ({ value, standardUncertainty: part * Math.min(value - min, max - value) }))
      .filter(({ value, standardUncertainty: u }) => value - 3 * u >= min && value + 3 * u <= max),
  );

const spindle = fc.record(
  {
    acrossFlatsAtEndMm: measurand(0.001, 60),
    faceAngleDeg: measurand(0.1, 15),
    flatLengthMm: measurand(0.001, 100),
    endChamferMm: measurand(0, 50),
    shoulderFromEndMm: measurand(0.001, 200),
    cornerDiameterMm: measurand(0.001, 80),
  },
  { requiredKeys: ['acrossFlatsAtEndMm', 'faceAngleDeg', 'flatLengthMm'] },
);

const arm = fc.record(
  {
    acrossFlatsAtMouthMm: measurand(0.001, 60),
    faceAngleDeg: measurand(0.1, 15),
    boreLengthMm: measurand(0.001, 100),
    boltSeatFromMouthMm: measurand(0.001, 100),
    seatIntrusionMm: measurand(0, 50),
    mouthChamferMm: measurand(0, 50),
    bossDiameterMm: measurand(0.001, 200),
    boreCornerRadiusMm: measurand(0, 50),
  },
  { requiredKeys: ['acrossFlatsAtMouthMm', 'faceAngleDeg', 'boreLengthMm'] },
);

const place = fc.oneof(fc.constant(null), measurand(-20000, 20000), measurand(-1, 4), measurand(-1, 4));
const seat = fc.record(
  { mouthFromEndMm: place, endGapMm: place, shoulderGapMm: place, engagedLengthMm: place },
  { requiredKeys: [] },
);

/** Any input that drawSeat accepts, absurd fits included. */
export const seatPicture: fc.Arbitrary<SeatPicture> = fc.record(
  {
    spindle,
    arm,
    handFit: seat,
    pressed: seat,
    verdict: fc.oneof(fc.constantFrom('seats', 'bottoms-on-end'), fc.string()),
    caption: fc.string({ unit: 'binary' }),
    widthPx: double(320, 2000),
  },
  { requiredKeys: ['handFit', 'pressed'] },
);
