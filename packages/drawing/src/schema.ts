import type { Measurand } from '@spindlewright/quantity';
import { z } from 'zod/v4';
import type { LabelKey, Labels } from './labels.ts';
import { messages } from './messages/en.ts';
import type { PictureArm, PictureSeat, PictureSpindle, SeatPicture } from './seat-picture.ts';

/** A number, limits or a reading with standard uncertainty, all inside a range; its bounds (3 u) are checked in the core. */
const measurandWithin = (min: number, max: number): z.ZodType<Measurand> => {
  const number = z.number().min(min).max(max);
  return z.union([
    number,
    z
      .strictObject({ lower: number, nominal: number, upper: number })
      .refine((value) => value.lower <= value.nominal && value.nominal <= value.upper, {
        message: 'lower <= nominal <= upper',
      }),
    z.strictObject({ value: number, standardUncertainty: z.number().min(0) }),
  ]);
};

const faceAngle = measurandWithin(Number.MIN_VALUE, 15);

/** Schema of the words that replace the English ones. */
export const labelsSchema: z.ZodType<Labels> = z.strictObject(
  Object.fromEntries((Object.keys(messages) as LabelKey[]).map((key) => [key, z.string().exactOptional()])),
) as z.ZodType<Labels>;

/** Schema of {@link PictureSpindle}. */
export const pictureSpindleSchema: z.ZodType<PictureSpindle> = z.strictObject({
  acrossFlatsAtEndMm: measurandWithin(5, 40),
  faceAngleDeg: faceAngle,
  flatLengthMm: measurandWithin(2, 80),
  endChamferMm: measurandWithin(0, 10).exactOptional(),
  shoulderFromEndMm: measurandWithin(2, 100).exactOptional(),
  cornerDiameterMm: measurandWithin(5, 60).exactOptional(),
});

/** Schema of {@link PictureArm}. */
export const pictureArmSchema: z.ZodType<PictureArm> = z.strictObject({
  acrossFlatsAtMouthMm: measurandWithin(5, 40),
  faceAngleDeg: faceAngle,
  boreLengthMm: measurandWithin(2, 80),
  boltSeatFromMouthMm: measurandWithin(2, 100).exactOptional(),
  seatIntrusionMm: measurandWithin(0, 10).exactOptional(),
  mouthChamferMm: measurandWithin(0, 10).exactOptional(),
  bossDiameterMm: measurandWithin(8, 120).exactOptional(),
  boreCornerRadiusMm: measurandWithin(0, 10).exactOptional(),
});

const place = measurandWithin(-100, 100).nullable().exactOptional();

/** Schema of {@link PictureSeat}. */
export const pictureSeatSchema: z.ZodType<PictureSeat> = z.strictObject({
  mouthFromEndMm: place,
  endGapMm: place,
  shoulderGapMm: place,
  engagedLengthMm: place,
});

const common = {
  idPrefix: z
    .string()
    .regex(/^[A-Za-z][\w-]{0,63}$/)
    .exactOptional(),
  widthPx: z.number().min(320).max(2000).exactOptional(),
  labels: labelsSchema.exactOptional(),
};

/** Schema of {@link SeatPicture}. */
export const seatPictureSchema: z.ZodType<SeatPicture> = z.strictObject({
  spindle: pictureSpindleSchema.exactOptional(),
  arm: pictureArmSchema.exactOptional(),
  handFit: pictureSeatSchema,
  pressed: pictureSeatSchema,
  verdict: z.string().exactOptional(),
  caption: z.string().exactOptional(),
  ...common,
});
