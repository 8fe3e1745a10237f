/**
 * Schemas of the public inputs and results of this package and of its data rows.
 *
 * @packageDocumentation
 */
import type { Measurand } from '@spindlewright/quantity';
import {
  findingSchema,
  limitsInputSchema,
  limitsSchema,
  measurandSchema,
  standingSchema,
} from '@spindlewright/quantity/schema';
import { z } from 'zod/v4';
import type { AngleTightening, angleTightening } from './angle-tightening.ts';
import type { AssemblyLimit, assemblyLimit, Strength } from './assembly-limit.ts';
import type { Bearing } from './bearing.ts';
import type { BoltSegment, boltStiffness } from './bolt-stiffness.ts';
import type { FixingCheck } from './check-fixing.ts';
import type { TradeTorqueRow } from './data.ts';
import type { FirstToFail, firstToFail } from './first-to-fail.ts';
import type { FixingBolt, FixingNut } from './fixing-input.ts';
import type { FixingStage } from './fixing-stage.ts';
import type { FrictionFromTest, frictionFromTest } from './friction-from-test.ts';
import type { FrictionRange, frictionRange as frictionRangeOf } from './friction-range.ts';
import type { frustumStiffness } from './frustum-stiffness.ts';
import type { HandForce, handForce } from './hand-force.ts';
import type { HeadPressure, headPressure } from './head-pressure.ts';
import type { FrictionJoint, NutFactorJoint, TorqueSplit } from './joint.ts';
import type { LoadFactor, loadFactor } from './load-factor.ts';
import type { MemberStiffness, memberStiffness } from './member-stiffness.ts';
import type { metricThread } from './metric-thread.ts';
import type { MinimumEngagement, minimumEngagement } from './minimum-engagement.ts';
import type { PreloadDistribution, PreloadDistributionInput } from './preload-distribution.ts';
import type { PreloadFromTorque } from './preload-from-torque.ts';
import type { PreloadCorner, PreloadRange, PreloadRangeInput } from './preload-range.ts';
import type { PropertyClass } from './property-class.ts';
import type { SettlingLoss, settlingLoss } from './settling-loss.ts';
import type { StrengthUse } from './strength-use.ts';
import type { StrippingEngagement, strippingEngagement } from './stripping-engagement.ts';
import type { TargetTorque, targetTorque } from './target-torque.ts';
import type { ThermalPreload, thermalPreload } from './thermal-preload.ts';
import { type Thread, threadFault } from './thread.ts';
import type { TighteningScatter, tighteningScatter } from './tightening-scatter.ts';
import type { ToolTorque, toolTorque } from './tool-torque.ts';
import type { TorqueFromPreload } from './torque-from-preload.ts';
import type { TorqueTable, TorqueTableRow, torqueTable } from './torque-table.ts';
import type { TorqueToHold, TorqueToHoldInput } from './torque-to-hold.ts';
import type { unifiedThread } from './unified-thread.ts';
import type { WilemanStiffness, wilemanStiffness } from './wileman-stiffness.ts';
import type { WrenchReach, wrenchReach } from './wrench-reach.ts';
import type { WrenchSetting, wrenchSetting } from './wrench-setting.ts';

const positive = z.number().positive();
const notNegative = z.number().min(0);
const friction = z.number().positive().max(1);
const text = z.string().min(1);
const texts = z.array(text);
const findings = z.array(findingSchema);
const deciding = { sources: texts, dataEdition: text, findings };
const method = z.enum(['exact', 'vdi-2230', 'nut-factor']);

/** Bounds of every value that a measurand may take: the limits, or 3 u about a reading. */
const bounds = (value: Measurand): [number, number] => {
  if (typeof value === 'number') return [value, value];
  if ('value' in value) {
    return [value.value - 3 * value.standardUncertainty, value.value + 3 * value.standardUncertainty];
  }
  return [value.lower, value.upper];
};

