import type { Datum, Limits } from '@spindlewright/quantity';
import { MODULUS_SOURCES, takenDimensions, takenFriction, takenMaterials } from './assumed-limits.ts';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

const FE = ['fe-square-taper'] as const;

/** A judged value with its bounds; without them where they are the value itself. */
function judged({ lower, nominal, upper }: Limits, unit: string, sources: readonly string[], note?: string): Datum {
  const bounds = lower === upper ? {} : { lower, upper };
  return {
    value: nominal,
    ...bounds,
    unit,
    standing: 'judgement',
    sources: [...sources],
    ...(note === undefined ? {} : { note }),
  };
}

// Each is made by a call that bundlers may leave out: reading members at the top would keep it in every bundle.

/** Dimensions taken when a drawing or a caliper does not give them; a result that used one says so in a finding. */
export const assumedDimensions: Readonly<Record<'cornerDiameterMm' | 'bossDiameterMm' | 'boreCornerRadiusMm', Datum>> =
  /* @__PURE__ */ (() => ({
    cornerDiameterMm: judged(
      takenDimensions.cornerDiameterMm,
      'mm',
      FE,
      'No published corner diameter was found; the sharp diagonal of 12.6 mm across flats is 17.8 mm.',
    ),
    bossDiameterMm: judged(
      takenDimensions.bossDiameterMm,
      'mm',
      FE,
      'Middle of the bosses that the finite-element rows cover.',
    ),
    boreCornerRadiusMm: judged(
      takenDimensions.boreCornerRadiusMm,
      'mm',
      FE,
      'Range of the fillets that the finite-element rows cover.',
    ),
  }))();

/** Elastic constants taken for a part whose material is not given; no yield strength is assumed for anything. */
export const assumedMaterials: Readonly<
  Record<'spindle' | 'arm', Readonly<Record<'youngsModulusGPa' | 'poissonsRatio', Datum>>>
> = /* @__PURE__ */ (() => ({
  spindle: {
    youngsModulusGPa: judged(
      takenMaterials.spindle.youngsModulusGPa,
      'GPa',
      MODULUS_SOURCES,
      'Steel: 205 in the finite-element rows, 207 in table A-5, 210 on the material card.',
    ),
    poissonsRatio: judged(takenMaterials.spindle.poissonsRatio, '1', FE),
  },
  arm: {
    youngsModulusGPa: judged(
      takenMaterials.arm.youngsModulusGPa,
      'GPa',
      MODULUS_SOURCES,
      'Aluminium: 70 in the finite-element rows, 71.7 in table A-5, 69 on the material card of 6061-T6.',
    ),
    poissonsRatio: judged(takenMaterials.arm.poissonsRatio, '1', FE),
  },
}))();

/** Friction of the flats as the trade meets it; never one value without its range. */
export const flatFriction: Readonly<Record<'greased' | 'dry', Datum>> = /* @__PURE__ */ (() => ({
  greased: judged(takenFriction.greased, '1', []),
  dry: judged(takenFriction.dry, '1', []),
}))();

/** Where a seat stops being called good. */
export const seatThresholds: Readonly<Record<'clearGapMm' | 'usableFlatShare', Datum>> = {
  clearGapMm: {
    value: CLEAR_GAP_MM,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'Clearance that both gaps have to keep at their lower limits for the verdict `seats`.',
  },
  usableFlatShare: {
    value: USABLE_FLAT_SHARE,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'Share of the shorter usable flat that has to be engaged.',
  },
};
