import { jsonSchemaOf } from '@spindlewright/quantity/schema';
import { describe, expect, it } from 'vitest';
import type { z } from 'zod/v4';
import * as torque from './index.ts';
import * as schemas from './schema.ts';

const thread = torque.threadFor('M8x1');
const bearing = { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0.5 };
const joint = { thread, threadFriction: 0.12, bearingFriction: 0.12, bearing } as const;
const classB = { lower: 0.08, nominal: 0.12, upper: 0.16 };
const rangeInput = {
  torqueNm: { value: 40, standardUncertainty: 1 },
  tool: 'click-wrench-iso-6789',
  thread,
  threadFriction: classB,
  bearingFriction: classB,
  bearing,
  propertyClass: '10.9',
};
const fixingInput = {
  fixing: 'bolt',
  thread,
  lengthUnderHeadMm: 22,
  endGapMm: classB,
  travelMm: 0,
  bearing,
} as const;
const limitInput = { thread, propertyClass: '8.8', threadFriction: 0.12, bearing };

const reachInput = { targetTorqueNm: 40, lowestSettingNm: 6.8, highestSettingNm: 33.9, wrenchLengthMm: 250 };
const springs = { boltStiffnessNPerMm: 1e5, memberStiffnessNPerMm: 3e5 };
const packInput = { layers: [{ thicknessMm: 9, modulusGPa: 71 }], faceDiameterMm: 16, holeDiameterMm: 9 };
const fitInput = { nominalDiameterMm: 8, gripLengthMm: 16, modulusGPa: 71, material: 'aluminium' } as const;
const testInput = { torqueNm: 40, preloadN: { value: 25_000, standardUncertainty: 100 }, thread, bearing };
const angleInput = { ...springs, thread, snugPreloadN: 1, targetPreloadN: 2000 };
const thermalInput = {
  ...springs,
  preloadN: 1,
  temperatureChangeKelvin: -9,
  clampedLengthMm: 9,
  boltExpansionPerKelvin: 12e-6,
  memberExpansionPerKelvin: 23e-6,
};
const { torqueNm: _, ...holdJoint } = rangeInput;
const holdInput = { neededPreloadN: 9000, ...holdJoint };
const failInput = { thread, propertyClass: '8.8', loadN: 0, engagementMm: 8, tappedShearStrengthMPa: 180 };

