import { THINNEST_BOSS_RATIO } from './fitted-factors.ts';
import type { PressState } from './press-model.ts';

// The fit of the corner stress ends at a boss of 24 mm on 13 mm across flats; its pole lies at 1.45.
const THINNEST_STRESSED_RATIO = 1.845;

/** Pressure at which the ring first yields; infinite when no yield strength is known. @internal */
export function firstYieldMPa({ arm, bossDiameterMm, acrossFlatsMm }: PressState): number {
  const bossRatio = Math.max(bossDiameterMm / acrossFlatsMm, THINNEST_BOSS_RATIO);
  return (arm.yieldStrengthMPa / 2) * (1 - 1 / bossRatio ** 2);
}

/**
 * Largest stress in the corner fillets of the bore over the contact pressure, two-dimensional fit for uniform pressure;
 * null for a boss under the range of the fit. @internal
 */
export function cornerStressFactor(state: PressState): number | null {
  const { acrossFlatsMm, bossDiameterMm, flatWidthMm, boreCornerRadiusMm } = state;
  const bossRatio = bossDiameterMm / acrossFlatsMm;
  if (bossRatio < THINNEST_STRESSED_RATIO) return null;
  const beta = flatWidthMm / acrossFlatsMm - 10 / 13;
  const boss = 3.61 + 8.67 / (bossRatio ** 2 - 2.108);
  return boss * ((boreCornerRadiusMm * 13) / acrossFlatsMm) ** -0.4515 * (1 + 1.5475 * beta + 0.7512 * beta ** 2);
}
