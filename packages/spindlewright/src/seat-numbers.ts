import { hardLimits, type Limits, limitsOf, type Measurand } from '@spindlewright/quantity';
import { assumedDimensions, assumedMaterials, type Pressing } from '@spindlewright/taper';
import { bareSeat } from '@spindlewright/taper/bare';
import type { SetShapes } from './published-shapes.ts';
import type { SeatNumbers } from './seat-part.ts';

/** The press on an arm of a job, with both materials as they are reckoned. */
export interface SeatPressing extends Pressing<Measurand> {
  axialForceN: Limits;
  friction: Limits;
  materials: { arm: { youngsModulusGPa: Limits; poissonsRatio: Limits; yieldStrengthMPa: Measurand } };
}

/** A seat by shapes as `predictSeat` gives it, without what only the way that leads has to say. @internal */
export function seatNumbers({ spindle, arm }: SetShapes['read'], pressing: SeatPressing): SeatNumbers {
  const { cornerDiameterMm, bossDiameterMm, boreCornerRadiusMm } = assumedDimensions;
  const boreLengthMm = hardLimits(arm.boreLengthMm);
  return bareSeat({
    spindle: {
      endChamferMm: 0,
      cornerDiameterMm: limitsOf(cornerDiameterMm),
      ...inLimits(spindle),
    },
    arm: {
      boltSeatFromMouthMm: boreLengthMm,
      seatIntrusionMm: 0,
      mouthChamferMm: 0,
      bossDiameterMm: limitsOf(bossDiameterMm),
      boreCornerRadiusMm: limitsOf(boreCornerRadiusMm),
      ...inLimits(arm),
    },
    pressing: {
      axialForceN: pressing.axialForceN,
      friction: pressing.friction,
      materials: {
        spindle: {
          youngsModulusGPa: limitsOf(assumedMaterials.spindle.youngsModulusGPa),
          poissonsRatio: limitsOf(assumedMaterials.spindle.poissonsRatio),
        },
        arm: inLimits(pressing.materials.arm),
      },
    },
  });
}

/** Every reading as its hard bounds. */
const inLimits = <T extends object>(readings: T): { [K in keyof T]: Limits } =>
  Object.fromEntries(Object.entries(readings).map(([key, reading]) => [key, hardLimits(reading)])) as {
    [K in keyof T]: Limits;
  };