const frictionRange = measurandSchema.refine((value) => bounds(value)[0] > 0 && bounds(value)[1] <= 1, {
  message: 'friction lies above 0, at most at 1',
});
const notNegativeRange = measurandSchema.refine((value) => bounds(value)[0] >= 0, { message: 'at least 0' });

/** Schema of a {@link Thread}: sizes that belong together. */
export const threadSchema: z.ZodType<Thread> = z
  .strictObject({
    designation: text,
    majorDiameterMm: positive,
    pitchMm: positive,
    pitchDiameterMm: positive,
    minorDiameterMm: positive,
    internalMinorDiameterMm: positive,
    stressDiameterMm: positive,
    stressAreaMm2: positive,
    leadAngleDeg: positive.max(20),
    hand: z.enum(['right', 'left']),
  })
  .refine((thread) => threadFault(thread) === undefined, { message: 'the sizes contradict each other' });

/** Schema of a {@link Bearing}: the hole leaves a ring. */
export const bearingSchema: z.ZodType<Bearing> = z.union([
  z
    .strictObject({ outerDiameterMm: positive, holeDiameterMm: notNegative })
    .refine((face) => face.holeDiameterMm < face.outerDiameterMm, { message: 'the hole is smaller than the face' }),
  z
    .strictObject({ outerDiameterMm: positive, squareHoleMm: positive, cornerReliefMm: notNegative.exactOptional() })
    .refine((face) => face.squareHoleMm < face.outerDiameterMm, { message: 'the square is smaller than the face' }),
]);

/** Schema of a {@link Strength}. */
export const strengthSchema: z.ZodType<Strength> = z.union([text, z.object({ yieldStrengthMPa: positive })]);

const frictionJoint = {
  thread: threadSchema,
  threadFriction: friction,
  bearingFriction: friction,
  bearing: bearingSchema,
  method: method.exactOptional(),
};
const prevailing = { prevailingTorqueNm: notNegative.exactOptional() };
const nutFactorJoint = { thread: threadSchema, nutFactor: friction, method: z.literal('nut-factor') };

/** Schema of the input of `torqueFromPreload`. */
export const torqueFromPreloadInputSchema: z.ZodType<
  { preloadN: number; prevailingTorqueNm?: number } & (FrictionJoint | NutFactorJoint)
> = z.union([
  z.strictObject({ preloadN: notNegative, ...prevailing, ...frictionJoint }),
  z.strictObject({ preloadN: notNegative, ...prevailing, ...nutFactorJoint }),
]);

/** Schema of the input of `preloadFromTorque`. */
export const preloadFromTorqueInputSchema: z.ZodType<
  { torqueNm: number; prevailingTorqueNm?: number } & (FrictionJoint | NutFactorJoint)
> = z.union([
  z.strictObject({ torqueNm: notNegative, ...prevailing, ...frictionJoint }),
  z.strictObject({ torqueNm: notNegative, ...prevailing, ...nutFactorJoint }),
]);

/** Schema of a {@link TorqueSplit}. */
export const torqueSplitSchema: z.ZodType<TorqueSplit> = z.strictObject({
  pitchNm: notNegative,
  threadFrictionNm: notNegative.nullable(),
  bearingFrictionNm: notNegative.nullable(),
  frictionNm: z.number(),
  prevailingNm: notNegative,
});

const jointTorques = {
  looseningTorqueNm: z.number(),
  nutFactor: positive,
  split: torqueSplitSchema,
  frictionRadiusMm: positive.nullable(),
  findings,
};

/** Schema of a {@link TorqueFromPreload}. */
export const torqueFromPreloadSchema: z.ZodType<TorqueFromPreload> = z.strictObject({
  torqueNm: notNegative,
  ...jointTorques,
});

/** Schema of a {@link PreloadFromTorque}. */
export const preloadFromTorqueSchema: z.ZodType<PreloadFromTorque> = z.strictObject({
  preloadN: notNegative,
  ...jointTorques,
});

