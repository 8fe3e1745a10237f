import { checkInput, type FieldSpec, hardLimits, type Measurand } from '@spindlewright/quantity';
import { frameFields, type PictureFrame } from './frame.ts';
import { decimalsFor, type Wording, wordingOf } from './labels.ts';

/** One end of the spindle, as found. */
export interface PictureSide {
  /** What it is, in a few words, such as `the joint is sound`. */
  words: string;
  /** `good` beside a tick, `bad` beside a cross, `open` beside a question mark. */
  state: 'good' | 'bad' | 'open';
  /** From the bolt's seat to the spindle end, mm; `null` or left out where it was not measured. */
  endGapMm?: Measurand | null;
  /** From the arm to the shoulder, mm; `null` or left out where it was not measured. */
  shoulderGapMm?: Measurand | null;
  /** Free rotation of the arm, deg. */
  playAngleDeg?: Measurand;
}

/** What {@link drawSides} draws. */
export interface SidesPicture extends PictureFrame {
  /** The end with the chainrings. */
  drive: PictureSide;
  /** The other end. */
  nonDrive: PictureSide;
}

const gap: FieldSpec = { type: 'measurand', unit: 'mm', min: -100, max: 100, optional: true };

const side: FieldSpec = {
  type: 'object',
  fields: {
    words: { type: 'text' },
    state: { type: 'choice', values: ['good', 'bad', 'open'] },
    endGapMm: gap,
    shoulderGapMm: gap,
    playAngleDeg: { type: 'measurand', unit: 'deg', min: 0, max: 90, optional: true },
  },
};

// A clearance that was not measured may be null, which no field description knows.
const withoutNulls = (picture: PictureSide | undefined): unknown =>
  typeof picture === 'object' && picture !== null
    ? Object.fromEntries(
        Object.entries(picture).filter(([key, value]) => !(value === null && /^(end|shoulder)GapMm$/.test(key))),
      )
    : picture;

/** Refuses a picture that is not as described. @internal */
export function checkSides(where: string, picture: SidesPicture): void {
  const given = typeof picture === 'object' && picture !== null;
  checkInput({
    where,
    value: given
      ? { ...picture, drive: withoutNulls(picture.drive), nonDrive: withoutNulls(picture.nonDrive) }
      : picture,
    fields: { drive: side, nonDrive: side, ...frameFields() },
  });
}

/**
 * Says in words what {@link drawSides} shows: both ends of a spindle with what they are, their clearances and their play.
 *
 * @remarks
 * Formula: none; the numbers given, bounds rounded outward.
 *
 * Validity: as for drawSides; a clearance that was not measured is said to be so.
 *
 * Accuracy: tenths of a millimetre where limits are 0.15 mm apart or more, else hundredths; tenths of a degree.
 *
 * @param picture - The same input as for drawSides.
 * @returns Sentences, in the language of `labels` (English without).
 * @throws {@link DomainError} as drawSides does.
 * @example
 * ```ts
 * import { describeSides } from '@spindlewright/drawing';
 * describeSides({
 *   drive: { words: 'the joint is sound', state: 'good', endGapMm: 2 },
 *   nonDrive: { words: 'the hole is deformed', state: 'bad' },
 * });
 * // => 'Non-drive side: the hole is deformed. End gap not measured, shoulder gap not measured. Drive side: the joint is sound. End gap 2.00 mm, shoulder gap not measured.'
 * ```
 * @see W3C, SVG 2 (candidate recommendation, 2018), clause 5.8: `title` and `desc`.
 */
export function describeSides(picture: SidesPicture): string {
  checkSides('describeSides', picture);
  const wording = wordingOf(picture.labels);
  return [
    sideSentence('side-non-drive', picture.nonDrive, wording),
    sideSentence('side-drive', picture.drive, wording),
  ].join(' ');
}

function sideSentence(key: 'side-drive' | 'side-non-drive', picture: PictureSide, wording: Wording): string {
  const play = playOf(picture, wording);
  return wording.say('say-side', {
    side: wording.say(key),
    words: picture.words,
    endGap: gapWords(picture.endGapMm, wording),
    shoulderGap: gapWords(picture.shoulderGapMm, wording),
    play: play === '' ? '' : `, ${play}`,
  });
}

/** A clearance in words. @internal */
export function gapWords(value: Measurand | null | undefined, wording: Wording): string {
  if (value === null || value === undefined) return wording.say('not-measured');
  const limits = hardLimits(value);
  const decimals = decimalsFor(limits);
  const nominal = wording.say('unit-mm', { value: wording.number(limits.nominal, decimals) });
  return limits.lower === limits.upper
    ? nominal
    : wording.say('say-value', {
        value: nominal,
        limits: wording.say('limits-range', wording.bounds(limits, decimals)),
      });
}

/** The free rotation in words, or nothing. @internal */
export function playOf({ playAngleDeg }: PictureSide, wording: Wording): string {
  if (playAngleDeg === undefined) return '';
  const value = wording.number(hardLimits(playAngleDeg).nominal, 1);
  return wording.say('side-play', { value: wording.say('unit-degree', { value }) });
}
