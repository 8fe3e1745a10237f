import type { Datum } from '@spindlewright/quantity';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

/** Dimensions taken when a drawing or a caliper does not give them; a result that used one says so in a finding. */
export const assumedDimensions: Readonly<Record<'cornerDiameterMm' | 'bossDiameterMm' | 'boreCornerRadiusMm', Datum>> =
  {
    cornerDiameterMm: {
      value: 16.5,
      lower: 16,
      upper: 17,
      unit: 'mm',
      standing: 'judgement',
      sources: ['fe-square-taper'],
      note: 'No published corner diameter was found; the sharp diagonal of 12.6 mm across flats is 17.8 mm.',
    },
    bossDiameterMm: {
      value: 34,
      lower: 30,
      upper: 38,
      unit: 'mm',
      standing: 'judgement',
      sources: ['fe-square-taper'],
      note: 'Middle of the bosses that the finite-element rows cover.',
    },
    boreCornerRadiusMm: {
      value: 1,
      lower: 0.5,
      upper: 1.5,
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
      value: 205,
      lower: 205,
      upper: 210,
      unit: 'GPa',
      standing: 'judgement',
      sources: ['fe-square-taper', 'steel-aluminium-table-a5', 'freecad-material-cards'],
      note: 'Steel: 205 in the finite-element rows, 207 in table A-5, 210 on the material card.',
    },
    poissonsRatio: { value: 0.29, unit: '1', standing: 'judgement', sources: ['fe-square-taper'] },
  },
  arm: {
    youngsModulusGPa: {
      value: 70,
      lower: 69,
      upper: 71.7,
      unit: 'GPa',
      standing: 'judgement',
      sources: ['fe-square-taper', 'steel-aluminium-table-a5', 'freecad-material-cards'],
      note: 'Aluminium: 70 in the finite-element rows, 71.7 in table A-5, 69 on the material card of 6061-T6.',
    },
    poissonsRatio: { value: 0.33, unit: '1', standing: 'judgement', sources: ['fe-square-taper'] },
  },
};

/** Friction of the flats as the trade meets it; never one value without its range. */
export const flatFriction: Readonly<Record<'greased' | 'dry', Datum>> = {
  greased: { value: 0.13, lower: 0.1, upper: 0.16, unit: '1', standing: 'judgement', sources: [] },
  dry: { value: 0.2, lower: 0.15, upper: 0.3, unit: '1', standing: 'judgement', sources: [] },
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
