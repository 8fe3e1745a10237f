import { checkInput, convert, type FieldSpecs } from '@spindlewright/quantity';
import { refuse } from './refuse.ts';
import { type Hand, type Thread, threadOf } from './thread.ts';

const fields: FieldSpecs = {
  nominalDiameterIn: { type: 'number', unit: 'in', min: 0.005, max: 40 },
  threadsPerInch: { type: 'number', unit: '1/in', min: 0.05, max: 2500 },
  hand: { type: 'choice', values: ['right', 'left'], optional: true },
};

/**
 * Gives the basic dimensions of an inch thread of 60 degree profile from its diameter and its threads per inch.
 *
 * @remarks
 * Formula: with P = 25.4 mm/n and H = P sqrt(3)/2: d2 = d - 3/4 H (0.649519/n), D1 = d - 5/4 H (1.082532/n), minor
 * diameter of the bolt d - 3/2 H (1.299038/n), stress diameter d - 9/8 H (0.974279/n, not the metric 0.938194).
 *
 * Validity: any diameter up to 40 in with a pitch of at most half of it. Cycle threads with inch pitch (1.37 in x 24)
 * share d2 and D1 with the ISO profile and are treated alike.
 *
 * Accuracy: a few roundings; agrees with the printed areas of the coarse and fine series to half a unit of their last
 * place (1/2-20 is printed cut off, not rounded).
 *
 * @param input - `nominalDiameterIn` from 0.005 to 40 in; `threadsPerInch` from 0.05 to 2500; `hand`: `right` (default)
 * or `left`.
 * @returns The thread: lengths in mm, area in mm2, angle in degrees. The designation has no series letters: they come
 * from a table, see `threadFor`.
 * @throws {@link DomainError} for sizes outside the domain, a pitch above half the diameter, or unknown keys.
 * @example
 * ```ts
 * import { unifiedThread } from '@spindlewright/torque';
 * const pedal = unifiedThread({ nominalDiameterIn: 0.5625, threadsPerInch: 20 });
 * pedal.designation; // => '9/16-20'
 * pedal.stressAreaMm2.toFixed(1); // => '133.8'
 * ```
 * @see ASME B1.1 (`asme-b1-1`); constants in Shigley (`shigley-9`), table 8-2.
 */
export function unifiedThread(input: { nominalDiameterIn: number; threadsPerInch: number; hand?: Hand }): Thread {
  checkInput({ where: 'unifiedThread', value: input, fields });
  const { nominalDiameterIn, threadsPerInch, hand = 'right' } = input;
  if (1 / threadsPerInch > nominalDiameterIn / 2) {
    throw refuse('unifiedThread', 'threadsPerInch', String(threadsPerInch), `at least ${2 / nominalDiameterIn}`);
  }
  return threadOf({
    designation: `${inchSize(nominalDiameterIn)}-${threadsPerInch}${hand === 'left' ? ' LH' : ''}`,
    majorDiameterMm: convert(nominalDiameterIn, 'in', 'mm'),
    pitchMm: convert(1, 'in', 'mm') / threadsPerInch,
    rootHeights: 1.5,
    hand,
  });
}

/** Writes a diameter as the trade does: numbered sizes, sixty-fourths as reduced fractions, else decimals. @internal */
export function inchSize(diameterIn: number): string {
  const numbered = Math.round((diameterIn - 0.06) / 0.013);
  if (numbered >= 0 && numbered <= 12 && Math.abs(0.06 + 0.013 * numbered - diameterIn) < 1e-9) return `#${numbered}`;
  let numerator = diameterIn * 64;
  if (!Number.isInteger(numerator)) return String(diameterIn);
  let denominator = 64;
  while (numerator % 2 === 0 && denominator > 1) {
    numerator /= 2;
    denominator /= 2;
  }
  const whole = Math.floor(numerator / denominator);
  const rest = numerator % denominator;
  if (rest === 0) return String(whole);
  return whole === 0 ? `${rest}/${denominator}` : `${whole} ${rest}/${denominator}`;
}
