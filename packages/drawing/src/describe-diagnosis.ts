import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import { frameFields, type PictureFrame } from './frame.ts';
import { type Wording, wordingOf } from './labels.ts';

/** A condition and how probable it is. */
export interface DiagnosisCondition {
  /** Name of the condition. */
  label: string;
  /** Probability, 0 to 1. */
  probability: number;
}

/** What {@link drawDiagnosis} draws. */
export interface DiagnosisPicture extends PictureFrame {
  /** Conditions in the order in which they are drawn, at least one; they need not add up to 1. */
  conditions: readonly DiagnosisCondition[];
}

const fields = (): FieldSpecs => ({
  conditions: {
    type: 'list',
    minLength: 1,
    item: {
      type: 'object',
      fields: { label: { type: 'text' }, probability: { type: 'number', unit: '1', min: 0, max: 1 } },
    },
  },
  ...frameFields(),
});

/** Refuses a picture that is not as described. @internal */
export const checkDiagnosis = (where: string, picture: DiagnosisPicture): void =>
  checkInput({ where, value: picture, fields: fields() });

/**
 * Says in words what {@link drawDiagnosis} shows: each condition with its probability.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: as for drawDiagnosis. Nothing is called certain: below 1 % and above 99 % the words say under and over.
 *
 * Accuracy: whole per cent.
 *
 * @param picture - The same input as for drawDiagnosis.
 * @returns Sentences, in the language of `labels` (English without).
 * @throws {@link DomainError} as drawDiagnosis does.
 * @example
 * ```ts
 * import { describeDiagnosis } from '@spindlewright/drawing';
 * describeDiagnosis({
 *   conditions: [
 *     { label: 'Bore deformed', probability: 0.83 },
 *     { label: 'Arm cracked', probability: 0.004 },
 *   ],
 * }); // => 'Bore deformed: 83 %. Arm cracked: under 1 %.'
 * ```
 * @see W3C, SVG 2 (candidate recommendation, 2018), clause 5.8: `title` and `desc`.
 */
export function describeDiagnosis(picture: DiagnosisPicture): string {
  checkDiagnosis('describeDiagnosis', picture);
  const wording = wordingOf(picture.labels);
  return picture.conditions
    .map(({ label, probability }) =>
      wording.say('say-probability', { label, value: percentWords(probability, wording) }),
    )
    .join(' ');
}

/** A probability in words that never claim certainty. @internal */
export function percentWords(probability: number, wording: Wording): string {
  if (probability < 0.01) return wording.say('percent-under', { value: '1' });
  if (probability > 0.99) return wording.say('percent-over', { value: '99' });
  return wording.say('unit-percent', { value: wording.number(100 * probability, 0) });
}
