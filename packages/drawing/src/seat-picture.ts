import { checkInput, type FieldSpec, type FieldSpecs, type Measurand } from '@spindlewright/quantity';
import { type Labels, labelFields } from './labels.ts';

/** Shape of the spindle's square taper, as far as a picture needs it. */
export interface PictureSpindle {
  /** Across flats at the end face, extrapolated over the chamfer, mm, above 0 to 60. */
  acrossFlatsAtEndMm: Measurand;
  /** Angle of a flat against the axis, deg, 0.1 to 15. */
  faceAngleDeg: Measurand;
  /** Length of the flats from the end face, mm, above 0 to 100. */
  flatLengthMm: Measurand;
  /** Length of the end chamfer, mm, 0 to 50. */
  endChamferMm?: Measurand;
  /** Distance of the shoulder from the end face, mm, above 0 to 200. */
  shoulderFromEndMm?: Measurand;
  /** Twice the radius of the turned corners, mm, above 0 to 80. */
  cornerDiameterMm?: Measurand;
}

/** Shape of the arm's square bore, as far as a picture needs it. */
export interface PictureArm {
  /** Across flats at the inner mouth, extrapolated over the mouth chamfer, mm, above 0 to 60. */
  acrossFlatsAtMouthMm: Measurand;
  /** Angle of a flat against the axis, deg, 0.1 to 15. */
  faceAngleDeg: Measurand;
  /** Length of the square bore, mm, above 0 to 100. */
  boreLengthMm: Measurand;
  /** Distance of the bolt's seat from the mouth, mm, above 0 to 100; the bore length when left out. */
  boltSeatFromMouthMm?: Measurand;
  /** How far washer or head reach into the bore, mm, 0 to 50. */
  seatIntrusionMm?: Measurand;
  /** Length of the chamfer at the mouth, mm, 0 to 50. */
  mouthChamferMm?: Measurand;
  /** Diameter of the boss around the bore, mm, above 0 to 200. */
  bossDiameterMm?: Measurand;
  /** Radius in the corners of the bore, mm, 0 to 50; it does not show in a section through the flats. */
  boreCornerRadiusMm?: Measurand;
}

/** A place of the arm on the spindle; `null` or left out = not known. */
export interface PictureSeat {
  /** Distance of the arm's inner face from the spindle's end face, mm, -20000 to 20000. */
  mouthFromEndMm?: Measurand | null;
  /** Bolt seat to spindle end, mm, -20000 to 20000; negative = would have to pass it. */
  endGapMm?: Measurand | null;
  /** Arm to shoulder or run-out, mm, -20000 to 20000; negative = would have to pass it. */
  shoulderGapMm?: Measurand | null;
  /** Length of taper in contact, mm, -20000 to 20000. */
  engagedLengthMm?: Measurand | null;
}

/** What {@link drawSeat} draws. */
export interface SeatPicture {
  /** Shape of the spindle; left out = drawn as a stand-in and said so. */
  spindle?: PictureSpindle;
  /** Shape of the arm; left out = drawn as a stand-in and said so. */
  arm?: PictureArm;
  /** Place of the arm pushed on by hand. */
  handFit: PictureSeat;
  /** Place of the arm when pressed, as predicted if nothing were in the way. */
  pressed: PictureSeat;
  /** Verdict: one of the known ids, worded through `labels`, or any text. */
  verdict?: string;
  /** Title of the picture; a general one when left out. */
  caption?: string;
  /** Prefix of all ids; derived from the content when left out. */
  idPrefix?: string;
  /** Natural width, px, 320 to 2000; 360 when left out. Parts stand side by side from 600 on. */
  widthPx?: number;
  /** Words that replace the English ones. */
  labels?: Labels;
}

const size = (max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', above: 0, max });
const extra: FieldSpec = { type: 'measurand', unit: 'mm', min: 0, max: 50, optional: true };
const optional = (spec: FieldSpec): FieldSpec => ({ ...spec, optional: true });
const faceAngle: FieldSpec = { type: 'measurand', unit: 'deg', min: 0.1, max: 15 };
// As wide as a prediction can come out: across flats that differ by 60 mm at a tenth of a degree.
const place: FieldSpec = { type: 'measurand', unit: 'mm', min: -20000, max: 20000, optional: true };

const SEAT: FieldSpec = {
  type: 'object',
  fields: { mouthFromEndMm: place, endGapMm: place, shoulderGapMm: place, engagedLengthMm: place },
};

const fields = (): FieldSpecs => ({
  spindle: {
    type: 'object',
    optional: true,
    fields: {
      acrossFlatsAtEndMm: size(60),
      faceAngleDeg: faceAngle,
      flatLengthMm: size(100),
      endChamferMm: extra,
      shoulderFromEndMm: optional(size(200)),
      cornerDiameterMm: optional(size(80)),
    },
  },
  arm: {
    type: 'object',
    optional: true,
    fields: {
      acrossFlatsAtMouthMm: size(60),
      faceAngleDeg: faceAngle,
      boreLengthMm: size(100),
      boltSeatFromMouthMm: optional(size(100)),
      seatIntrusionMm: extra,
      mouthChamferMm: extra,
      bossDiameterMm: optional(size(200)),
      boreCornerRadiusMm: extra,
    },
  },
  handFit: SEAT,
  pressed: SEAT,
  verdict: { type: 'text', optional: true },
  caption: { type: 'text', optional: true },
  idPrefix: { type: 'text', optional: true },
  widthPx: { type: 'number', optional: true, unit: 'px', min: 320, max: 2000 },
  labels: labelFields(),
});

/** Refuses a picture that is not as described; unknown seats may be `null`. @internal */
export function checkSeatPicture(where: string, picture: SeatPicture): void {
  checkInput({ where, value: withoutNullPlaces(picture), fields: fields() });
}

function withoutNullPlaces(picture: unknown): unknown {
  if (typeof picture !== 'object' || picture === null) return picture;
  const copy: Record<string, unknown> = { ...picture };
  for (const key of ['handFit', 'pressed']) {
    const seat = copy[key];
    if (typeof seat !== 'object' || seat === null || Array.isArray(seat)) continue;
    copy[key] = Object.fromEntries(Object.entries(seat).filter(([, value]) => value !== null));
  }
  return copy;
}
