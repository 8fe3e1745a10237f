import type { Limits } from '@spindlewright/quantity';

// What is taken for a size or a material that is not given: the numbers of `assumedDimensions`, `assumedMaterials` and
// `flatFriction` by themselves, so that a prediction costs a page no words about them.

/** Dimensions in mm. @internal */
export const takenDimensions = {
  cornerDiameterMm: { lower: 16, nominal: 16.5, upper: 17 },
  bossDiameterMm: { lower: 30, nominal: 34, upper: 38 },
  boreCornerRadiusMm: { lower: 0.5, nominal: 1, upper: 1.5 },
} as const satisfies Record<string, Limits>;

/** Elastic constants; no yield strength is assumed for anything. @internal */
export const takenMaterials = {
  spindle: {
    youngsModulusGPa: { lower: 205, nominal: 205, upper: 210 },
    poissonsRatio: { lower: 0.29, nominal: 0.29, upper: 0.29 },
  },
  arm: {
    youngsModulusGPa: { lower: 69, nominal: 70, upper: 71.7 },
    poissonsRatio: { lower: 0.33, nominal: 0.33, upper: 0.33 },
  },
} as const satisfies Record<string, Record<string, Limits>>;

/** Sources of both moduli. @internal */
export const MODULUS_SOURCES: readonly string[] = [
  'fe-square-taper',
  'steel-aluminium-table-a5',
  'freecad-material-cards',
];

/** Friction of the flats. @internal */
export const takenFriction = {
  greased: { lower: 0.1, nominal: 0.13, upper: 0.16 },
  dry: { lower: 0.15, nominal: 0.2, upper: 0.3 },
} as const satisfies Record<string, Limits>;
