import type { Datum } from '@spindlewright/quantity';
import { MODULUS_SOURCES, takenDimensions, takenFriction, takenMaterials } from './assumed-limits.ts';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

/** Dimensions taken when a drawing or a caliper does not give them; a result that used one says so in a finding. */
export const assumedDimensions: Readonly<Record<'cornerDiameterMm' | 'bossDiameterMm' | 'boreCornerRadiusMm', Datum>> =
  {
    cornerDiameterMm: {
      value: takenDimensions.cornerDiameterMm.nominal,
      lower: takenDimensions.cornerDiameterMm.lower,
      upper: takenDimensions.cornerDiameterMm.upper,
      unit: 'mm',
      standing: 'judgement',
      sources: ['fe-square-taper'],
      note: 'No published corner diameter was found; the sharp diagonal of 12.6 mm across flats is 17.8 mm.',
    },
    bossDiameterMm: {
      value: takenDimensions.bossDiameterMm.nominal,
      lower: takenDimensions.bossDiameterMm.lower,
      upper: takenDimensions.bossDiameterMm.upper,
      unit: 'mm',
      standing: 'judgement',
      sources: ['fe-square-taper'],
      note: 'Middle of the bosses that the finite-element rows cover.',
    },
    boreCornerRadiusMm: {
      value: takenDimensions.boreCornerRadiusMm.nominal,
      lower: takenDimensions.boreCornerRadiusMm.lower,
      upper: takenDimensions.boreCornerRadiusMm.upper,
      unit: 'mm',
      standing: 'judgement',
      sources: ['fe-square-taper'],
      note: 'Range of the fillets that the finite-element rows cover.',
    },
  };

/** Elastic constants taken for a part whose material is not given; no yield strength is assumed for anything. */
export const assumedMaterials: Readonly<
  Record<'spindle' | 'arm', Readonly<Record<'youngsModulusGPa' | 'poissonsRatio', Datum>>>
> = {
  spindle: {
    youngsModulusGPa: {
      value: takenMaterials.spindle.youngsModulusGPa.nominal,
      lower: takenMaterials.spindle.youngsModulusGPa.lower,
      upper: takenMaterials.spindle.youngsModulusGPa.upper,
      unit: 'GPa',
      standing: 'judgement',
      sources: [...MODULUS_SOURCES],
      note: 'Steel: 205 in the finite-element rows, 207 in table A-5, 210 on the material card.',
    },
    poissonsRatio: {
      value: takenMaterials.spindle.poissonsRatio.nominal,
      unit: '1',
      standing: 'judgement',
      sources: ['fe-square-taper'],
    },
  },
  arm: {
    youngsModulusGPa: {
      value: takenMaterials.arm.youngsModulusGPa.nominal,
      lower: takenMaterials.arm.youngsModulusGPa.lower,
      upper: takenMaterials.arm.youngsModulusGPa.upper,
      unit: 'GPa',
      standing: 'judgement',
      sources: [...MODULUS_SOURCES],
      note: 'Aluminium: 70 in the finite-element rows, 71.7 in table A-5, 69 on the material card of 6061-T6.',
    },
    poissonsRatio: {
      value: takenMaterials.arm.poissonsRatio.nominal,
      unit: '1',
      standing: 'judgement',
      sources: ['fe-square-taper'],
    },
  },
};

/** Friction of the flats as the trade meets it; never one value without its range. */
export const flatFriction: Readonly<Record<'greased' | 'dry', Datum>> = {
  greased: {
    value: takenFriction.greased.nominal,
    lower: takenFriction.greased.lower,
    upper: takenFriction.greased.upper,
    unit: '1',
    standing: 'judgement',
    sources: [],
  },
  dry: {
    value: takenFriction.dry.nominal,
    lower: takenFriction.dry.lower,
    upper: takenFriction.dry.upper,
    unit: '1',
    standing: 'judgement',
    sources: [],
  },
};

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
