// Every finding of the package, each raised by an input whose numbers are worked by hand: the sentence is filled in, and
// `values`, `path` and `sources` say what it rests on.
import type { Finding } from '@spindlewright/quantity';
import {
  angleTightening,
  assemblyLimit,
  checkFixing,
  type FixingBolt,
  type FixingNut,
  firstToFail,
  frictionFromTest,
  frictionRange,
  handForce,
  headPressure,
  loadFactor,
  preloadFromTorque,
  preloadRange,
  propertyClass,
  settlingLoss,
  strippingEngagement,
  thermalPreload,
  threadFor,
  torqueFromPreload,
  wilemanStiffness,
  wrenchReach,
  wrenchSetting,
} from '@spindlewright/torque';
import { messages, type TorqueFindingCode } from '@spindlewright/torque/messages/en';
import { describe, expect, it } from 'vitest';

interface Expected {
  severity: Finding['severity'];
  values?: Record<string, number | string>;
  path?: string;
  sources?: string[];
}
type Case = [code: TorqueFindingCode, findings: () => readonly Finding[], expected: Expected];

const thread = threadFor('M8x1');
const VDI = 'vdi-2230-2001-quoted';
const friction = { lower: 0.08, nominal: 0.12, upper: 0.16 };
const face = { outerDiameterMm: 16, holeDiameterMm: 9 };
const joint = { thread, threadFriction: 0.12, bearingFriction: 0.12, bearing: face };
const range = { ...joint, torqueNm: { lower: 38, nominal: 40, upper: 42 } };
const wide = { ...range, threadFriction: friction, bearingFriction: friction };

// Linear form of VDI 2230, radius under the head (16 + 9)/4: lever arms in mm at a friction of 0.02 and 0.01.
const riseMm = 0.16;
const slipperyMm = 0.58 * thread.pitchDiameterMm * 0.02 + 0.01 * 6.25;

// Stress is in proportion to torque, and by its definition the limit of tightening uses up the yield strength.
const bolt = { thread, propertyClass: { yieldStrengthMPa: 640 }, threadFriction: 0.12, bearing: face };
const usesUpNm = (mu: number): number => {
  const { preloadN } = assemblyLimit({ ...bolt, threadFriction: mu, bearingFriction: mu, utilisation: 1 });
  return torqueFromPreload({ ...joint, threadFriction: mu, bearingFriction: mu, preloadN }).torqueNm;
};
const used = (share: number): readonly Finding[] => {
  const { preloadN } = assemblyLimit({ ...bolt, utilisation: 1 });
  const torqueNm = share * torqueFromPreload({ ...joint, preloadN }).torqueNm;
  return preloadRange({ ...joint, torqueNm, propertyClass: bolt.propertyClass }).findings;
};

// Tip at hand fit 22 - 1.5 - 2.5 = 18, pressed 19 mm below the spindle's end.
const screw: FixingBolt = {
  fixing: 'bolt',
  thread,
  spindleThread: thread,
  lengthUnderHeadMm: 22,
  threadDepthMm: 21,
  washerThicknessMm: 1.5,
  endGapMm: 2.5,
  travelMm: 1,
};
// The nut's face stands 2 + 1.6 = 3.6 mm from the spindle's end at hand fit, 2.6 pressed.
const stud = threadFor('M10x1.25');
const nut: FixingNut = {
  fixing: 'nut',
  thread: stud,
  spindleThread: stud,
  nutHeightMm: 8,
  studLengthMm: 14,
  threadRunoutMm: 2,
  washerThicknessMm: 1.6,
  endGapMm: 2,
  travelMm: 1,
};
const fixing = (base: FixingBolt | FixingNut, change: object) => () =>
  checkFixing({ ...base, ...change } as FixingBolt | FixingNut).findings;
const without = (base: FixingBolt | FixingNut, ...keys: string[]): FixingBolt | FixingNut =>
  Object.fromEntries(Object.entries(base).filter(([key]) => !keys.includes(key))) as unknown as FixingBolt;
