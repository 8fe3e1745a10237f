import {
  checkInput,
  type FieldSpecs,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { type Bearing, bearingSpec, checkRing, ringOf } from './bearing.ts';
import { forceSpec, torqueSpec } from './domain.ts';
import { unusualFriction } from './joint.ts';
import { refuse } from './refuse.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** Friction that a measured torque and force reveal. */
export interface FrictionFromTest {
  /** One coefficient for thread and head together. */
  totalFriction: Limits;
  /** Nut factor K = T/(F d). */
  nutFactor: Limits;
  /** Coefficient of the thread; null without the torque in the thread. */
  threadFriction: Limits | null;
  /** Coefficient under the head; null without the torque in the thread. */
  bearingFriction: Limits | null;
  /** What is worth saying. */
  findings: Finding[];
}

const WHERE = 'frictionFromTest';

/**
 * Finds the friction of a bolt from a measured pair of torque and clamp force.
 *
 * @remarks
 * Formula: m = (T/F - P/2 pi)/(0.577 d2 + r_b), the total friction of ISO 16047 with r_b = (Do + Dh)/4 (square hole: radius
 * of even pressure); with the torque in the thread T_t: m_t = (T_t/F - P/2 pi)/(0.577 d2), m_b = (T - T_t)/(F r_b). F clamp
 * force, P pitch, d2 pitch diameter. 0.577 stands for 1/(2 cos 30), as the standard has it. Formulas from memory.
 *
 * Validity: readings taken while the bolt turns, below yield; a breakaway torque is higher. One pair is one bolt: a class
 * needs many. Frictions outside 0.04 to 0.35 are a finding, none at all is refused.
 *
 * Accuracy: exact bounds of the readings given; the exact long form at this friction gives the torque back within 1 %
 * for usual threads.
 *
 * @param input - `torqueNm`, `preloadN`, `threadTorqueNm` above 0 in Nm and N, each a number, limits or a reading with
 * uncertainty; `thread`; `bearing` in mm.
 * @returns Limits of the frictions and of the nut factor, findings.
 * @throws {@link DomainError} for a torque that does not even lift the force along the thread, a thread torque above the
 * whole, values outside their domain, or unknown keys.
 * @example
 * ```ts
 * import { frictionFromTest, threadFor } from '@spindlewright/torque';
 * const { totalFriction } = frictionFromTest({
 *   torqueNm: { lower: 39, nominal: 40, upper: 41 },
 *   preloadN: { lower: 24_000, nominal: 25_000, upper: 26_000 },
 *   thread: threadFor('M8x1'),
 *   bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
 * });
 * [totalFriction.lower, totalFriction.nominal, totalFriction.upper].map((value) => value.toFixed(3));
 * // => ['0.128', '0.137', '0.148']
 * ```
 * @see ISO 16047 (`iso-16047`).
 */
export function frictionFromTest(input: {
  torqueNm: Measurand;
  preloadN: Measurand;
  threadTorqueNm?: Measurand;
  thread: Thread;
  bearing: Bearing;
}): FrictionFromTest {
  const fields: FieldSpecs = {
    torqueNm: { ...torqueSpec, type: 'measurand', min: 1e-6 },
    preloadN: { ...forceSpec, type: 'measurand', min: 1e-3 },
    threadTorqueNm: { ...torqueSpec, type: 'measurand', min: 1e-6, optional: true },
    thread: { type: 'object', fields: threadFields },
    bearing: bearingSpec(input),
  };
  checkInput({ where: WHERE, value: input, fields });
  checkThread(WHERE, input.thread);
  checkRing(WHERE, input.bearing);
  const { thread } = input;
  const [torque, preload] = [hardLimits(input.torqueNm), hardLimits(input.preloadN)];
  const threadTorque = input.threadTorqueNm === undefined ? undefined : hardLimits(input.threadTorqueNm);
  const riseMm = thread.pitchMm / (2 * Math.PI);
  const threadArmMm = 0.577 * thread.pitchDiameterMm;
  const headArmMm = ringOf(input.bearing).customaryRadiusMm;
  refuseBelowRise('torqueNm', torque, preload, riseMm);
  if (threadTorque !== undefined) {
    refuseBelowRise('threadTorqueNm', threadTorque, preload, riseMm);
    if (threadTorque.upper >= torque.lower) {
      throw refuse(WHERE, 'threadTorqueNm', String(threadTorque.upper), `below the whole torque, ${torque.lower} Nm`);
    }
  }
  const fromThread = (part: Limits, armMm: number): Limits =>
    spread(part, preload, (nm, force) => ((1000 * nm) / force - riseMm) / armMm);
  const totalFriction = fromThread(torque, threadArmMm + headArmMm);
  return {
    totalFriction,
    nutFactor: spread(torque, preload, (nm, force) => (1000 * nm) / (force * thread.majorDiameterMm)),
    threadFriction: threadTorque === undefined ? null : fromThread(threadTorque, threadArmMm),
    bearingFriction:
      threadTorque === undefined
        ? null
        : spread(
            {
              lower: torque.lower - threadTorque.upper,
              nominal: torque.nominal - threadTorque.nominal,
              upper: torque.upper - threadTorque.lower,
            },
            preload,
            (nm, force) => (1000 * nm) / (force * headArmMm),
          ),
    findings: [totalFriction.lower, totalFriction.upper].flatMap((m) => unusualFriction(m, 'torqueNm')).slice(0, 1),
  };
}

/** Bounds of what rises with the torque and falls with the force. */
const spread = (torque: Limits, force: Limits, value: (nm: number, newton: number) => number): Limits => ({
  lower: value(torque.lower, force.upper),
  nominal: value(torque.nominal, force.nominal),
  upper: value(torque.upper, force.lower),
});

function refuseBelowRise(path: string, torque: Limits, preload: Limits, riseMm: number): void {
  const leastNm = (preload.upper * riseMm) / 1000;
  if (torque.lower > leastNm) return;
  throw refuse(WHERE, path, String(torque.lower), `above ${leastNm.toPrecision(4)} Nm, which the pitch alone takes`);
}
