import { checkInput, DomainError, type FieldSpecs } from '@spindlewright/quantity';
import { type BorePlayScene, borePlayScene } from './bore-play-scene.ts';
import { frameFields, type PictureFrame } from './frame.ts';
import { type Wording, wordingOf } from './labels.ts';

/** What {@link drawBorePlay} draws. */
export interface BorePlayPicture extends PictureFrame {
  /** Half the across flats of the square, mm, above 0 to 30. */
  halfWidthMm: number;
  /** Width of its flats, mm, above 0 to twice the half-width. */
  flatWidthMm: number;
  /** Clearance between flat and bore on each side, mm, 0 to 10. */
  clearanceMm: number;
  /** Rotation from the middle to one stop, deg, 0 to 90; `null` when nothing stops it. */
  rotationDeg: number | null;
}

const fields: FieldSpecs = {
  halfWidthMm: { type: 'number', unit: 'mm', above: 0, max: 30 },
  flatWidthMm: { type: 'number', unit: 'mm', above: 0, max: 60 },
  clearanceMm: { type: 'number', unit: 'mm', min: 0, max: 10 },
  rotationDeg: { type: 'number', unit: 'deg', min: 0, max: 90 },
};

/** Refuses a picture that is not as described. @internal */
export function checkBorePlay(where: string, picture: BorePlayPicture): void {
  const free = typeof picture === 'object' && picture !== null && picture.rotationDeg === null;
  checkInput({
    where,
    value: free ? { ...picture, rotationDeg: 0 } : picture,
    fields: { ...fields, ...frameFields() },
  });
  const { halfWidthMm, flatWidthMm } = picture;
  if (flatWidthMm <= 2 * halfWidthMm) return;
  const allowed = `at most ${2 * halfWidthMm} mm, twice the half-width`;
  throw new DomainError(where, [{ path: 'flatWidthMm', received: String(flatWidthMm), allowed }]);
}

/**
 * Says in words what {@link drawBorePlay} shows: the clearance, how far the square turns, and that it is not to be ridden.
 *
 * @remarks
 * Formula: none; the rotation is the one given.
 *
 * Validity: as for drawBorePlay.
 *
 * Accuracy: hundredths of a millimetre, tenths of a degree (hundredths below one degree).
 *
 * @param picture - The same input as for drawBorePlay.
 * @returns Sentences, in the language of `labels` (English without).
 * @throws {@link DomainError} as drawBorePlay does.
 * @example
 * ```ts
 * import { describeBorePlay } from '@spindlewright/drawing';
 * describeBorePlay({ halfWidthMm: 6.5, flatWidthMm: 10, clearanceMm: 0.1, rotationDeg: 1.18 });
 * // => 'Clearance 0.10 mm on each side. Turns 1.2° each way, 2.4° from stop to stop. An arm that moves on its spindle is not to be ridden. Clearance drawn 5 times as wide as it is; all else to scale.'
 * ```
 * @see W3C, SVG 2 (candidate recommendation, 2018), clause 5.8: `title` and `desc`.
 */
export function describeBorePlay(picture: BorePlayPicture): string {
  checkBorePlay('describeBorePlay', picture);
  const wording = wordingOf(picture.labels);
  return [...playWords(picture, wording), ...playNotes(picture, borePlayScene(picture), wording)].join(' ');
}

/** Clearance, rotation and caution. @internal */
export function playWords({ clearanceMm, rotationDeg }: BorePlayPicture, wording: Wording): string[] {
  const clearance = wording.say('unit-mm', { value: wording.number(clearanceMm, 2) });
  const turned =
    rotationDeg === null
      ? wording.say('play-free')
      : rotationDeg === 0
        ? wording.say('play-none')
        : wording.say('play-rotation', {
            half: degrees(rotationDeg, wording),
            whole: degrees(2 * rotationDeg, wording),
          });
  return [
    wording.say('play-clearance', { value: clearance }),
    turned,
    ...(rotationDeg === 0 ? [] : [wording.say('play-caution')]),
  ];
}

/** What is not as it is in the picture. @internal */
export function playNotes(picture: BorePlayPicture, scene: BorePlayScene, wording: Wording): string[] {
  const factor = wording.number(scene.factor, 0);
  return [
    scene.factor === 1 ? wording.say('play-true') : wording.say('play-exaggerated', { factor }),
    ...(agrees(picture.rotationDeg, scene.rotationDeg) ? [] : [wording.say('play-disagree')]),
  ];
}

const degrees = (value: number, wording: Wording): string =>
  wording.say('unit-degree', { value: wording.number(value, value < 1 ? 2 : 1) });

// A tenth of a degree and a twentieth of the angle: more than rounding, less than another reading.
const agrees = (given: number | null, derived: number | null): boolean =>
  given === null || derived === null ? given === derived : Math.abs(given - derived) <= 0.1 + 0.05 * derived;
