import {
  checkInput,
  type FieldSpec,
  type FieldSpecs,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { type Strength, strengthSpec, withPlainStrength, yieldOf } from './assembly-limit.ts';
import { type Bearing, bearingFindings, bearingSpec, checkRing, ringOf } from './bearing.ts';
import { dataEdition } from './data-edition.ts';
import { frictionSpec, torqueSpec, utilisationSpec } from './domain.ts';
import { COS_HALF_PROFILE, leverArms, type TorqueMethod, unusualFriction } from './joint.ts';
import {
  beyondAssemblyLimit,
  beyondYield,
  beyondYieldIfSlippery,
  exactTorqueAssumed,
  frictionWithoutRange,
  leftHandThread,
  selfLoosening,
  torqueIsNoMeasureOfClamp,
} from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { type StrengthUse, strengthUse } from './strength-use.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';
import { toolSpec, toolTorque } from './tool-torque.ts';

/** What the wrench, the friction and the joint may be. */
export interface PreloadRangeInput {
  /** Torque in Nm, at least 0: what the wrench is set to, exact or with limits of its own. */
  torqueNm: Measurand;
  /** Id of the tool class whose deviation is added to the torque; none is added when absent. */
  tool?: string;
  /** The thread. */
  thread: Thread;
  /** Friction in the thread, above 0 to 1; a range, for instance that of a friction class. */
  threadFriction: Measurand;
  /** Friction under the head, above 0 to 1; a range. */
  bearingFriction: Measurand;
  /** The face that turns. */
  bearing: Bearing;
  /** Formula; `exact` when absent. */
  method?: TorqueMethod;
  /** Strength of the bolt, for the share of yield that the range uses. */
  propertyClass?: Strength;
  /** Share of yield that tightening may use, above 0 to 1; 0.9 when absent. */
  utilisation?: number;
}

/** One corner of the worst case: the values that were combined. */
export interface PreloadCorner {
  /** Torque in Nm. */
  torqueNm: number;
  /** Friction in the thread. */
  threadFriction: number;
  /** Friction under the head. */
  bearingFriction: number;
}

/** Preload that a tightening may make, with its bounds. */
export interface PreloadRange {
  /** Preload in N: hard bounds over everything that was given. */
  preloadN: Limits;
  /** Torque in Nm that was reckoned with, tool included. */
  torqueNm: Limits;
  /** Torque in Nm to loosen the joint as it is then, before anything settles. */
  looseningTorqueNm: Limits;
  /** Which values make which bound. */
  corners: { lower: PreloadCorner; nominal: PreloadCorner; upper: PreloadCorner };
  /** Largest over smallest preload; null when the torque may be 0. */
  tighteningFactor: number | null;
  /** Use of the bolt; absent when no strength was given. */
  strength?: StrengthUse;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying. */
  findings: Finding[];
}

/**
 * Gives the range of preload that a torque may make: tool and friction at their worst, on both sides.
 *
 * @remarks
 * Formula: `preloadFromTorque` at the corners: F rises with torque and falls with both frictions, so that the lowest
 * preload has the lowest torque and the highest frictions, the highest the other way round. Torque with a tool:
 * T (1 -+ a) as in `toolTorque`. Equivalent stress sqrt(s^2 + 3 t^2), s = F/As, t by the VDI 2230 form with the section
 * yielding all over; it falls with head friction but may fall, rise and (`exact` only) fall again with thread friction,
 * so both ends of that count and the turning points between them. Loosening torque: its share of the tightening torque
 * rises with head friction; with thread friction it rises too, by `exact` only up to m/cos 30 = sqrt(b^2 + 1) - b and falls
 * beyond (b lever arm of the friction under the head over d2/2, m thread friction), so that point counts too.
 *
 * Validity: torque at least 0, friction above 0 to 1. The range says what tightening makes: settling, bedding and riding
 * take some of it away afterwards. Exact numbers for torque or friction are a finding, not refused.
 *
 * Accuracy: bounds are exact for the formula: no combination inside the limits lies outside (tested at random). Measured
 * preloads of M12x1.25 bolts at 90 Nm (30 tests) lie inside the range of the friction 0.12 to 0.26.
 *
 * @param input - `torqueNm` in Nm, frictions above 0 to 1, each a number, limits or a reading with uncertainty; `tool`,
 * `thread`, `bearing`, `method`, `propertyClass`, `utilisation`.
 * @returns Limits of preload in N, of torque and loosening torque in Nm (below 0: unwinds by itself), the corners, use
 * of the bolt's strength, findings.
 * @throws {@link DomainError} for values outside the domain, crossed limits, a thread whose sizes contradict each
 * other, an unknown tool or class, unknown keys.
 * @example
 * ```ts
 * import { preloadRange, threadFor } from '@spindlewright/torque';
 * const range = preloadRange({
 *   torqueNm: 40,
 *   tool: 'click-wrench-iso-6789',
 *   thread: threadFor('M8x1'),
 *   threadFriction: { lower: 0.08, nominal: 0.12, upper: 0.16 },
 *   bearingFriction: { lower: 0.08, nominal: 0.12, upper: 0.16 },
 *   bearing: { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0.5 },
 * });
 * [range.preloadN.lower, range.preloadN.nominal, range.preloadN.upper].map((force) => Math.round(force / 100) / 10);
 * // => [17.4, 23.6, 35.1]
 * range.corners.upper.threadFriction; // => 0.08
 * ```
 * @see VDI 2230 (`vdi-2230-2001-quoted`) for scatter; ISO 6789 (`iso-6789-quoted`) for tools.
 */
export function preloadRange(input: PreloadRangeInput): PreloadRange {
  const friction: FieldSpec = { ...frictionSpec, type: 'measurand' };
  const fields: FieldSpecs = {
    torqueNm: { ...torqueSpec, type: 'measurand' },
    tool: { ...toolSpec(), optional: true },
    thread: { type: 'object', fields: threadFields },
    threadFriction: friction,
    bearingFriction: friction,
    bearing: bearingSpec(input),
    method: { type: 'choice', values: ['exact', 'vdi-2230', 'nut-factor'], optional: true },
    propertyClass: { ...strengthSpec((input as { propertyClass?: unknown } | null)?.propertyClass), optional: true },
    utilisation: utilisationSpec,
  };
  checkInput({ where: 'preloadRange', value: withPlainStrength(input), fields });
  checkThread('preloadRange', input.thread);
  checkRing('preloadRange', input.bearing);
  const threadFriction = hardLimits(input.threadFriction);
  const bearingFriction = hardLimits(input.bearingFriction);
  const tool = input.tool === undefined ? undefined : toolTorque({ torqueNm: input.torqueNm, tool: input.tool });
  const torqueNm = tool?.torqueNm ?? hardLimits(input.torqueNm);

  const corners = {
    lower: { torqueNm: torqueNm.lower, threadFriction: threadFriction.upper, bearingFriction: bearingFriction.upper },
    nominal: {
      torqueNm: torqueNm.nominal,
      threadFriction: threadFriction.nominal,
      bearingFriction: bearingFriction.nominal,
    },
    upper: { torqueNm: torqueNm.upper, threadFriction: threadFriction.lower, bearingFriction: bearingFriction.lower },
  };
  const { thread, bearing, method = 'exact' } = input;
  const ring = ringOf(bearing);
  const armsAt = ({ threadFriction, bearingFriction }: PreloadCorner) =>
    leverArms({ thread, bearing, method, threadFriction, bearingFriction }, ring);
  const preloadAt = (corner: PreloadCorner): number => (corner.torqueNm * 1000) / armsAt(corner).tightenMm;
  const preloadN = {
    lower: preloadAt(corners.lower),
    nominal: preloadAt(corners.nominal),
    upper: preloadAt(corners.upper),
  };
  const shareAt = (corner: PreloadCorner): number => {
    const { loosenMm, tightenMm } = armsAt(corner);
    return loosenMm / tightenMm;
  };
  const headArmMm = bearingFriction.upper * ring.customaryRadiusMm;
  const turningPoint = method === 'exact' ? frictionOfLargestShare(thread, headArmMm) : Infinity;
  const looseningTorqueNm = looseningLimits(torqueNm, corners, turningPoint, shareAt);

  const findings: Finding[] = [raiseText('torque-is-no-measure-of-clamp', torqueIsNoMeasureOfClamp, 'caution')];
  const sources = new Set(tool?.sources ?? []);
  if (torqueNm.lower === torqueNm.upper)
    findings.push(raiseText('exact-torque-assumed', exactTorqueAssumed, 'caution', {}, { path: 'torqueNm' }));
  for (const path of ['threadFriction', 'bearingFriction'] as const) {
    const bounds = path === 'threadFriction' ? threadFriction : bearingFriction;
    if (bounds.lower === bounds.upper)
      findings.push(raiseText('friction-without-range', frictionWithoutRange, 'caution', {}, { path }));
    const odd = [bounds.lower, bounds.upper].flatMap((value) => unusualFriction(value, path));
    findings.push(...odd.slice(0, 1));
  }
  if (input.thread.hand === 'left')
    findings.push(raiseText('left-hand-thread', leftHandThread, 'note', {}, { path: 'thread' }));
  if (looseningTorqueNm.lower < 0) {
    findings.push(
      raiseText('self-loosening', selfLoosening, 'caution', { looseningTorqueNm: looseningTorqueNm.lower }),
    );
  }
  findings.push(...bearingFindings(input.bearing));

  let strength: StrengthUse | undefined;
  if (input.propertyClass !== undefined) {
    const bolt = yieldOf(input.propertyClass, input.thread);
    for (const id of [...bolt.sources, 'vdi-2230-2001-quoted']) sources.add(id);
    findings.push(...bolt.findings);
    strength = strengthUse(thread, method, bolt.yieldStrengthMPa, corners, armsAt);
    const limitPercent = 100 * (input.utilisation ?? 0.9);
    const utilisationPercent = 100 * strength.utilisation.upper;
    // Nobody knows the friction: what only its lowest end would do is no more than a reason to find out.
    if (strength.utilisation.nominal > 1) {
      findings.push(raiseText('beyond-yield', beyondYield, 'stop', { utilisationPercent }));
    } else if (utilisationPercent > 100) {
      findings.push(raiseText('beyond-yield-if-slippery', beyondYieldIfSlippery, 'caution', { utilisationPercent }));
    } else if (utilisationPercent > limitPercent) {
      findings.push(
        raiseText('beyond-assembly-limit', beyondAssemblyLimit, 'caution', { utilisationPercent, limitPercent }),
      );
    }
  }
  return {
    preloadN,
    torqueNm,
    looseningTorqueNm,
    corners,
    tighteningFactor: preloadN.lower > 0 ? preloadN.upper / preloadN.lower : null,
    ...(strength === undefined ? {} : { strength }),
    sources: [...sources].sort(),
    dataEdition,
    findings,
  };
}

type Corners = PreloadRange['corners'];

/**
 * Friction in the thread at which loosening takes the largest share of the tightening torque, by the exact form. With
 * q the friction angle of the flanks, l the lead angle, b = lever arm under the head/(d2/2) the share is
 * (tan(q - l) + b)/(tan(q + l) + b); its derivative by q has the sign of cos 2q - b sin 2q. So it rises up to
 * tan q = sqrt(b^2 + 1) - b and falls beyond; the linear forms rise throughout.
 */
function frictionOfLargestShare(thread: Thread, headArmMm: number): number {
  const b = headArmMm / (thread.pitchDiameterMm / 2);
  // The same as sqrt(b^2 + 1) - b, without the difference of two large numbers.
  return COS_HALF_PROFILE / (Math.hypot(b, 1) + b);
}

/**
 * The share loosening/tightening lies below 1 and may be negative. It rises with head friction; with thread friction it
 * rises up to the turning point and falls beyond, so that its least lies at an end.
 */
function looseningLimits(
  torqueNm: Limits,
  corners: Corners,
  turningPoint: number,
  shareAt: (corner: PreloadCorner) => number,
): Limits {
  const [from, to] = [corners.upper.threadFriction, corners.lower.threadFriction];
  const least = Math.min(shareAt(corners.upper), shareAt({ ...corners.upper, threadFriction: to }));
  const most = shareAt({ ...corners.lower, threadFriction: Math.min(to, Math.max(from, turningPoint)) });
  const product = (torque: number, share: number): number => (torque === 0 ? 0 : torque * share);
  return {
    lower: product(least < 0 ? torqueNm.upper : torqueNm.lower, least),
    nominal: product(torqueNm.nominal, shareAt(corners.nominal)),
    upper: product(most < 0 ? torqueNm.lower : torqueNm.upper, most),
  };
}