/** Schema of a {@link PropertyClass}. */
export const propertyClassSchema: z.ZodType<PropertyClass> = z.strictObject({
  propertyClass: text,
  yieldStrengthMPa: positive,
  tensileStrengthMPa: positive,
  proofStressMPa: positive.nullable(),
  ...deciding,
});

/** Schema of the input of `assemblyLimit`. */
export const assemblyLimitInputSchema: z.ZodType<Parameters<typeof assemblyLimit>[0]> = z.strictObject({
  thread: threadSchema,
  propertyClass: strengthSchema,
  threadFriction: friction,
  bearingFriction: friction.exactOptional(),
  bearing: bearingSchema,
  utilisation: friction.exactOptional(),
  torsion: z.enum(['plastic', 'elastic']).exactOptional(),
});

/** Schema of an {@link AssemblyLimit}. */
export const assemblyLimitSchema: z.ZodType<AssemblyLimit> = z.strictObject({
  preloadN: positive,
  torqueNm: positive,
  equivalentStressMPa: positive,
  tensileStressMPa: positive,
  torsionalStressMPa: positive,
  yieldStrengthMPa: positive,
  ...deciding,
});

const rangeJoint = {
  tool: text.exactOptional(),
  thread: threadSchema,
  threadFriction: frictionRange,
  bearingFriction: frictionRange,
  bearing: bearingSchema,
  method: method.exactOptional(),
  propertyClass: strengthSchema.exactOptional(),
  utilisation: friction.exactOptional(),
};

const preloadRangeInput = { torqueNm: notNegativeRange, ...rangeJoint };

/** Schema of a {@link PreloadRangeInput}. */
export const preloadRangeInputSchema: z.ZodType<PreloadRangeInput> = z.strictObject(preloadRangeInput);

/** Schema of a {@link PreloadDistributionInput}. */
export const preloadDistributionInputSchema: z.ZodType<PreloadDistributionInput> = z.strictObject({
  ...preloadRangeInput,
  samples: z.int().min(100).max(1_000_000),
  seed: z.int().min(0).max(4_294_967_295),
  correlation: z
    .array(
      z.strictObject({
        a: z.literal('threadFriction'),
        b: z.literal('bearingFriction'),
        r: z.number().min(0).max(1),
      }),
    )
    .exactOptional(),
  belowN: z.array(notNegative).exactOptional(),
  keepSamples: z.boolean().exactOptional(),
});

const probability = z.number().min(0).max(1);

/** Schema of a {@link PreloadDistribution}. */
export const preloadDistributionSchema: z.ZodType<PreloadDistribution> = z.strictObject({
  preloadN: limitsSchema,
  meanN: notNegative,
  standardDeviationN: notNegative,
  quantiles: z.array(z.strictObject({ probability, preloadN: notNegative })),
  below: z.array(z.strictObject({ preloadN: notNegative, probability })),
  yieldProbability: probability.exactOptional(),
  keptN: z.array(notNegative).exactOptional(),
  samples: z.int(),
  seed: z.int(),
  ...deciding,
});

/** Schema of a {@link PreloadCorner}. */
export const preloadCornerSchema: z.ZodType<PreloadCorner> = z.strictObject({
  torqueNm: notNegative,
  threadFriction: friction,
  bearingFriction: friction,
});

/** Schema of a {@link StrengthUse}. */
export const strengthUseSchema: z.ZodType<StrengthUse> = z.strictObject({
  yieldStrengthMPa: positive,
  equivalentStressMPa: limitsSchema,
  utilisation: limitsSchema,
});

