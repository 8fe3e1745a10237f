import { checkInput, type FieldSpecs, hardLimits, type Measurand } from '@spindlewright/quantity';
import { frameFields, type PictureFrame } from './frame.ts';
import { type Wording, wordingOf } from './labels.ts';

/** A force to compare the preload with, such as a proof load. */
export interface PreloadMark {
  /** What the force is. */
  label: string;
  /** The force, N, 0 to 1e9. */
  forceN: number;
}

/** What {@link drawPreloadRange} draws. */
export interface PreloadRangePicture extends PictureFrame {
  /** Preload to be expected with its limits, N, 0 to 1e9. */
  preloadN: Measurand;
  /** Forces to compare it with. */
  marks?: readonly PreloadMark[];
}

const fields = (): FieldSpecs => ({
  preloadN: { type: 'measurand', unit: 'N', min: 0, max: 1e9 },
  marks: {
    type: 'list',
    optional: true,
    item: {
      type: 'object',
      fields: { label: { type: 'text' }, forceN: { type: 'number', unit: 'N', min: 0, max: 1e9 } },
    },
  },
  ...frameFields(),
});

/** Refuses a picture that is not as described. @internal */
export const checkPreloadRange = (where: string, picture: PreloadRangePicture): void =>
  checkInput({ where, value: picture, fields: fields() });

/**
 * Says in words what {@link drawPreloadRange} shows: the preload with its limits, and how each mark lies to them.
 *
 * @remarks
 * Formula: none; a mark on a limit counts as inside.
 *
 * Validity: as for drawPreloadRange.
 *
 * Accuracy: tenths of a kilonewton from 2 kN on, else whole newtons; limits rounded outward.
 *
 * @param picture - The same input as for drawPreloadRange.
 * @returns Sentences, in the language of `labels` (English without).
 * @throws {@link DomainError} as drawPreloadRange does.
 * @example
 * ```ts
 * import { describePreloadRange } from '@spindlewright/drawing';
 * describePreloadRange({
 *   preloadN: { lower: 9840, nominal: 14200, upper: 21030 },
 *   marks: [{ label: 'proof load', forceN: 21200 }],
 * }); // => 'Preload 14.2 kN, limits 9.8 to 21.1. proof load 21.2 kN: above the range.'
 * ```
 * @see W3C, SVG 2 (candidate recommendation, 2018), clause 5.8: `title` and `desc`.
 */
export function describePreloadRange(picture: PreloadRangePicture): string {
  checkPreloadRange('describePreloadRange', picture);
  const wording = wordingOf(picture.labels);
  const marks = (picture.marks ?? []).map((mark) => markWords(picture, mark, wording));
  return [preloadWords(picture, wording), ...marks].map((sentence) => `${sentence}.`).join(' ');
}

/** Whether forces are said in kilonewtons. @internal */
export const inKilonewtons = (picture: PreloadRangePicture): boolean => hardLimits(picture.preloadN).upper >= 2000;

/** A force in the unit of the picture. */
const forceWords = (picture: PreloadRangePicture, forceN: number, wording: Wording): string =>
  inKilonewtons(picture)
    ? wording.say('unit-kn', { value: wording.number(forceN / 1000, 1) })
    : wording.say('unit-n', { value: wording.number(forceN, 0) });

/** The preload with its limits. @internal */
export function preloadWords(picture: PreloadRangePicture, wording: Wording): string {
  const { lower, nominal, upper } = hardLimits(picture.preloadN);
  const [unit, decimals] = inKilonewtons(picture) ? [1000, 1] : [1, 0];
  const scaled = { lower: lower / unit, nominal: nominal / unit, upper: upper / unit };
  return wording.say('preload-value', {
    value: forceWords(picture, nominal, wording),
    limits: lower === upper ? wording.say('no-limits') : wording.say('limits-range', wording.bounds(scaled, decimals)),
  });
}

/** A mark, and on which side of the range it lies. @internal */
export function markWords(picture: PreloadRangePicture, { label, forceN }: PreloadMark, wording: Wording): string {
  const { lower, upper } = hardLimits(picture.preloadN);
  const key = forceN > upper ? 'mark-above' : forceN < lower ? 'mark-below' : 'mark-inside';
  return wording.say(key, { label, value: forceWords(picture, forceN, wording) });
}
