import { listActions, listChecks } from '@spindlewright/diagnosis';
import type { FieldSpec, FieldSpecs } from '@spindlewright/quantity';

const length = (max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', above: 0, max, optional: true });
const depth = (max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', min: 0, max, optional: true });
// Narrower than the models' own domains, so that the error of a reading stays inside them.
const wanted = (max: number): FieldSpec => ({ type: 'measurand', unit: 'mm', min: 0.1, max, optional: true });
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

const armFields: FieldSpec = {
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
};

const trialFit: FieldSpec = {
  type: 'object',
  optional: true,
  fields: { endGapMm: depth(30), shoulderGapMm: depth(30) },
};

/** Answers that say nothing are accepted everywhere; `diagnose` leaves them aside. */
const NO_ANSWERS = ['unclear', 'not-checked', 'unknown'];

function observations(): FieldSpec {
  return {
    type: 'object',
    fields: Object.fromEntries(
      listChecks().map(({ id, outcomes, several }) => {
        const choice: FieldSpec = { type: 'choice', values: [...outcomes.map((outcome) => outcome.id), ...NO_ANSWERS] };
        return [id, several ? { type: 'list', item: choice, optional: true } : { ...choice, optional: true }];
      }),
    ),
  };
}

// Wide on purpose: `diagnose` knows the range of each reading and refuses what lies outside it.
const reading = (unit: string): FieldSpec => ({ type: 'measurand', unit, min: -1e6, max: 1e6, optional: true });

const measurements: FieldSpec = {
  type: 'object',
  optional: true,
  fields: {
    endGapMm: reading('mm'),
    shoulderGapMm: reading('mm'),
    playAngleDeg: reading('deg'),
    markEndFromSpindleEndMm: reading('mm'),
    releaseForceN: reading('N'),
    runoutMm: reading('mm'),
    torqueAtFirstMovementNm: reading('Nm'),
    turnsToTorque: reading('turns'),
  },
};

/** Fields that a change may replace, as a whole. */
const CHANGEABLE = [
  'interface',
  'spindle',
  'arm',
  'trialFit',
  'flats',
  'clamp',
  'spline',
  'cotter',
  'faceTeeth',
  'bar',
  'fixing',
  'partMakerTorqueNm',
];

/** The fields of a job, with the changes that it asks for. @internal */
export function jobFields(): FieldSpecs {
  const own = ownFields();
  const change = Object.fromEntries(
    CHANGEABLE.flatMap((key) => {
      const spec = own[key];
      return spec === undefined ? [] : [[key, { ...spec, optional: true }]];
    }),
  );
  const whatIf: FieldSpec = {
    type: 'list',
    optional: true,
    minLength: 1,
    item: { type: 'object', fields: { name: { type: 'text' }, change: { type: 'object', fields: change } } },
  };
  return { ...own, whatIf };
}

/** The fields of a job, once texts with units have become numbers, its changes left out. */
const ownFields = (): FieldSpecs => ({
  format: { type: 'choice', values: ['spindlewright-job-1'] },
  title: { type: 'text' },
  date: { type: 'text' },
  invented: { type: 'flag', optional: true },
  bike: { type: 'text' },
  side: { type: 'choice', values: ['drive', 'non-drive'] },
  interface: { type: 'object', fields: { spindle: { type: 'text' }, arm: { type: 'text' } } },
  observations: { ...observations(), optional: true },
  measurements,
  otherSide: { type: 'object', optional: true, fields: { observations: observations(), measurements } },
  wrench: {
    type: 'object',
    optional: true,
    fields: {
      unit: { type: 'choice', values: ['Nm', 'lbf.in', 'lbf.ft', 'kgf.cm'] },
      lowestSetting: { type: 'number', unit: 'of its scale', min: 0, max: 10_000 },
      highestSetting: { type: 'number', unit: 'of its scale', min: 0.1, max: 10_000 },
      lengthMm: { type: 'number', unit: 'mm', min: 50, max: 1500, optional: true },
    },
  },
  candidates: {
    type: 'list',
    optional: true,
    minLength: 1,
    item: { type: 'object', fields: { name: { type: 'text' }, interface: { type: 'text' }, arm: armFields, trialFit } },
  },
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
  arm: armFields,
  trialFit,
  flats: { type: 'choice', values: ['greased', 'dry', 'unknown'], optional: true },
  clamp: {
    type: 'object',
    optional: true,
    fields: {
      slotGapMm: { type: 'measurand', unit: 'mm', min: -9, max: 19, optional: true },
      axialPlayMm: depth(10),
      boltCount: { type: 'number', unit: 'bolts', min: 1, max: 6, optional: true },
      clampWidthMm: wanted(90),
      hingeToBoltMm: wanted(190),
      hingeToAxisMm: wanted(190),
      safetyCatch: { type: 'choice', values: ['engaged', 'not-engaged', 'none', 'unknown'], optional: true },
    },
  },
  spline: {
    type: 'object',
    optional: true,
    fields: {
      forceToStopN: { type: 'measurand', unit: 'N', min: 1, max: 200_000, optional: true },
      gapByHandMm: depth(19),
      gapAtTorqueMm: depth(19),
    },
  },
  cotter: {
    type: 'object',
    optional: true,
    fields: {
      pressForceN: { type: 'measurand', unit: 'N', min: 0, max: 100_000, optional: true },
      flatAngleDeg: { type: 'measurand', unit: 'deg', min: 0.1, max: 20, optional: true },
      flatLengthMm: wanted(45),
      flatWidthMm: wanted(45),
      axisToFlatMm: wanted(45),
      sameWayRound: { type: 'flag', optional: true },
    },
  },
  faceTeeth: {
    type: 'object',
    optional: true,
    fields: {
      flankAngleDeg: { type: 'measurand', unit: 'deg', min: 1, max: 60, optional: true },
      outerDiameterMm: wanted(190),
      innerDiameterMm: { type: 'measurand', unit: 'mm', min: 0, max: 200, optional: true },
    },
  },
  bar: {
    type: 'object',
    optional: true,
    fields: {
      crankLengthMm: { type: 'measurand', unit: 'mm', min: 50, max: 300, optional: true },
      overhangMm: { type: 'measurand', unit: 'mm', min: 0, max: 300, optional: true },
      barDiameterMm: wanted(90),
      yieldStrengthMPa: { type: 'measurand', unit: 'MPa', min: 1, max: 5000, optional: true },
    },
  },
  fixing: {
    type: 'object',
    optional: true,
    fields: {
      thread: { type: 'text' },
      lubrication: { type: 'choice', values: ['lubricated', 'dry', 'unknown'] },
      spindleThread: { type: 'text', optional: true },
      propertyClass: { type: 'text', optional: true },
      lengthUnderHeadMm: length(100),
      threadDepthMm: length(100),
      washerThicknessMm: depth(10),
      head: { type: 'choice', values: ['plain', 'flanged'], optional: true },
      extras: {
        type: 'list',
        item: { type: 'choice', values: ['dust-cap', 'self-extractor-ring'] },
        optional: true,
      },
      bearingOuterDiameterMm: { type: 'measurand', unit: 'mm', min: 7, max: 40, optional: true },
    },
  },
  partMakerTorqueNm: { type: 'measurand', unit: 'Nm', above: 0, max: 120, optional: true },
  rates: {
    type: 'object',
    optional: true,
    fields: {
      unit: { type: 'text' },
      chargePerMinute: { type: 'number', unit: 'of its currency', min: 0, max: 1e6 },
      work: {
        type: 'list',
        optional: true,
        item: {
          type: 'object',
          fields: {
            action: { type: 'choice', values: listActions().map(({ id }) => id) },
            minutes: { type: 'number', unit: 'min', min: 0, max: 10_000 },
          },
        },
      },
      parts: {
        type: 'list',
        optional: true,
        item: {
          type: 'object',
          fields: {
            part: { type: 'choice', values: ['arm', 'spindle', 'fixing', 'bearing'] },
            value: { type: 'number', unit: 'of its currency', min: 0, max: 1e9 },
            unit: { type: 'text' },
          },
        },
      },
    },
  },
});