/** Schema of a {@link PreloadRange}. */
export const preloadRangeSchema: z.ZodType<PreloadRange> = z.strictObject({
  preloadN: limitsSchema,
  torqueNm: limitsSchema,
  looseningTorqueNm: limitsSchema,
  corners: z.strictObject({ lower: preloadCornerSchema, nominal: preloadCornerSchema, upper: preloadCornerSchema }),
  tighteningFactor: z.number().min(1).nullable(),
  strength: strengthUseSchema.exactOptional(),
  ...deciding,
});

/** Schema of a {@link ToolTorque}. */
export const toolTorqueSchema: z.ZodType<ToolTorque> = z.strictObject({
  torqueNm: limitsSchema,
  deviationPercent: notNegative,
  sources: texts,
  dataEdition: text,
});

/** Schema of the input of `targetTorque`. */
export const targetTorqueInputSchema: z.ZodType<Parameters<typeof targetTorque>[0]> = z
  .strictObject({
    maximumTorqueNm: notNegative,
    deviationPercent: notNegative.max(99).exactOptional(),
    tool: text.exactOptional(),
  })
  .refine((input) => (input.deviationPercent === undefined) !== (input.tool === undefined), {
    message: 'deviationPercent or tool, one of them',
  });

/** Schema of a {@link TargetTorque}. */
export const targetTorqueSchema: z.ZodType<TargetTorque> = z.strictObject({
  targetTorqueNm: notNegative,
  torqueNm: limitsSchema,
});

/** Schema of the input of `wrenchSetting`. */
export const wrenchSettingInputSchema: z.ZodType<Parameters<typeof wrenchSetting>[0]> = z.strictObject({
  targetTorqueNm: notNegative,
  wrenchLengthMm: positive,
  extensionLengthMm: notNegative,
  extensionAngleDeg: z.number().min(-360).max(360).exactOptional(),
});

/** Schema of a {@link WrenchSetting}. */
export const wrenchSettingSchema: z.ZodType<WrenchSetting> = z.strictObject({
  settingNm: notNegative,
  leverRatio: positive,
  findings,
});

/** Schema of the input of `handForce`. */
export const handForceInputSchema: z.ZodType<Parameters<typeof handForce>[0]> = z.strictObject({
  torqueNm: notNegative,
  leverLengthMm: positive,
  pullAngleDeg: z.number().min(1).max(90).exactOptional(),
});

/** Schema of a {@link HandForce}. */
export const handForceSchema: z.ZodType<HandForce> = z.strictObject({ forceN: notNegative, findings });

/** Schema of the input of `headPressure`. */
export const headPressureInputSchema: z.ZodType<Parameters<typeof headPressure>[0]> = z.strictObject({
  preloadN: notNegative,
  bearing: bearingSchema,
  limitingPressureMPa: positive.exactOptional(),
});

/** Schema of a {@link HeadPressure}. */
export const headPressureSchema: z.ZodType<HeadPressure> = z.strictObject({
  pressureMPa: notNegative,
  areaMm2: positive,
  evenPressureRadiusMm: positive,
  loadRatio: notNegative.nullable(),
  findings,
});

const optionalLimits = limitsInputSchema.exactOptional();
const surroundings = {
  thread: threadSchema,
  spindleThread: threadSchema.exactOptional(),
  endGapMm: limitsInputSchema,
  travelMm: limitsInputSchema,
  washerThicknessMm: optionalLimits,
  head: z.enum(['plain', 'flanged']).exactOptional(),
  bearing: bearingSchema.exactOptional(),
  neededEngagementRatio: positive.exactOptional(),
};

/** Schema of the input of `checkFixing`. */
export const checkFixingInputSchema: z.ZodType<FixingBolt | FixingNut> = z.discriminatedUnion('fixing', [
  z.strictObject({
    fixing: z.literal('bolt'),
    ...surroundings,
    lengthUnderHeadMm: limitsInputSchema,
    threadLengthMm: optionalLimits,
    threadStartMm: optionalLimits,
    threadDepthMm: optionalLimits,
    holeDepthMm: optionalLimits,
  }),
  z.strictObject({
    fixing: z.literal('nut'),
    ...surroundings,
    nutHeightMm: limitsInputSchema,
    studLengthMm: limitsInputSchema,
    threadRunoutMm: optionalLimits,
  }),
]);

