import { checkInput, type FieldSpec, type FieldSpecs, type Measurand } from '@spindlewright/quantity';
import { type Labels, labelFields } from './labels.ts';

/** Shape of the spindle's square taper, as far as a picture needs it. */
export interface PictureSpindle {
  /** Across flats at the end face, extrapolated over the chamfer, mm, 5 to 40. */
  acrossFlatsAtEndMm: Measurand;
  /** Angle of a flat against the axis, deg, above 0 to 15. */
  faceAngleDeg: Measurand;
  /** Length of the flats from the end face, mm, 2 to 80. */
  flatLengthMm: Measurand;
  /** Length of the end chamfer, mm, 0 to 10. */
  endChamferMm?: Measurand;
  /** Distance of the shoulder from the end face, mm, 2 to 100. */
  shoulderFromEndMm?: Measurand;
  /** Twice the radius of the turned corners, mm, 5 to 60. */
  cornerDiameterMm?: Measurand;
}

/** Shape of the arm's square bore, as far as a picture needs it. */
export interface PictureArm {
  /** Across flats at the inner mouth, extrapolated over the mouth chamfer, mm, 5 to 40. */
  acrossFlatsAtMouthMm: Measurand;
  /** Angle of a flat against the axis, deg, above 0 to 15. */
  faceAngleDeg: Measurand;
  /** Length of the square bore, mm, 2 to 80. */
  boreLengthMm: Measurand;
  /** Distance of the bolt's seat from the mouth, mm, 2 to 100; the bore length when left out. */
  boltSeatFromMouthMm?: Measurand;
  /** How far washer or head reach into the bore, mm, 0 to 10. */
  seatIntrusionMm?: Measurand;
  /** Length of the chamfer at the mouth, mm, 0 to 10. */
  mouthChamferMm?: Measurand;
  /** Diameter of the boss around the bore, mm, 8 to 120. */
  bossDiameterMm?: Measurand;
  /** Radius in the corners of the bore, mm, 0 to 10; it does not show in a section through the flats. */
  boreCornerRadiusMm?: Measurand;
}

/** A place of the arm on the spindle; `null` or left out = not known. */
export interface PictureSeat {
  /** Distance of the arm's inner face from the spindle's end face, mm, -100 to 100. */
  mouthFromEndMm?: Measurand | null;
  /** Bolt seat to spindle end, mm, -100 to 100; negative = would have to pass it. */
  endGapMm?: Measurand | null;
  /** Arm to shoulder or run-out, mm, -100 to 100; negative = would have to pass it. */
  shoulderGapMm?: Measurand | null;
  /** Length of taper in contact, mm, -100 to 100. */
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

const lengthFrom = (min: number, max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', min, max });
const optional = (spec: FieldSpec): FieldSpec => ({ ...spec, optional: true });
const faceAngle: FieldSpec = { type: 'measurand', unit: 'deg', above: 0, max: 15 };
const place = optional(lengthFrom(-100, 100));

const SEAT: FieldSpec = {
  type: 'object',
  fields: { mouthFromEndMm: place, endGapMm: place, shoulderGapMm: place, engagedLengthMm: place },
};

const fields = (): FieldSpecs => ({
  spindle: {
    type: 'object',
    optional: true,
    fields: {
      acrossFlatsAtEndMm: lengthFrom(5, 40),
      faceAngleDeg: faceAngle,
      flatLengthMm: lengthFrom(2, 80),
      endChamferMm: optional(lengthFrom(0, 10)),
      shoulderFromEndMm: optional(lengthFrom(2, 100)),
      cornerDiameterMm: optional(lengthFrom(5, 60)),
    },
  },
  arm: {
    type: 'object',
    optional: true,
    fields: {
      acrossFlatsAtMouthMm: lengthFrom(5, 40),
      faceAngleDeg: faceAngle,
      boreLengthMm: lengthFrom(2, 80),
      boltSeatFromMouthMm: optional(lengthFrom(2, 100)),
      seatIntrusionMm: optional(lengthFrom(0, 10)),
      mouthChamferMm: optional(lengthFrom(0, 10)),
      bossDiameterMm: optional(lengthFrom(8, 120)),
      boreCornerRadiusMm: optional(lengthFrom(0, 10)),
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