const square = { outerDiameterMm: 17, squareHoleMm: 12.6 };
const about = (middle: number): object => ({ lower: middle - 0.1, nominal: middle, upper: middle + 0.1 });

const stiffness = { boltStiffnessNPerMm: 250_000, memberStiffnessNPerMm: 1_000_000 };
const fails = { thread, propertyClass: '8.8', loadN: 15_000, engagementMm: 8, tappedShearStrengthMPa: 180 };
// Basic sizes: seven eighths of the pitch shear at the major diameter.
const tappedMm2PerMm = Math.PI * 8 * (7 / 8);

const cases: Case[] = [
  [
    'angle-too-fine',
    // 20 kN (1/250 + 1/1000) mm/kN = 0.1 mm = 36 degrees; five of them are 5/36.
    () => angleTightening({ thread, ...stiffness, snugPreloadN: 5000, targetPreloadN: 25_000 }).findings,
    { severity: 'caution', values: { sharePercent: 500 / 36 } },
  ],
  [
    'beyond-assembly-limit',
    () => used(0.95),
    { severity: 'caution', values: { utilisationPercent: 95, limitPercent: 90 } },
  ],
  ['beyond-yield', () => used(1.1), { severity: 'stop', values: { utilisationPercent: 110 } }],
  [
    'beyond-yield-if-slippery',
    // Within yield at a friction of 0.12, the torque that uses it up at 0.08 is smaller still.
    () =>
      preloadRange({
        ...joint,
        threadFriction: friction,
        bearingFriction: friction,
        torqueNm: 0.95 * usesUpNm(0.12),
        propertyClass: bolt.propertyClass,
      }).findings,
    { severity: 'caution', values: { utilisationPercent: (95 * usesUpNm(0.12)) / usesUpNm(0.08) } },
  ],
  [
    'bolt-too-short',
    fixing(screw, { threadStartMm: 11.5 }),
    { severity: 'stop', values: { engagementMm: 7.5, neededMm: 8, neededDiameters: 1 }, sources: [VDI] },
  ],
  ['bottoms-in-hole', fixing(screw, { threadDepthMm: 17.5 }), { severity: 'stop', values: { overlapMm: 1.5 } }],
  [
    'bottoms-when-pressed',
    fixing(screw, { threadDepthMm: 18.5 }),
    { severity: 'stop', values: { overlapMm: 0.5, travelMm: 1 } },
  ],
  [
    'clamps-the-spindle',
    fixing(screw, { endGapMm: 0.5, threadDepthMm: 30 }),
    { severity: 'stop', values: { endGapMm: 0.5, travelMm: 1 }, path: 'endGapMm' },
  ],
  [
    'exact-torque-assumed',
    () => preloadRange({ ...wide, torqueNm: 40 }).findings,
    { severity: 'caution', path: 'torqueNm' },
  ],
  [
    'fails-under-load',
    // Stripping area x strength x 8 mm of engagement.
    () => firstToFail({ ...fails, loadN: 60_000, tappedShearStrengthMPa: 100 }).findings,
    { severity: 'stop', values: { forceN: tappedMm2PerMm * 100 * 8, loadN: 60_000 } },
  ],
  [
    'few-turns-at-start',
    fixing(screw, { travelMm: 15, endGapMm: 17 }),
    { severity: 'caution', values: { turns: 3.5 } },
  ],
  [
    'fit-from-memory',
    () => wilemanStiffness({ nominalDiameterMm: 12, gripLengthMm: 24, modulusGPa: 71, material: 'aluminium' }).findings,
    { severity: 'note', path: 'material' },
  ],
  [
    'friction-unbounded',
    // Class E of VDI 2230: 0.30 or more.
    () => frictionRange({ of: 'E' }).findings,
    { severity: 'caution', values: { minFriction: 0.3 }, sources: [VDI] },
  ],
  [
    'friction-unusual',
    () => preloadFromTorque({ ...joint, torqueNm: 40, threadFriction: 0.5 }).findings,
    {
      severity: 'note',
      values: { friction: 0.5, lowest: 0.04, highest: 0.35 },
      path: 'threadFriction',
      sources: [VDI],
    },
  ],
  [
    'friction-unusual',
    () => preloadRange({ ...wide, bearingFriction: { lower: 0.02, nominal: 0.1, upper: 0.2 } }).findings,
    {
      severity: 'note',
      values: { friction: 0.02, lowest: 0.04, highest: 0.35 },
      path: 'bearingFriction',
      sources: [VDI],
    },
  ],
  [
    'friction-unusual',
    () =>
      // Nothing but the rise of the thread and half a newton metre: a total friction near 0.
      frictionFromTest({ torqueNm: 25 / (2 * Math.PI) + 0.5, preloadN: 25_000, thread, bearing: face }).findings,
    {
      severity: 'note',
      values: { friction: 20e-3 / (0.577 * thread.pitchDiameterMm + 6.25), lowest: 0.04, highest: 0.35 },
      path: 'torqueNm',
      sources: [VDI],
    },
  ],
  [
    'friction-without-range',
    () => preloadRange({ ...wide, threadFriction: 0.12 }).findings,
    { severity: 'caution', path: 'threadFriction' },
  ],
  [
    'friction-without-range',
    () => preloadRange({ ...wide, bearingFriction: 0.12 }).findings,
    { severity: 'caution', path: 'bearingFriction' },
  ],
  [
    'hand-force-high',
    () => handForce({ torqueNm: 50, leverLengthMm: 100 }).findings,
    { severity: 'caution', values: { forceN: 500 }, path: 'leverLengthMm' },
  ],
  [
    'head-misses-corners',
    fixing(screw, { bearing: square }),
    { severity: 'caution', values: { outerDiameterMm: 17, cornerMm: 12.6 * Math.SQRT2 }, path: 'bearing' },
  ],
  [
    'head-pressure-high',
    () => headPressure({ preloadN: 25_000, bearing: face, limitingPressureMPa: 150 }).findings,
    {
      severity: 'caution',
      values: { pressureMPa: 25_000 / ((Math.PI / 4) * (16 ** 2 - 9 ** 2)), limitMPa: 150 },
      sources: ['vdi-2230-table-4-quoted'],
    },
  ],
  [
    'hole-depth-for-thread',
    fixing(without(screw, 'threadDepthMm'), { holeDepthMm: 30 }),
    { severity: 'caution', path: 'threadDepthMm' },
  ],
  [
    'left-hand-thread',
    () => torqueFromPreload({ ...joint, preloadN: 1000, thread: threadFor('M8x1-LH') }).findings,
    { severity: 'note', path: 'thread' },
  ],
  [
    'left-hand-thread',
    () => preloadRange({ ...wide, thread: threadFor('M8x1-LH') }).findings,
    { severity: 'note', path: 'thread' },
  ],
  [
    'lumped-friction',
    () => preloadFromTorque({ torqueNm: 40, thread, nutFactor: 0.2, method: 'nut-factor' }).findings,
    { severity: 'note', path: 'nutFactor' },
  ],
  [
    'may-be-short',
    fixing(screw, { threadStartMm: about(11) }),
    { severity: 'caution', values: { lowerMm: 7.9, upperMm: 8.1, neededMm: 8 }, sources: [VDI] },
  ],
  [
    'may-bottom',
    fixing(screw, { threadDepthMm: about(19) }),
    { severity: 'caution', values: { lowerMm: -0.1, upperMm: 0.1 } },
  ],
  [
    // The shank ends 19 - 19 = 0 mm deep, where the thread begins.
    'may-bottom',
    fixing(screw, { threadLengthMm: about(19) }),
    { severity: 'caution', values: { lowerMm: -0.1, upperMm: 0.1 } },
  ],
  [
    'may-clamp-the-spindle',
    fixing(screw, { endGapMm: { lower: 0.8, nominal: 1.5, upper: 1.7 }, threadDepthMm: 30 }),
    { severity: 'caution', values: { lowerMm: -0.2, upperMm: 0.7 }, path: 'endGapMm' },
  ],
  [
    'member-yields-unknown',
    () => headPressure({ preloadN: 25_000, bearing: face }).findings,
    { severity: 'note', path: 'limitingPressureMPa' },
  ],
  ['nearly-bottoms', fixing(nut, {}), { severity: 'caution', values: { clearanceMm: 0.6 } }],
  [
    'nut-not-filled',
    fixing(nut, { studLengthMm: 10.5 }),
    { severity: 'stop', values: { engagementMm: 7.9, neededMm: 8 }, sources: [VDI] },
  ],
  [
    'nut-runs-out-of-thread',
    fixing(without(nut, 'washerThicknessMm'), {}),
    { severity: 'stop', values: { overlapMm: 1 } },
  ],
  [
    'one-friction-value',
    () => assemblyLimit({ ...bolt, propertyClass: '8.8' }).findings,
    { severity: 'note', path: 'threadFriction' },
  ],
  [
    'outside-class-sizes',
    () => propertyClass('10.9', 42).findings,
    { severity: 'caution', values: { diameterMm: 42 }, path: 'nominalDiameterMm' },
  ],
  [
    'outside-class-sizes',
    // Whoever looks a class up hands on what is said about it.
    () => preloadRange({ ...wide, thread: threadFor('M42x3'), propertyClass: '10.9' }).findings,
    { severity: 'caution', values: { diameterMm: 42 }, path: 'nominalDiameterMm' },
  ],
  [
    'outside-class-sizes',
    () => firstToFail({ ...fails, thread: threadFor('M42x3'), propertyClass: '10.9' }).findings,
    { severity: 'caution', values: { diameterMm: 42 }, path: 'nominalDiameterMm' },
  ],
  [
    'outside-stiffness-fit',
    () => wilemanStiffness({ nominalDiameterMm: 12, gripLengthMm: 5, modulusGPa: 207 }).findings,
    { severity: 'caution', values: { slenderRatio: 2.4 }, path: 'gripLengthMm' },
  ],
  [
    'parts-come-apart',
    // A bolt as stiff as the parts takes half of the load: apart at twice the preload.
    () =>
      loadFactor({ boltStiffnessNPerMm: 1e5, memberStiffnessNPerMm: 1e5, preloadN: 5000, externalLoadN: 12_000 })
        .findings,
    { severity: 'stop', values: { externalLoadN: 12_000, separationLoadN: 10_000 } },
  ],
  [
    'prevailing-not-overcome',
    () => preloadFromTorque({ ...joint, torqueNm: 5, prevailingTorqueNm: 6 }).findings,
    { severity: 'stop', values: { torqueNm: 5, prevailingTorqueNm: 6 } },
  ],
  [
    'pull-at-the-grip',
    () => wrenchSetting({ targetTorqueNm: 40, wrenchLengthMm: 300, extensionLengthMm: 75 }).findings,
    { severity: 'note', values: { wrenchLengthMm: 300 } },
  ],
  [
    'pull-at-the-grip',
    () =>
      wrenchReach({ targetTorqueNm: 40, lowestSettingNm: 6.8, highestSettingNm: 33.9, wrenchLengthMm: 250 }).findings,
    { severity: 'note', values: { wrenchLengthMm: 250 } },
  ],
  ['runout-unknown', fixing(without(nut, 'threadRunoutMm'), {}), { severity: 'caution', path: 'threadRunoutMm' }],
  [
    'self-loosening',
    () =>
      torqueFromPreload({
        ...joint,
        threadFriction: 0.02,
        bearingFriction: 0.01,
        method: 'vdi-2230',
        preloadN: 10_000,
      }).findings,
    { severity: 'caution', values: { looseningTorqueNm: 10 * (slipperyMm - riseMm) } },
  ],
  [
    'self-loosening',
    () => preloadRange({ ...range, threadFriction: 0.02, bearingFriction: 0.01, method: 'vdi-2230' }).findings,
    // The most torque drives the most preload, and that the thread apart hardest.
    {
      severity: 'caution',
      values: { looseningTorqueNm: (42 * (slipperyMm - riseMm)) / (slipperyMm + riseMm) },
    },
  ],
  [
    'settled-slack',
    () => settlingLoss({ ...stiffness, preloadN: 100, settlementUm: 10 }).findings,
    { severity: 'stop' },
  ],
  // Threaded over 15 of its 19 mm below the spindle's end: 4 mm of shank reach in.
  ['shank-jams', fixing(screw, { threadLengthMm: 15 }), { severity: 'stop', values: { overlapMm: 4 } }],
  [
    'spindle-thread-assumed',
    fixing(without(screw, 'spindleThread'), {}),
    { severity: 'note', values: { fixingThread: 'M8x1' }, path: 'spindleThread' },
  ],
  [
    'square-hole-under-head',
    () => preloadRange({ ...wide, bearing: { ...square, outerDiameterMm: 20 } }).findings,
    { severity: 'note', path: 'bearing' },
  ],
  ['stop-unknown', fixing(without(screw, 'threadDepthMm'), {}), { severity: 'caution', path: 'threadDepthMm' }],
  [
    'strips-before-bolt-breaks',
    // The softer thread strips first; class 8.8 breaks at 800 MPa (ISO 898-1).
    () => firstToFail({ ...fails, engagementMm: 4 }).findings,
    {
      severity: 'caution',
      values: { strippingForceN: tappedMm2PerMm * 180 * 4, breakingForceN: 800 * thread.stressAreaMm2 },
    },
  ],
  [
    'strips-under-load',
    () => strippingEngagement({ thread, loadN: 20_000, shearStrengthMPa: 180, engagementMm: 4 }).findings,
    { severity: 'stop', values: { strippingForceN: tappedMm2PerMm * 180 * 4, loadN: 20_000 } },
  ],
  [
    'thermally-slack',
    () =>
      thermalPreload({
        ...stiffness,
        preloadN: 100,
        clampedLengthMm: 20,
        boltExpansionPerKelvin: 12e-6,
        memberExpansionPerKelvin: 24e-6,
        temperatureChangeKelvin: -50,
      }).findings,
    { severity: 'stop' },
  ],
  ['torque-is-no-measure-of-clamp', () => preloadRange(wide).findings, { severity: 'caution' }],
  [
    'washer-missing',
    fixing(without(screw, 'washerThicknessMm'), { bearing: { ...square, outerDiameterMm: 20 } }),
    { severity: 'stop', path: 'washerThicknessMm' },
  ],
  [
    'wrong-thread',
    fixing(screw, { spindleThread: threadFor('M8') }),
    { severity: 'stop', values: { fixingThread: 'M8x1', spindleThread: 'M8x1.25' }, path: 'thread' },
  ],
  [
    'wrench-out-of-reach',
    () =>
      wrenchReach({ targetTorqueNm: 60, lowestSettingNm: 6.8, highestSettingNm: 33.9, wrenchLengthMm: 250 }).findings,
    {
      severity: 'caution',
      values: { targetTorqueNm: 60, lowestSettingNm: 6.8, highestSettingNm: 33.9 },
      path: 'targetTorqueNm',
    },
  ],
];

describe('findings', () => {
  it.each(cases)('%s says what it rests on', (code, findings, { severity, values = {}, path, sources = [] }) => {
    const raised = findings();
    for (const { message } of raised) expect(message).not.toMatch(/[{}]/);
    const [found, ...more] = raised.filter((finding) => finding.code === code);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ severity, sources });
    expect(found?.path).toBe(path);
    expect(Object.keys(found?.values ?? {}).sort()).toEqual(Object.keys(values).sort());
    for (const [name, value] of Object.entries(values)) {
      if (typeof value === 'string') expect(found?.values[name]).toBe(value);
      else expect(found?.values[name]).toBeCloseTo(value, 8);
    }
  });

  it('are all of them tried here', () => {
    expect([...new Set(cases.map(([code]) => code))].sort()).toEqual(Object.keys(messages).sort());
  });
});