/** Schema of a {@link FixingStage}. */
export const fixingStageSchema: z.ZodType<FixingStage> = z.strictObject({
  tipDepthMm: limitsSchema.nullable(),
  clearanceMm: limitsSchema.nullable(),
  engagementMm: limitsSchema,
  engagedTurns: limitsSchema,
});

/** Schema of a {@link FixingCheck}. */
export const fixingCheckSchema: z.ZodType<FixingCheck> = z.strictObject({
  state: z.enum(['fits', 'does-not-fit', 'cannot-tell']),
  missing: text.nullable(),
  handFit: fixingStageSchema,
  pressed: fixingStageSchema,
  dataEdition: text,
  findings,
});

/** Schema of a {@link BoltSegment}. */
export const boltSegmentSchema: z.ZodType<BoltSegment> = z.strictObject({ areaMm2: positive, lengthMm: positive });

/** Schema of the input of `settlingLoss`. */
export const settlingLossInputSchema: z.ZodType<Parameters<typeof settlingLoss>[0]> = z.strictObject({
  preloadN: notNegative,
  settlementUm: notNegative,
  boltStiffnessNPerMm: positive,
  memberStiffnessNPerMm: positive,
});

/** Schema of a {@link SettlingLoss}. */
export const settlingLossSchema: z.ZodType<SettlingLoss> = z.strictObject({
  lossN: notNegative,
  preloadAfterN: notNegative,
  lossPerMicrometreN: positive,
  findings,
});

const limitDiameters = {
  externalMajorDiameterMm: positive.exactOptional(),
  internalPitchDiameterMm: positive.exactOptional(),
  externalPitchDiameterMm: positive.exactOptional(),
  internalMinorDiameterMm: positive.exactOptional(),
};

/** Schema of the input of `strippingEngagement`. */
export const strippingEngagementInputSchema: z.ZodType<Parameters<typeof strippingEngagement>[0]> = z.strictObject({
  thread: threadSchema,
  loadN: notNegative,
  shearStrengthMPa: positive,
  part: z.enum(['tapped', 'bolt']).exactOptional(),
  ...limitDiameters,
  engagementMm: positive.exactOptional(),
});

/** Schema of a {@link StrippingEngagement}. */
export const strippingEngagementSchema: z.ZodType<StrippingEngagement> = z.strictObject({
  shearAreaPerLengthMm: positive,
  engagementMm: notNegative,
  engagedTurns: notNegative,
  strippingForceN: positive.nullable(),
  findings,
});

/** Schema of a {@link TorqueTableRow}. */
export const torqueTableRowSchema: z.ZodType<TorqueTableRow> = z.strictObject({
  designation: text,
  propertyClass: text,
  friction,
  preloadN: positive,
  torqueNm: positive,
  torqueLbfIn: positive,
  torqueLbfFt: positive,
  torqueKgfCm: positive,
});

/** Schema of a {@link TorqueTable}. */
export const torqueTableSchema: z.ZodType<TorqueTable> = z.strictObject({
  rows: z.array(torqueTableRowSchema),
  method,
  utilisation: friction,
  sources: texts,
  dataEdition: text,
});

/** Schema of a {@link TradeTorqueRow}. */
export const tradeTorqueRowSchema: z.ZodType<TradeTorqueRow> = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
    joint: text,
    fastener: text,
    interfaces: texts,
    min: positive,
    max: positive,
    unit: z.enum(['Nm', 'lbf.in', 'lbf.ft']),
    minNm: positive,
    maxNm: positive,
    minLbfIn: positive,
    maxLbfIn: positive,
    minLbfFt: positive,
    maxLbfFt: positive,
    minKgfCm: positive,
    maxKgfCm: positive,
    printedMinNm: positive.exactOptional(),
    printedMaxNm: positive.exactOptional(),
    standing: standingSchema,
    sources: texts,
    note: text.exactOptional(),
  })
  .refine((row) => row.min <= row.max && row.minNm <= row.maxNm, { message: 'min <= max' });

