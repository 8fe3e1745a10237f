import { DomainError, type Limits } from '@spindlewright/quantity';
import type { BareSeatInput } from './bare-seat.ts';
import { exactly } from './interval.ts';
import type { Joint, ResolvedPressing } from './joint.ts';
import type { Material } from './shapes.ts';

// Lowest and highest value of each field, as in the full functions; where the lowest is 0, `above` forbids 0 itself.
const SPINDLE = {
  acrossFlatsAtEndMm: 'above 0 60',
  faceAngleDeg: 'from 0.2 10',
  flatLengthMm: 'above 0 100',
  endChamferMm: 'from 0 20',
  cornerDiameterMm: 'above 0 80',
};
const WALL = { shoulderFromEndMm: 'above 0 200' };
const ARM = {
  acrossFlatsAtMouthMm: 'above 0 60',
  faceAngleDeg: 'from 0.2 10',
  boreLengthMm: 'above 0 100',
  boltSeatFromMouthMm: 'above 0 100',
  seatIntrusionMm: 'from 0 50',
  mouthChamferMm: 'from 0 20',
  bossDiameterMm: 'above 0 200',
  boreCornerRadiusMm: 'above 0 10',
};
const MATERIAL = { youngsModulusGPa: 'from 1 1000', poissonsRatio: 'from 0 0.49' };
const STRENGTH = { yieldStrengthMPa: 'from 1 5000' };
const PRESS = { axialForceN: 'from 0 200000', friction: 'from 0 1' };

/** The fields as limits, each within its range. */
function read<K extends string>(value: unknown, path: string, ranges: Record<K, string>): Record<K, Limits> {
  const out = {} as Record<K, Limits>;
  for (const key in ranges) {
    const given = (value as Record<string, unknown> | null | undefined)?.[key];
    const limits = typeof given === 'object' && given !== null ? (given as Limits) : exactly(given as number);
    const { lower, nominal, upper } = limits;
    const [how, low = 0, high = 0] = ranges[key].split(' ');
    const numbers = [lower, nominal, upper].every(Number.isFinite) && lower <= nominal && nominal <= upper;
    if (!numbers || lower < +low || upper > +high || (how === 'above' && lower === 0)) {
      const allowed = `a number or rising limits ${how} ${low} to ${high}`;
      throw new DomainError('bareSeat', [{ path: `${path}.${key}`, received: String(given), allowed }]);
    }
    out[key] = { lower, nominal, upper };
  }
  return out;
}

/** The shapes as limits. @internal */
export function bareJoint(input: BareSeatInput): Joint {
  const spindle = input?.spindle;
  return {
    spindle: {
      ...read(spindle, 'spindle', SPINDLE),
      ...(spindle?.shoulderFromEndMm === undefined
        ? { shoulderFromEndMm: exactly(Number.POSITIVE_INFINITY) }
        : read(spindle, 'spindle', WALL)),
    },
    arm: read(input.arm, 'arm', ARM),
  };
}

/** The press as limits. @internal */
export function barePressing({ pressing }: BareSeatInput): ResolvedPressing {
  const material = (part: 'spindle' | 'arm'): Material<Limits> => {
    const given = pressing?.materials?.[part];
    const path = `pressing.materials.${part}`;
    return {
      ...read(given, path, MATERIAL),
      ...(given?.yieldStrengthMPa === undefined ? {} : read(given, path, STRENGTH)),
    };
  };
  const arm = material('arm');
  return {
    ...read(pressing, 'pressing', PRESS),
    materials: { spindle: material('spindle'), arm },
    compliance: arm.yieldStrengthMPa === undefined ? 'fitted' : 'fitted-plastic',
  };
}
