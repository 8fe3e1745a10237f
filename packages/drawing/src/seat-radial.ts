import type { Measurand } from '@spindlewright/quantity';
import { nominal, type SeatAxial } from './seat-axial.ts';
import type { SeatPicture } from './seat-picture.ts';
import type { SeatScene } from './seat-scene.ts';
import { STAND_IN } from './stand-in.ts';

const slopeOf = (angle: Measurand | undefined): number =>
  Math.tan(((nominal(angle) ?? STAND_IN.faceAngleDeg) * Math.PI) / 180);

const half = (size: Measurand | undefined): number | undefined => {
  const value = nominal(size);
  return value === undefined ? undefined : value / 2;
};

/** Half widths and radii, mm; what is not known follows from its counterpart where the parts meet by hand. @internal */
export function seatRadial(
  { spindle, arm }: SeatPicture,
  axial: SeatAxial,
): {
  spindle: Omit<SeatScene['spindle'], 'flatEndMm' | 'wallMm'>;
  arm: Pick<SeatScene['arm'], 'mouthHalfMm' | 'slope' | 'bossRadiusMm' | 'recessRadiusMm'>;
} {
  const slope = slopeOf(spindle?.faceAngleDeg ?? arm?.faceAngleDeg);
  const growth = slope * axial.freeHandMouthMm;
  const atMouth = half(arm?.acrossFlatsAtMouthMm);
  const halfAtEndMm =
    half(spindle?.acrossFlatsAtEndMm) ?? (atMouth === undefined ? STAND_IN.halfAtEnd : Math.max(atMouth - growth, 1));
  const mouthHalfMm = atMouth ?? Math.max(halfAtEndMm + growth, 1);
  const flatHalf = halfAtEndMm + slope * axial.flatEndMm;
  const largest = Math.max(mouthHalfMm, flatHalf) + axial.mouthChamferMm;
  const cornerRadiusMm = Math.max(half(spindle?.cornerDiameterMm) ?? 0, 1.15 * flatHalf);
  const bossRadiusMm = Math.max(half(arm?.bossDiameterMm) ?? STAND_IN.bossRadius, largest + 2);
  const chamfer = nominal(spindle?.endChamferMm) ?? (spindle === undefined ? STAND_IN.endChamfer : 0);
  return {
    spindle: {
      halfAtEndMm,
      slope,
      chamferMm: Math.min(chamfer, axial.flatEndMm / 2, halfAtEndMm / 2),
      cornerRadiusMm,
      wallRadiusMm: Math.max(cornerRadiusMm, largest) + 1.6,
    },
    arm: {
      mouthHalfMm,
      slope: slopeOf(arm?.faceAngleDeg ?? spindle?.faceAngleDeg),
      bossRadiusMm,
      recessRadiusMm: Math.max(
        Math.min(STAND_IN.recessRadius, bossRadiusMm - 1.5),
        Math.min(mouthHalfMm + 1.5, bossRadiusMm - 0.5),
      ),
    },
  };
}