/** Schema of the input of `memberStiffness`. */
export const memberStiffnessInputSchema: z.ZodType<Parameters<typeof memberStiffness>[0]> = z.strictObject({
  layers: z.array(z.strictObject({ thicknessMm: positive, modulusGPa: positive })).min(1),
  faceDiameterMm: positive,
  farFaceDiameterMm: positive.exactOptional(),
  holeDiameterMm: positive,
});

/** Schema of a {@link MemberStiffness}. */
export const memberStiffnessSchema: z.ZodType<MemberStiffness> = z.strictObject({
  stiffnessNPerMm: positive,
  gripLengthMm: positive,
  cones: z.array(
    z.strictObject({
      outerFaceDiameterMm: positive,
      thicknessMm: positive,
      modulusGPa: positive,
      stiffnessNPerMm: positive,
    }),
  ),
});

/** Schema of the input of `wilemanStiffness`. */
export const wilemanStiffnessInputSchema: z.ZodType<Parameters<typeof wilemanStiffness>[0]> = z.strictObject({
  nominalDiameterMm: positive,
  gripLengthMm: positive,
  modulusGPa: positive,
  material: z.enum(['steel', 'aluminium', 'cast-iron', 'general']).exactOptional(),
});

/** Schema of a {@link WilemanStiffness}. */
export const wilemanStiffnessSchema: z.ZodType<WilemanStiffness> = z.strictObject({
  stiffnessNPerMm: positive,
  stiffnessRatio: positive,
  findings,
});

/** Schema of the input of `loadFactor`. */
export const loadFactorInputSchema: z.ZodType<Parameters<typeof loadFactor>[0]> = z.strictObject({
  boltStiffnessNPerMm: positive,
  memberStiffnessNPerMm: positive,
  preloadN: notNegative,
  externalLoadN: notNegative,
});

/** Schema of a {@link LoadFactor}. */
export const loadFactorSchema: z.ZodType<LoadFactor> = z.strictObject({
  loadFactor: probability,
  boltForceN: notNegative,
  clampForceN: notNegative,
  separationLoadN: notNegative,
  findings,
});

/** Schema of the input of `frictionFromTest`. */
export const frictionFromTestInputSchema: z.ZodType<Parameters<typeof frictionFromTest>[0]> = z.strictObject({
  torqueNm: notNegativeRange,
  preloadN: notNegativeRange,
  threadTorqueNm: notNegativeRange.exactOptional(),
  thread: threadSchema,
  bearing: bearingSchema,
});

/** Schema of a {@link FrictionFromTest}. */
export const frictionFromTestSchema: z.ZodType<FrictionFromTest> = z.strictObject({
  totalFriction: limitsSchema,
  nutFactor: limitsSchema,
  threadFriction: limitsSchema.nullable(),
  bearingFriction: limitsSchema.nullable(),
  findings,
});

/** Schema of a {@link FrictionRange}. */
export const frictionRangeSchema: z.ZodType<FrictionRange> = z.strictObject({
  frictionClass: text,
  minFriction: positive,
  maxFriction: positive.nullable(),
  friction: limitsSchema.nullable(),
  standing: text,
  ...deciding,
});

/** Schema of a {@link TighteningScatter}. */
export const tighteningScatterSchema: z.ZodType<TighteningScatter> = z.strictObject({
  bestN: limitsSchema,
  worstN: limitsSchema,
  minTighteningFactor: z.number().min(1),
  maxTighteningFactor: z.number().min(1),
  sources: texts,
  dataEdition: text,
});