const samples: [string, z.ZodType, unknown][] = [
  ['thread', schemas.threadSchema, thread],
  ['torqueFromPreload in', schemas.torqueFromPreloadInputSchema, { preloadN: 1, ...joint }],
  [
    'torqueFromPreload in, bare',
    schemas.torqueFromPreloadInputSchema,
    { preloadN: 1, thread, nutFactor: 0.2, method: 'nut-factor' },
  ],
  ['torqueFromPreload', schemas.torqueFromPreloadSchema, torque.torqueFromPreload({ preloadN: 1, ...joint })],
  ['preloadFromTorque in', schemas.preloadFromTorqueInputSchema, { torqueNm: 1, ...joint }],
  ['preloadFromTorque', schemas.preloadFromTorqueSchema, torque.preloadFromTorque({ torqueNm: 1, ...joint })],
  ['propertyClass', schemas.propertyClassSchema, torque.propertyClass('A2-70', 8)],
  ['assemblyLimit in', schemas.assemblyLimitInputSchema, limitInput],
  ['assemblyLimit', schemas.assemblyLimitSchema, torque.assemblyLimit(limitInput)],
  ['preloadRange in', schemas.preloadRangeInputSchema, rangeInput],
  ['preloadRange', schemas.preloadRangeSchema, torque.preloadRange(rangeInput)],
  ['preloadDistribution in', schemas.preloadDistributionInputSchema, { ...rangeInput, samples: 100, seed: 0 }],
  [
    'preloadDistribution',
    schemas.preloadDistributionSchema,
    torque.preloadDistribution({ ...rangeInput, samples: 100, seed: 0, belowN: [20_000] }),
  ],
  ['toolTorque', schemas.toolTorqueSchema, torque.toolTorque({ torqueNm: 5, tool: 'by-feel' })],
  ['targetTorque in', schemas.targetTorqueInputSchema, { maximumTorqueNm: 5, tool: 'by-feel' }],
  ['targetTorque', schemas.targetTorqueSchema, torque.targetTorque({ maximumTorqueNm: 5, tool: 'by-feel' })],
  [
    'wrenchSetting in',
    schemas.wrenchSettingInputSchema,
    { targetTorqueNm: 1, wrenchLengthMm: 1, extensionLengthMm: 0, extensionAngleDeg: -90 },
  ],
  [
    'wrenchSetting',
    schemas.wrenchSettingSchema,
    torque.wrenchSetting({ targetTorqueNm: 40, wrenchLengthMm: 300, extensionLengthMm: 50 }),
  ],
  ['handForce in', schemas.handForceInputSchema, { torqueNm: 40, leverLengthMm: 100 }],
  ['handForce', schemas.handForceSchema, torque.handForce({ torqueNm: 40, leverLengthMm: 100 })],
  ['headPressure in', schemas.headPressureInputSchema, { preloadN: 1, bearing }],
  ['headPressure', schemas.headPressureSchema, torque.headPressure({ preloadN: 1, bearing })],
  ['checkFixing in', schemas.checkFixingInputSchema, fixingInput],
  ['checkFixing', schemas.fixingCheckSchema, torque.checkFixing(fixingInput)],
  [
    'settlingLoss',
    schemas.settlingLossSchema,
    torque.settlingLoss({ preloadN: 1, settlementUm: 9, boltStiffnessNPerMm: 1e5, memberStiffnessNPerMm: 1e5 }),
  ],
  [
    'settlingLoss in',
    schemas.settlingLossInputSchema,
    { preloadN: 1, settlementUm: 9, boltStiffnessNPerMm: 1, memberStiffnessNPerMm: 1 },
  ],
  ['strippingEngagement in', schemas.strippingEngagementInputSchema, { thread, loadN: 1, shearStrengthMPa: 100 }],
  [
    'strippingEngagement',
    schemas.strippingEngagementSchema,
    torque.strippingEngagement({ thread, loadN: 1, shearStrengthMPa: 100 }),
  ],
  [
    'torqueTable',
    schemas.torqueTableSchema,
    torque.torqueTable({ joints: [{ thread, bearing }], propertyClasses: ['8.8'], frictions: [0.1] }),
  ],
  ['memberStiffness in', schemas.memberStiffnessInputSchema, packInput],
  ['memberStiffness', schemas.memberStiffnessSchema, torque.memberStiffness(packInput)],
  ['wilemanStiffness in', schemas.wilemanStiffnessInputSchema, fitInput],
  ['wilemanStiffness', schemas.wilemanStiffnessSchema, torque.wilemanStiffness(fitInput)],
  ['loadFactor in', schemas.loadFactorInputSchema, { ...springs, preloadN: 1, externalLoadN: 0 }],
  ['loadFactor', schemas.loadFactorSchema, torque.loadFactor({ ...springs, preloadN: 1, externalLoadN: 0 })],
  ['frictionFromTest in', schemas.frictionFromTestInputSchema, testInput],
  ['frictionFromTest', schemas.frictionFromTestSchema, torque.frictionFromTest(testInput)],
  ['frictionRange', schemas.frictionRangeSchema, torque.frictionRange({ of: 'E' })],
  [
    'tighteningScatter',
    schemas.tighteningScatterSchema,
    torque.tighteningScatter({ meanPreloadN: 1, method: 'handbook-feel' }),
  ],
  [
    'minimumEngagement',
    schemas.minimumEngagementSchema,
    torque.minimumEngagement({ thread, pitch: 'fine', propertyClass: '8.8', nutMaterial: 'S235' }),
  ],
  ['angleTightening in', schemas.angleTighteningInputSchema, angleInput],
  ['angleTightening', schemas.angleTighteningSchema, torque.angleTightening(angleInput)],
  ['thermalPreload in', schemas.thermalPreloadInputSchema, thermalInput],
  ['thermalPreload', schemas.thermalPreloadSchema, torque.thermalPreload(thermalInput)],
  ['torqueToHold in', schemas.torqueToHoldInputSchema, holdInput],
  ['torqueToHold', schemas.torqueToHoldSchema, torque.torqueToHold(holdInput)],
  ['firstToFail in', schemas.firstToFailInputSchema, failInput],
  ['firstToFail', schemas.firstToFailSchema, torque.firstToFail(failInput)],
  ['metricThread in', schemas.metricThreadInputSchema, { nominalDiameterMm: 8, pitchMm: 1, hand: 'left' }],
  ['unifiedThread in', schemas.unifiedThreadInputSchema, { nominalDiameterIn: 0.5625, threadsPerInch: 20 }],
  ['boltStiffness in', schemas.boltStiffnessInputSchema, { segments: [{ areaMm2: 39, lengthMm: 9 }], modulusGPa: 205 }],
  [
    'frustumStiffness in',
    schemas.frustumStiffnessInputSchema,
    { outerFaceDiameterMm: 16, holeDiameterMm: 9, thicknessMm: 10, modulusGPa: 71 },
  ],
  ['toolTorque in', schemas.toolTorqueInputSchema, { torqueNm: 40, tool: 'by-feel' }],
  ['frictionRange in', schemas.frictionRangeInputSchema, { of: 'B' }],
  ['tighteningScatter in', schemas.tighteningScatterInputSchema, { meanPreloadN: 1, method: 'by-feel' }],
  [
    'minimumEngagement in',
    schemas.minimumEngagementInputSchema,
    { thread, pitch: 'fine', propertyClass: '8.8', nutMaterial: 'steel' },
  ],
  [
    'torqueTable in',
    schemas.torqueTableInputSchema,
    { joints: [{ thread, bearing }], propertyClasses: ['8.8'], frictions: [0.1] },
  ],
  ['wrenchReach in', schemas.wrenchReachInputSchema, reachInput],
  ['wrenchReach', schemas.wrenchReachSchema, torque.wrenchReach(reachInput)],
  ['boltSegment', schemas.boltSegmentSchema, { areaMm2: 1, lengthMm: 1 }],
];

