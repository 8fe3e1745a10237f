import type { FieldSpec, FieldSpecs } from '@spindlewright/quantity';

const length = (max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', above: 0, max, optional: true });
const depth = (max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', min: 0, max, optional: true });
const angle: FieldSpec = { type: 'measurand', unit: 'deg', min: 0.5, max: 5, optional: true };

const flats: FieldSpec = {
  type: 'list',
  optional: true,
  minLength: 1,
  item: {
    type: 'object',
    fields: {
      acrossFlatsMm: { type: 'measurand', unit: 'mm', min: 8, max: 25 },
      atMm: { type: 'measurand', unit: 'mm', min: 0, max: 40 },
      pair: { type: 'choice', values: ['a', 'b'] },
    },
  },
};

/** The fields of a job, once texts with units have become numbers. @internal */
export const jobFields: FieldSpecs = {
  format: { type: 'choice', values: ['spindlewright-job-1'] },
  title: { type: 'text' },
  date: { type: 'text' },
  invented: { type: 'flag', optional: true },
  bike: { type: 'text' },
  side: { type: 'choice', values: ['drive', 'non-drive'] },
  interface: { type: 'object', fields: { spindle: { type: 'text' }, arm: { type: 'text' } } },
  spindle: {
    type: 'object',
    optional: true,
    fields: {
      flats,
      faceAngleDeg: angle,
      flatLengthMm: length(40),
      endChamferMm: depth(5),
      shoulderFromEndMm: length(60),
      cornerDiameterMm: length(30),
    },
  },
  arm: {
    type: 'object',
    optional: true,
    fields: {
      flats,
      faceAngleDeg: angle,
      boreLengthMm: length(40),
      boltSeatFromMouthMm: length(60),
      seatIntrusionMm: depth(10),
      mouthChamferMm: depth(5),
      bossDiameterMm: length(80),
      yieldStrengthMPa: { type: 'measurand', unit: 'MPa', min: 50, max: 2000, optional: true },
    },
  },
  trialFit: { type: 'object', optional: true, fields: { endGapMm: depth(30), shoulderGapMm: depth(30) } },
  flats: { type: 'choice', values: ['greased', 'dry', 'unknown'], optional: true },
  fixing: {
    type: 'object',
    optional: true,
    fields: {
      thread: { type: 'text' },
      lubrication: { type: 'choice', values: ['lubricated', 'dry', 'unknown'] },
    },
  },
  partMakerTorqueNm: { type: 'measurand', unit: 'Nm', above: 0, max: 120, optional: true },
};