/** Schema of a {@link MinimumEngagement}. */
export const minimumEngagementSchema: z.ZodType<MinimumEngagement> = z.strictObject({
  engagementDiametersRatio: positive,
  engagementMm: positive,
  sources: texts,
  dataEdition: text,
});

/** Schema of the input of `angleTightening`. */
export const angleTighteningInputSchema: z.ZodType<Parameters<typeof angleTightening>[0]> = z.strictObject({
  thread: threadSchema,
  snugPreloadN: notNegative,
  targetPreloadN: notNegative,
  boltStiffnessNPerMm: positive,
  memberStiffnessNPerMm: positive,
  travelMm: notNegative.exactOptional(),
});

/** Schema of an {@link AngleTightening}. */
export const angleTighteningSchema: z.ZodType<AngleTightening> = z.strictObject({
  angleDeg: notNegative,
  angleTurns: notNegative,
  preloadNPerDeg: positive,
  fiveDegreeRatio: positive.nullable(),
  findings,
});

/** Schema of the input of `thermalPreload`. */
export const thermalPreloadInputSchema: z.ZodType<Parameters<typeof thermalPreload>[0]> = z.strictObject({
  preloadN: notNegative,
  temperatureChangeKelvin: z.number().min(-500).max(500),
  clampedLengthMm: positive,
  boltExpansionPerKelvin: z.number(),
  memberExpansionPerKelvin: z.number(),
  boltStiffnessNPerMm: positive,
  memberStiffnessNPerMm: positive,
});

/** Schema of a {@link ThermalPreload}. */
export const thermalPreloadSchema: z.ZodType<ThermalPreload> = z.strictObject({
  changeN: z.number(),
  preloadAfterN: notNegative,
  changeNPerKelvin: z.number(),
  findings,
});

/** Schema of a {@link TorqueToHoldInput}. */
export const torqueToHoldInputSchema: z.ZodType<TorqueToHoldInput> = z.strictObject({
  neededPreloadN: positive,
  ...rangeJoint,
});

/** Schema of a {@link TorqueToHold}. */
export const torqueToHoldSchema: z.ZodType<TorqueToHold> = z.strictObject({
  settingNm: positive,
  torqueNm: limitsSchema,
  preloadN: limitsSchema,
  strength: strengthUseSchema.exactOptional(),
  boltBears: z.boolean().nullable(),
  ...deciding,
});

/** Schema of the input of `firstToFail`. */
export const firstToFailInputSchema: z.ZodType<Parameters<typeof firstToFail>[0]> = z.strictObject({
  thread: threadSchema,
  propertyClass: text,
  loadN: notNegative,
  engagementMm: positive,
  tappedShearStrengthMPa: positive,
  boltShearStrengthMPa: positive.exactOptional(),
  threadFriction: friction.exactOptional(),
  bearing: bearingSchema.exactOptional(),
  limitingPressureMPa: positive.exactOptional(),
  ...limitDiameters,
});

const failureMode = z.enum([
  'bolt-yields',
  'bolt-breaks',
  'tapped-thread-strips',
  'bolt-thread-strips',
  'head-sinks-in',
]);

/** Schema of a {@link FirstToFail}. */
export const firstToFailSchema: z.ZodType<FirstToFail> = z.strictObject({
  first: failureMode,
  marginRatio: z.number().min(1),
  modes: z.array(z.strictObject({ mode: failureMode, forceN: positive, reserveRatio: positive.nullable() })),
  ...deciding,
});

const hand = z.enum(['right', 'left']);

/** Schema of the input of `metricThread`. */
export const metricThreadInputSchema: z.ZodType<Parameters<typeof metricThread>[0]> = z
  .strictObject({
    nominalDiameterMm: z.number().min(0.1).max(1000),
    pitchMm: z.number().min(0.01),
    hand: hand.exactOptional(),
  })
  .refine(({ nominalDiameterMm, pitchMm }) => pitchMm <= nominalDiameterMm / 2, {
    message: 'a pitch of at most half the diameter',
  });