describe('schemas', () => {
  it.each(samples)('%s: takes what the functions take and give, and nothing more', (_name, schema, value) => {
    expect(schema.safeParse(value).error).toBeUndefined();
    expect(schema.safeParse({ ...(value as object), odd: 1 }).success).toBe(false);
    expect(schema.safeParse(JSON.parse(JSON.stringify(value))).data).toEqual(value);
  });

  it.each(samples)('%s: has a JSON Schema', (_name, schema) => {
    expect(jsonSchemaOf(schema, 'sample').$id).toBe('urn:spindlewright:schema:sample');
  });

  it('are there for every function that takes an object', () => {
    // Columns hold arrays of a million rows, which a schema would walk one by one; writers take a result that has a schema;
    // the rest take an id or a designation.
    const without = /Columns$|^torqueTable(Csv|Markdown)$|^(propertyClass|threadFor|listTradeTorques)$/;
    const functions = Object.entries(torque).flatMap(([name, value]) => (typeof value === 'function' ? [name] : []));
    expect(functions.length).toBeGreaterThan(30);
    const missing = functions.filter((name) => !without.test(name) && !Object.hasOwn(schemas, `${name}InputSchema`));
    expect(missing).toEqual([]);
  });

  it('refuse what the functions refuse', () => {
    const refused: [z.ZodType, unknown][] = [
      [schemas.torqueFromPreloadInputSchema, { preloadN: 1, ...joint, threadFriction: 1.5 }],
      [schemas.torqueFromPreloadInputSchema, { preloadN: -1, ...joint }],
      [schemas.threadSchema, { ...thread, pitchMm: 1.25 }],
      [schemas.bearingSchema, { outerDiameterMm: 9, holeDiameterMm: 9 }],
      [schemas.bearingSchema, { outerDiameterMm: 12, squareHoleMm: 12.6 }],
      [schemas.preloadRangeInputSchema, { ...rangeInput, threadFriction: { value: 0.1, standardUncertainty: 0.04 } }],
      [schemas.preloadRangeInputSchema, { ...rangeInput, bearingFriction: { lower: 0.1, nominal: 0.2, upper: 1.1 } }],
      [schemas.preloadRangeInputSchema, { ...rangeInput, torqueNm: -1 }],
      [schemas.targetTorqueInputSchema, { maximumTorqueNm: 1 }],
      [schemas.checkFixingInputSchema, { ...fixingInput, fixing: 'nut' }],
      [schemas.metricThreadInputSchema, { nominalDiameterMm: 8, pitchMm: 5 }],
      [schemas.unifiedThreadInputSchema, { nominalDiameterIn: 0.5, threadsPerInch: 2 }],
      [
        schemas.frustumStiffnessInputSchema,
        { outerFaceDiameterMm: 9, holeDiameterMm: 9, thicknessMm: 10, modulusGPa: 71 },
      ],
      [schemas.torqueTableInputSchema, { joints: [], propertyClasses: ['8.8'], frictions: [0.1] }],
    ];
    for (const [schema, value] of refused) expect(schema.safeParse(value).success).toBe(false);
  });
});
