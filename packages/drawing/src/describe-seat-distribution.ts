import { checkInput, DomainError, type FieldSpec, hardLimits, type Measurand } from '@spindlewright/quantity';
import { frameFields, type PictureFrame } from './frame.ts';
import { type Wording, wordingOf } from './labels.ts';

/** One clearance of a seat as samples, beside the worst case. */
export interface GapSamples {
  /** The clearance in each sample, mm, -20000 to 20000; below 0 the arm is stopped before it is pressed. */
  samplesMm: readonly number[];
  /** Its worst-case limits, mm. */
  limitsMm?: Measurand;
}

/** What {@link drawSeatDistribution} draws; at least one of the two clearances. */
export interface SeatDistributionPicture extends PictureFrame {
  /** From the bolt's seat to the spindle end. */
  endGap?: GapSamples;
  /** From the arm to the shoulder or run-out. */
  shoulderGap?: GapSamples;
  /** Room that each clearance is wanted to keep, mm, 0 to 10; 0.5 when absent. */
  roomMm?: number;
}

/** Room to keep when none is named, mm: what the verdict of a seat asks for (judgement). */
const DEFAULT_ROOM_MM = 0.5;

const gap: FieldSpec = {
  type: 'object',
  optional: true,
  fields: {
    samplesMm: { type: 'list', minLength: 1, item: { type: 'number', unit: 'mm', min: -20_000, max: 20_000 } },
    limitsMm: { type: 'measurand', unit: 'mm', min: -20_000, max: 20_000, optional: true },
  },
};

/** Refuses a picture that is not as described. @internal */
export function checkSeatDistribution(where: string, picture: SeatDistributionPicture): void {
  checkInput({
    where,
    value: picture,
    fields: {
      endGap: gap,
      shoulderGap: gap,
      roomMm: { type: 'number', unit: 'mm', min: 0, max: 10, optional: true },
      ...frameFields(),
    },
  });
  if (picture.endGap !== undefined || picture.shoulderGap !== undefined) return;
  throw new DomainError(where, [
    { path: 'endGap', received: 'nothing', allowed: 'samples of endGap, shoulderGap or both' },
  ]);
}

/**
 * Says in words what {@link drawSeatDistribution} shows: where each clearance lies, and how often it is gone or thin.
 *
 * @remarks
 * Formula: order statistics of the samples: the middle one, those below which 5 and 95 in 100 lie; shares counted.
 *
 * Validity: as for drawSeatDistribution.
 *
 * Accuracy: tenths of a millimetre; shares are whole per cent and never claim certainty.
 *
 * @param picture - The same input as for drawSeatDistribution.
 * @returns Sentences, in the language of `labels` (English without).
 * @throws {@link DomainError} as drawSeatDistribution does.
 * @example
 * ```ts
 * import { describeSeatDistribution } from '@spindlewright/drawing';
 * describeSeatDistribution({ endGap: { samplesMm: [-0.2, 0.4, 0.8, 1.2, 1.6] } });
 * // => 'End gap: middle 0.8 mm, nine of ten from −0.2 to 1.6 mm; gone in 20 %, thinner than 0.5 mm in 40 %.'
 * ```
 * @see W3C, SVG 2 (candidate recommendation, 2018), clause 5.8: `title` and `desc`.
 */
export function describeSeatDistribution(picture: SeatDistributionPicture): string {
  checkSeatDistribution('describeSeatDistribution', picture);
  const wording = wordingOf(picture.labels);
  return gapsOf(picture)
    .map(({ key, gap: samples }) => gapSentence(key, samples, roomOf(picture), wording))
    .join(' ');
}

/** The clearances that there are, in the order in which they are drawn. @internal */
export const gapsOf = ({ endGap, shoulderGap }: SeatDistributionPicture) => [
  ...(endGap === undefined ? [] : [{ key: 'end-gap' as const, gap: endGap }]),
  ...(shoulderGap === undefined ? [] : [{ key: 'shoulder-gap' as const, gap: shoulderGap }]),
];

/** Room to keep. @internal */
export const roomOf = ({ roomMm }: SeatDistributionPicture): number => roomMm ?? DEFAULT_ROOM_MM;

/** One clearance in a sentence. @internal */
export function gapSentence(
  key: 'end-gap' | 'shoulder-gap',
  { samplesMm, limitsMm }: GapSamples,
  roomMm: number,
  wording: Wording,
): string {
  const sorted = [...samplesMm].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  const below = (mm: number): string => shareOf(sorted.filter((value) => value < mm).length, sorted.length, wording);
  const limits = limitsMm === undefined ? undefined : hardLimits(limitsMm);
  const said = wording.say('spread-gap', {
    gap: wording.say(key),
    middle: wording.number(at(0.5), 1),
    lower: wording.number(Math.floor(at(0.05) * 10 + 1e-9) / 10, 1),
    upper: wording.number(Math.ceil(at(0.95) * 10 - 1e-9) / 10, 1),
    gone: below(0),
    room: wording.number(roomMm, 1),
    thin: below(roomMm),
  });
  return limits === undefined ? said : `${said} ${wording.say('spread-limits', wording.bounds(limits, 1))}`;
}

/** None of a few samples says less than none of many, so that such a share comes with their number. */
function shareOf(count: number, samples: number, wording: Wording): string {
  if (count === 0) return wording.say('spread-none', { samples: wording.number(samples, 0) });
  if (count === samples) return wording.say('spread-all', { samples: wording.number(samples, 0) });
  const rounded = Math.round((count / samples) * 100);
  if (rounded < 1) return wording.say('percent-under', { value: '1' });
  if (rounded > 99) return wording.say('percent-over', { value: '99' });
  return wording.say('unit-percent', { value: wording.number(rounded, 0) });
}
