import type { Measurand } from '@spindlewright/quantity';
import { z } from 'zod/v4';
import type { BorePlayPicture } from './describe-bore-play.ts';
import type { DiagnosisPicture } from './describe-diagnosis.ts';
import type { PreloadRangePicture } from './describe-preload-range.ts';
import type { GapSamples, SeatDistributionPicture } from './describe-seat-distribution.ts';
import type { PictureSide, SidesPicture } from './describe-sides.ts';
import type { LabelKey, Labels } from './labels.ts';
import { messages } from './messages/en.ts';
import type { PictureArm, PictureSeat, PictureSpindle, SeatPicture } from './seat-picture.ts';

/** A number, limits or a reading with standard uncertainty, all inside a range; its bounds (3 u) are checked in the core. */
const measurandOf = (number: z.ZodType<number>): z.ZodType<Measurand> =>
  z.union([
    number,
    z
      .strictObject({ lower: number, nominal: number, upper: number })
      .refine((value) => value.lower <= value.nominal && value.nominal <= value.upper, {
        message: 'lower <= nominal <= upper',
      }),
    z.strictObject({ value: number, standardUncertainty: z.number().min(0) }),
  ]);
const size = (max: number): z.ZodType<Measurand> => measurandOf(z.number().gt(0).max(max));
const extra = measurandOf(z.number().min(0).max(50)).exactOptional();

const faceAngle = measurandOf(z.number().min(0.1).max(15));

/** Schema of the words that replace the English ones. */
export const labelsSchema: z.ZodType<Labels> = z.strictObject(
  Object.fromEntries((Object.keys(messages) as LabelKey[]).map((key) => [key, z.string().exactOptional()])),
) as z.ZodType<Labels>;

/** Schema of {@link PictureSpindle}. */
export const pictureSpindleSchema: z.ZodType<PictureSpindle> = z.strictObject({
  acrossFlatsAtEndMm: size(60),
  faceAngleDeg: faceAngle,
  flatLengthMm: size(100),
  endChamferMm: extra,
  shoulderFromEndMm: size(200).exactOptional(),
  cornerDiameterMm: size(80).exactOptional(),
});

/** Schema of {@link PictureArm}. */
export const pictureArmSchema: z.ZodType<PictureArm> = z.strictObject({
  acrossFlatsAtMouthMm: size(60),
  faceAngleDeg: faceAngle,
  boreLengthMm: size(100),
  boltSeatFromMouthMm: size(100).exactOptional(),
  seatIntrusionMm: extra,
  mouthChamferMm: extra,
  bossDiameterMm: size(200).exactOptional(),
  boreCornerRadiusMm: extra,
});

const place = measurandOf(z.number().min(-20000).max(20000)).nullable().exactOptional();

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

const frame = { title: z.string().exactOptional(), ...common };

/** Schema of {@link PreloadRangePicture}. */
export const preloadRangePictureSchema: z.ZodType<PreloadRangePicture> = z.strictObject({
  preloadN: measurandOf(z.number().min(0).max(1e9)),
  marks: z.array(z.strictObject({ label: z.string(), forceN: z.number().min(0).max(1e9) })).exactOptional(),
  ...frame,
});

/** Schema of {@link DiagnosisPicture}. */
export const diagnosisPictureSchema: z.ZodType<DiagnosisPicture> = z.strictObject({
  conditions: z.array(z.strictObject({ label: z.string(), probability: z.number().min(0).max(1) })).min(1),
  ...frame,
});

/** Schema of {@link BorePlayPicture}. */
export const borePlayPictureSchema: z.ZodType<BorePlayPicture> = z
  .strictObject({
    halfWidthMm: z.number().gt(0).max(30),
    flatWidthMm: z.number().gt(0).max(60),
    clearanceMm: z.number().min(0).max(10),
    rotationDeg: z.number().min(0).max(90).nullable(),
    ...frame,
  })
  .refine((picture) => picture.flatWidthMm <= 2 * picture.halfWidthMm, {
    message: 'flatWidthMm is at most twice halfWidthMm',
  });

const gapSamples: z.ZodType<GapSamples> = z.strictObject({
  samplesMm: z.array(z.number().min(-20000).max(20000)).min(1),
  limitsMm: measurandOf(z.number().min(-20000).max(20000)).exactOptional(),
});

/** Schema of {@link SeatDistributionPicture}. */
export const seatDistributionPictureSchema: z.ZodType<SeatDistributionPicture> = z
  .strictObject({
    endGap: gapSamples.exactOptional(),
    shoulderGap: gapSamples.exactOptional(),
    roomMm: z.number().min(0).max(10).exactOptional(),
    ...frame,
  })
  .refine(({ endGap, shoulderGap }) => endGap !== undefined || shoulderGap !== undefined, {
    message: 'endGap, shoulderGap or both',
  });

const sideGap = measurandOf(z.number().min(-100).max(100)).nullable().exactOptional();

/** Schema of {@link PictureSide}. */
export const pictureSideSchema: z.ZodType<PictureSide> = z.strictObject({
  words: z.string(),
  state: z.enum(['good', 'bad', 'open']),
  endGapMm: sideGap,
  shoulderGapMm: sideGap,
  playAngleDeg: measurandOf(z.number().min(0).max(90)).exactOptional(),
});

/** Schema of {@link SidesPicture}. */
export const sidesPictureSchema: z.ZodType<SidesPicture> = z.strictObject({
  drive: pictureSideSchema,
  nonDrive: pictureSideSchema,
  ...frame,
});
