/**
 * Threads, friction and the way from wrench torque to bolt preload and back, always with its width.
 *
 * @packageDocumentation
 */
export { type AssemblyLimit, assemblyLimit, type Strength } from './assembly-limit.ts';
export type { Bearing, RoundBearing, SquareBearing } from './bearing.ts';
export { dataEdition } from './data-edition.ts';
export type { FrictionJoint, JointTorques, NutFactorJoint, TorqueMethod, TorqueSplit } from './joint.ts';
export { metricThread } from './metric-thread.ts';
export { type PreloadFromTorque, preloadFromTorque } from './preload-from-torque.ts';
export {
  type PreloadCorner,
  type PreloadRange,
  type PreloadRangeInput,
  preloadRange,
  type StrengthUse,
} from './preload-range.ts';
export { type PropertyClass, propertyClass } from './property-class.ts';
export type { Hand, Thread } from './thread.ts';
export { threadFor } from './thread-for.ts';
export { type ToolTorque, toolTorque } from './tool-torque.ts';
export { type TorqueFromPreload, torqueFromPreload } from './torque-from-preload.ts';
export { unifiedThread } from './unified-thread.ts';
export { version } from './version.ts';
