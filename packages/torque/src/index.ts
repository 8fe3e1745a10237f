/**
 * Threads, friction and the way from wrench torque to bolt preload and back, always with its width.
 *
 * @packageDocumentation
 */
export { type AngleTightening, angleTightening } from './angle-tightening.ts';
export { type AssemblyLimit, assemblyLimit, type Strength } from './assembly-limit.ts';
export type { Bearing, RoundBearing, SquareBearing } from './bearing.ts';
export { type BoltSegment, boltStiffness } from './bolt-stiffness.ts';
export { checkFixing, type FixingCheck } from './check-fixing.ts';
export type { ColumnJoint, NumberColumn } from './columns.ts';
export { dataEdition } from './data-edition.ts';
export { type FailureForce, type FailureMode, type FirstToFail, firstToFail } from './first-to-fail.ts';
export type { FixingBolt, FixingNut, FixingSurroundings } from './fixing-input.ts';
export type { FixingStage } from './fixing-stage.ts';
export { type FrictionFromTest, frictionFromTest } from './friction-from-test.ts';
export { type FrictionRange, frictionRange } from './friction-range.ts';
export { frustumStiffness } from './frustum-stiffness.ts';
export { type HandForce, handForce } from './hand-force.ts';
export { type HeadPressure, headPressure } from './head-pressure.ts';
export type { FrictionJoint, JointTorques, NutFactorJoint, TorqueMethod, TorqueSplit } from './joint.ts';
export { type LoadFactor, loadFactor } from './load-factor.ts';
export { type MemberCone, type MemberLayer, type MemberStiffness, memberStiffness } from './member-stiffness.ts';
export type { TorqueFindingCode } from './messages/en.ts';
export { metricThread } from './metric-thread.ts';
export { type MinimumEngagement, minimumEngagement } from './minimum-engagement.ts';
export {
  type FrictionCorrelation,
  type PreloadDistribution,
  type PreloadDistributionInput,
  type PreloadShare,
  preloadDistribution,
} from './preload-distribution.ts';
export { type PreloadFromTorque, preloadFromTorque } from './preload-from-torque.ts';
export { preloadFromTorqueColumns } from './preload-from-torque-columns.ts';
export { type PreloadCorner, type PreloadRange, type PreloadRangeInput, preloadRange } from './preload-range.ts';
export { type PropertyClass, propertyClass } from './property-class.ts';
export { type SettlingLoss, settlingLoss } from './settling-loss.ts';
export type { StrengthUse } from './strength-use.ts';
export { type StrippingEngagement, type StrippingPart, strippingEngagement } from './stripping-engagement.ts';
export { type TargetTorque, targetTorque } from './target-torque.ts';
export { type ThermalPreload, thermalPreload } from './thermal-preload.ts';
export type { Hand, Thread } from './thread.ts';
export { threadFor } from './thread-for.ts';
export { type TighteningScatter, tighteningScatter } from './tightening-scatter.ts';
export { type ToolTorque, toolTorque } from './tool-torque.ts';
export { type TorqueFromPreload, torqueFromPreload } from './torque-from-preload.ts';
export { torqueFromPreloadColumns } from './torque-from-preload-columns.ts';
export { type TorqueTable, type TorqueTableRow, torqueTable } from './torque-table.ts';
export { torqueTableCsv } from './torque-table-csv.ts';
export { torqueTableMarkdown } from './torque-table-markdown.ts';
export { type TorqueToHold, type TorqueToHoldInput, torqueToHold } from './torque-to-hold.ts';
export { unifiedThread } from './unified-thread.ts';
export { version } from './version.ts';
export { type WilemanMaterial, type WilemanStiffness, wilemanStiffness } from './wileman-stiffness.ts';
export { type WrenchReach, wrenchReach } from './wrench-reach.ts';
export { type WrenchSetting, wrenchSetting } from './wrench-setting.ts';
