import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { type Bearing, bearingFindings, bearingSpec, checkRing, ringOf } from './bearing.ts';
import { forceSpec, strengthRange } from './domain.ts';
import { headPressureHigh, memberYieldsUnknown } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

/** Pressure under a head, nut or washer. */
export interface HeadPressure {
  /** Mean pressure in MPa, at least 0. */
  pressureMPa: number;
  /** Area that bears in mm2. */
  areaMm2: number;
  /** Radius at which friction acts under even pressure, in mm. */
  evenPressureRadiusMm: number;
  /** Pressure over the limiting pressure; null when that was not given. */
  loadRatio: number | null;
  /** What is worth saying. */
  findings: Finding[];
}

/**
 * Gives the mean pressure under a head, round hole or the square of a crank arm.
 *
 * @remarks
 * Formula: p = F/A; A = pi/4 (Do^2 - Dh^2), or for a square hole the disc less the square and the round reliefs about its
 * corners, as far as they lie under the face.
 *
 * Validity: even pressure. Plain heads press more at the edge of the hole, bent washers at the rim: the limiting
 * pressures of VDI 2230 are made for this mean.
 *
 * Accuracy: round holes exact; square ones within 1e-6 of the closed form for sharp corners.
 *
 * @param input - `preloadN` at least 0 in N (take the upper bound of `preloadRange`); `bearing` in mm;
 * `limitingPressureMPa` above 0 in MPa, from the table for the softer part.
 * @returns Pressure in MPa, area in mm2, radius in mm, and the share of the limiting pressure.
 * @throws {@link DomainError} for a negative preload, a face that its hole leaves nothing of, or unknown keys.
 * @example
 * ```ts
 * import { headPressure } from '@spindlewright/torque';
 * const bearing = { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0 };
 * const { areaMm2, pressureMPa } = headPressure({ preloadN: 25_000, bearing });
 * areaMm2.toFixed(1); // => '155.4'
 * pressureMPa.toFixed(0); // => '161'
 * ```
 * @see VDI 2230 (`vdi-2230-table-4-quoted`), limiting surface pressures.
 */
export function headPressure(input: {
  preloadN: number;
  bearing: Bearing;
  limitingPressureMPa?: number;
}): HeadPressure {
  const fields: FieldSpecs = {
    preloadN: forceSpec,
    bearing: bearingSpec(input),
    limitingPressureMPa: { ...strengthRange, optional: true },
  };
  checkInput({ where: 'headPressure', value: input, fields });
  checkRing('headPressure', input.bearing);
  const { areaMm2, evenPressureRadiusMm } = ringOf(input.bearing);
  const pressureMPa = input.preloadN / areaMm2;
  const limitMPa = input.limitingPressureMPa;
  return {
    pressureMPa,
    areaMm2,
    evenPressureRadiusMm,
    loadRatio: limitMPa === undefined ? null : pressureMPa / limitMPa,
    findings: [...limitFindings(pressureMPa, limitMPa), ...bearingFindings(input.bearing)],
  };
}

function limitFindings(pressureMPa: number, limitMPa: number | undefined): Finding[] {
  if (limitMPa === undefined) {
    return [raiseText('member-yields-unknown', memberYieldsUnknown, 'note', {}, { path: 'limitingPressureMPa' })];
  }
  if (pressureMPa <= limitMPa) return [];
  const sources = ['vdi-2230-table-4-quoted'];
  return [raiseText('head-pressure-high', headPressureHigh, 'caution', { pressureMPa, limitMPa }, { sources })];
}
