import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import { refuse } from './refuse.ts';
import { type Hand, type Thread, threadOf } from './thread.ts';

const fields: FieldSpecs = {
  nominalDiameterMm: { type: 'number', unit: 'mm', min: 0.1, max: 1000 },
  pitchMm: { type: 'number', unit: 'mm', min: 0.01 },
  hand: { type: 'choice', values: ['right', 'left'], optional: true },
};

/**
 * Gives the basic dimensions of an ISO metric thread from its diameter and pitch.
 *
 * @remarks
 * Formula: with H = P sqrt(3)/2: d2 = d - 3/4 H (0.649519 P), D1 = d - 5/4 H (1.082532 P), d3 = d - 17/12 H (1.226869 P),
 * d0 = (d2 + d3)/2 = d - 0.938194 P, As = pi/4 d0^2, lead angle = atan(P/(pi d2)).
 *
 * Validity: any diameter from 0.1 to 1000 mm with a pitch of at most half of it; whether such a thread is in a series is not
 * asked. Basic sizes: tolerances (6g, 6H) are not in them.
 *
 * Accuracy: a few roundings. Printed stress areas agree to 0.01 mm2 (M10: printed 58.00, exact 57.99); tables that
 * print other areas for fine pitches outside ISO 898-1 do not follow the formula and are wrong.
 *
 * @param input - `nominalDiameterMm` from 0.1 to 1000 mm; `pitchMm` from 0.01 mm; `hand`: `right` (default) or `left`.
 * @returns The thread: lengths in mm, area in mm2, angle in degrees, all above 0.
 * @throws {@link DomainError} for sizes outside the domain, a pitch above half the diameter, or unknown keys.
 * @example
 * ```ts
 * import { metricThread } from '@spindlewright/torque';
 * const thread = metricThread({ nominalDiameterMm: 8, pitchMm: 1 });
 * thread.designation; // => 'M8x1'
 * thread.pitchDiameterMm.toFixed(3); // => '7.350'
 * thread.stressAreaMm2.toFixed(1); // => '39.2'
 * ```
 * @see ISO 68-1 (`iso-68-1`) for the profile, ISO 898-1 (`iso-898-1-quoted`) for the stress area.
 */
export function metricThread(input: { nominalDiameterMm: number; pitchMm: number; hand?: Hand }): Thread {
  checkInput({ where: 'metricThread', value: input, fields });
  const { nominalDiameterMm, pitchMm, hand = 'right' } = input;
  if (pitchMm > nominalDiameterMm / 2) {
    throw refuse('metricThread', 'pitchMm', String(pitchMm), `at most half the diameter, ${nominalDiameterMm / 2} mm`);
  }
  return threadOf({
    designation: `M${nominalDiameterMm}x${pitchMm}${hand === 'left' ? '-LH' : ''}`,
    majorDiameterMm: nominalDiameterMm,
    pitchMm,
    rootHeights: 17 / 12,
    hand,
  });
}
