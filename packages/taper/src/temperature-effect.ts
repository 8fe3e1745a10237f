import { checkInput, type Datum, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { keepingMessages as messages } from './messages/keeping.ts';
import { faceAngleSpec } from './shapes.ts';

/** What a change of temperature does to the fit. */
export interface TemperatureEffect {
  /** How much wider the bore grows than the spindle, per side, in mm; negative when the fit tightens. */
  openingMm: number;
  /** Interference of the press per side, in mm, at least 0. */
  interferenceMm: number;
  /** Share of the interference that is lost; negative when it grows; null when there is none. */
  lostShare: number | null;
  /** The same as a way along the axis, in mm. */
  axialMm: number;
  /** What heat can and cannot do. */
  findings: Finding[];
}

/** Thermal expansion taken when none is given. */
export const thermalExpansion: Readonly<Record<'arm' | 'spindle', Datum>> = {
  arm: {
    value: 23.6e-6,
    unit: '1/K',
    standing: 'from-memory',
    sources: [],
    note: 'Wrought aluminium, 20 to 100 deg C.',
  },
  spindle: { value: 12e-6, unit: '1/K', standing: 'from-memory', sources: [], note: 'Steel, 20 to 100 deg C.' },
};

/**
 * Compares what a rise of temperature opens between arm and spindle with the interference of the press.
 *
 * @remarks
 * Formula: opening per side = (s/2)(alpha_arm dT_arm - alpha_spindle dT_spindle); interference per side = travel tan a; way
 * along the axis = opening/tan a.
 *
 * Validity: each part at one temperature; elastic press. Heat from a flame reaches the spindle within seconds, so that the
 * difference of the two is smaller than it looks.
 *
 * Accuracy: expansions to about 5 %, from memory; the interference as good as the travel (see {@link pressFit}).
 *
 * @param input - `acrossFlatsMm` 1 to 60 mm; `faceAngleDeg` 0.2 to 10 deg; `travelMm` of the press 0 to 50 mm;
 * `armRiseKelvin` and `spindleRiseKelvin` -100 to 300 K since the press; `armExpansionPerKelvin` and
 * `spindleExpansionPerKelvin` 0 to 0.0001, default `thermalExpansion`.
 * @returns Lengths in mm, positive where the fit loosens.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { temperatureEffect } from '@spindlewright/taper';
 * const heat = temperatureEffect({
 *   acrossFlatsMm: 13.1, faceAngleDeg: 2, travelMm: 0.82, armRiseKelvin: 80, spindleRiseKelvin: 40,
 * });
 * [(heat.openingMm * 1000).toFixed(1), heat.lostShare?.toFixed(2)]; // => ['9.2', '0.32']
 * ```
 * @see Linear thermal expansion.
 */
export function temperatureEffect(input: {
  acrossFlatsMm: number;
  faceAngleDeg: number;
  travelMm: number;
  armRiseKelvin: number;
  spindleRiseKelvin: number;
  armExpansionPerKelvin?: number;
  spindleExpansionPerKelvin?: number;
}): TemperatureEffect {
  const rise = { type: 'number', unit: 'K', min: -100, max: 300 } as const;
  const expansion = { type: 'number', unit: '1/K', min: 0, max: 1e-4, optional: true } as const;
  checkInput({
    where: 'temperatureEffect',
    value: input,
    fields: {
      acrossFlatsMm: { type: 'number', unit: 'mm', min: 1, max: 60 },
      faceAngleDeg: faceAngleSpec('number'),
      travelMm: { type: 'number', unit: 'mm', min: 0, max: 50 },
      armRiseKelvin: rise,
      spindleRiseKelvin: rise,
      armExpansionPerKelvin: expansion,
      spindleExpansionPerKelvin: expansion,
    },
  });
  const { acrossFlatsMm, travelMm, armRiseKelvin, spindleRiseKelvin } = input;
  const { armExpansionPerKelvin = thermalExpansion.arm.value } = input;
  const { spindleExpansionPerKelvin = thermalExpansion.spindle.value } = input;
  const tangent = Math.tan((input.faceAngleDeg * Math.PI) / 180);
  const strain = armExpansionPerKelvin * armRiseKelvin - spindleExpansionPerKelvin * spindleRiseKelvin;
  const openingMm = (acrossFlatsMm / 2) * strain + 0;
  const interferenceMm = travelMm * tangent;
  // Below a nanometre there is no interference of which a share could be lost.
  const lostShare = interferenceMm > 1e-6 ? openingMm / interferenceMm : null;
  const findings: Finding[] = [];
  if (openingMm < 0) findings.push(find(messages, 'cold-tightens', 'note'));
  else if (lostShare !== null && lostShare < 1) {
    findings.push(find(messages, 'heat-alone-does-not-free', 'note', { lostShare }));
  } else if (openingMm > 0) findings.push(find(messages, 'heat-frees-and-may-harm', 'caution'));
  return { openingMm, interferenceMm, lostShare, axialMm: openingMm / tangent + 0, findings };
}