/** Schema of the input of `unifiedThread`. */
export const unifiedThreadInputSchema: z.ZodType<Parameters<typeof unifiedThread>[0]> = z
  .strictObject({
    nominalDiameterIn: z.number().min(0.005).max(40),
    threadsPerInch: z.number().min(0.05).max(2500),
    hand: hand.exactOptional(),
  })
  .refine(({ nominalDiameterIn, threadsPerInch }) => 1 / threadsPerInch <= nominalDiameterIn / 2, {
    message: 'a pitch of at most half the diameter',
  });

/** Schema of the input of `boltStiffness`. */
export const boltStiffnessInputSchema: z.ZodType<Parameters<typeof boltStiffness>[0]> = z.strictObject({
  segments: z.array(boltSegmentSchema).min(1),
  modulusGPa: positive.max(1500),
});

/** Schema of the input of `frustumStiffness`. */
export const frustumStiffnessInputSchema: z.ZodType<Parameters<typeof frustumStiffness>[0]> = z
  .strictObject({
    outerFaceDiameterMm: z.number().min(0.1).max(1000),
    holeDiameterMm: z.number().min(0.01).max(1000),
    thicknessMm: positive.max(10_000),
    modulusGPa: positive.max(1500),
  })
  .refine((frustum) => frustum.holeDiameterMm < frustum.outerFaceDiameterMm, {
    message: 'the hole is smaller than the face',
  });

/** Schema of the input of `toolTorque`. */
export const toolTorqueInputSchema: z.ZodType<Parameters<typeof toolTorque>[0]> = z.strictObject({
  torqueNm: notNegativeRange,
  tool: text,
});

/** Schema of the input of `frictionRange`. */
export const frictionRangeInputSchema: z.ZodType<Parameters<typeof frictionRangeOf>[0]> = z.strictObject({ of: text });

/** Schema of the input of `tighteningScatter`. */
export const tighteningScatterInputSchema: z.ZodType<Parameters<typeof tighteningScatter>[0]> = z.strictObject({
  meanPreloadN: notNegative,
  method: text,
});

/** Schema of the input of `minimumEngagement`. */
export const minimumEngagementInputSchema: z.ZodType<Parameters<typeof minimumEngagement>[0]> = z.strictObject({
  thread: threadSchema,
  pitch: z.enum(['coarse', 'fine']),
  propertyClass: text,
  nutMaterial: text,
});

/** Schema of the input of `torqueTable`. */
export const torqueTableInputSchema: z.ZodType<Parameters<typeof torqueTable>[0]> = z.strictObject({
  joints: z.array(z.strictObject({ thread: threadSchema, bearing: bearingSchema })).min(1),
  propertyClasses: z.array(text).min(1),
  frictions: z.array(friction).min(1),
  utilisation: z.number().min(0.01).max(1).exactOptional(),
});

/** Schema of the input of `wrenchReach`. */
export const wrenchReachInputSchema: z.ZodType<Parameters<typeof wrenchReach>[0]> = z
  .strictObject({
    targetTorqueNm: positive,
    lowestSettingNm: notNegative,
    highestSettingNm: positive,
    wrenchLengthMm: positive,
    extensionStepMm: z.number().min(0.1).max(500).exactOptional(),
  })
  .refine(({ lowestSettingNm, highestSettingNm }) => lowestSettingNm <= highestSettingNm, {
    message: 'a scale that rises',
  });

/** Schema of a {@link WrenchReach}. */
export const wrenchReachSchema: z.ZodType<WrenchReach> = z.strictObject({
  reach: z.enum(['direct', 'with-extension', 'no']),
  settingNm: positive.nullable(),
  extensionLengthMm: notNegative.nullable(),
  findings,
});
