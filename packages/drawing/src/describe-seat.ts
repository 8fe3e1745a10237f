import { hardLimits, type Measurand } from '@spindlewright/quantity';
import { decimalsFor, type Wording, wordingOf } from './labels.ts';
import { checkSeatPicture, type PictureSeat, type SeatPicture } from './seat-picture.ts';
import { type SeatScene, seatScene } from './seat-scene.ts';
import { verdictWords } from './verdict-line.ts';

/**
 * Says in words what {@link drawSeat} shows: the text alternative of the picture, which the picture carries as `desc`.
 *
 * @remarks
 * Formula: none; the numbers given, bounds rounded outward.
 *
 * Validity: as for drawSeat; what is not known is said to be so.
 *
 * Accuracy: tenths of a millimetre where limits are 0.15 mm apart or more, else hundredths.
 *
 * @param picture - The same input as for drawSeat.
 * @returns Sentences, in the language of `labels` (English without).
 * @throws {@link DomainError} as drawSeat does.
 * @example
 * ```ts
 * import { describeSeat } from '@spindlewright/drawing';
 * describeSeat({
 *   handFit: { endGapMm: { lower: 2.4, nominal: 2.5, upper: 2.6 }, shoulderGapMm: null },
 *   pressed: { endGapMm: { lower: 1.2, nominal: 1.5, upper: 1.8 }, shoulderGapMm: null },
 *   verdict: 'seats',
 * }).includes('Pressed: end gap 1.5 mm (limits 1.2 to 1.8), shoulder gap not known'); // => true
 * ```
 * @see W3C, SVG 2 (candidate recommendation, 2018), clause 5.8: `title` and `desc`.
 */
export function describeSeat(picture: SeatPicture): string {
  checkSeatPicture('describeSeat', picture);
  return seatWords(picture, seatScene(picture), wordingOf(picture.labels));
}

/** The text alternative, for an input already checked. @internal */
export function seatWords(picture: SeatPicture, scene: SeatScene, wording: Wording): string {
  const { verdict } = picture;
  return [
    wording.say('say-section'),
    verdict === undefined ? '' : wording.say('say-verdict', { verdict: verdictWords(verdict, wording) }),
    positionWords('say-hand-fit', picture.handFit, wording),
    positionWords('say-pressed', picture.pressed, wording),
    seatWarning(scene, wording),
    ...seatNotes(scene, wording),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** The warning of an arm that is stopped before it is pressed, or nothing. @internal */
export function seatWarning(scene: SeatScene, wording: Wording): string {
  const { stop, pressed } = scene;
  const gap = stop === null ? null : stop === 'end' ? pressed.end : pressed.shoulder;
  if (stop === null) return '';
  const short = wording.say('unit-mm', {
    value: wording.number(pressed.shortMm, gap === null ? 2 : decimalsFor(gap.limits)),
  });
  return wording.say(`warn-${stop}`, { short });
}

/** What has to be said under the picture: what is drawn at a guess, and at what scale. @internal */
export function seatNotes(scene: SeatScene, wording: Wording): string[] {
  const { standIn, hand, pressed } = scene;
  return [
    scene.disagree ? wording.say('note-disagree') : '',
    hand.end === null && pressed.end === null ? wording.say('note-end-gap-unknown') : '',
    hand.shoulder === null && pressed.shoulder === null ? wording.say('note-shoulder-gap-unknown') : '',
    standIn.arm || standIn.spindle ? wording.say('note-stand-in') : '',
    wording.say('note-scale'),
  ].filter((note) => note !== '');
}

function positionWords(key: 'say-hand-fit' | 'say-pressed', seat: PictureSeat, wording: Wording): string {
  const value = (measurand: Measurand | null | undefined): string => {
    if (measurand === null || measurand === undefined) return wording.say('gap-unknown');
    const limits = hardLimits(measurand);
    const decimals = decimalsFor(limits);
    return wording.say('say-value', {
      value: wording.say('unit-mm', { value: wording.number(limits.nominal, decimals) }),
      limits:
        limits.lower === limits.upper
          ? wording.say('no-limits')
          : wording.say('limits-range', wording.bounds(limits, decimals)),
    });
  };
  return wording.say('say-position', {
    position: wording.say(key),
    endGap: value(seat.endGapMm),
    shoulderGap: value(seat.shoulderGapMm),
    engaged: value(seat.engagedLengthMm),
  });
}
