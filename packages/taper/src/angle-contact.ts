import { falsePosition } from './false-position.ts';
import { LONGEST_COLLAR_RATIO } from './fitted-factors.ts';
import { lowest } from './interval.ts';
import type { AngleModel } from './press-model.ts';
import { collarAt, engagedAt, mismatchAt, tangent } from './seat-geometry.ts';

/** Two straight faces that are not parallel, pressed on each other. @internal */
export interface AngleContact {
  axialForceN: number;
  /** Axial force for each mm of travel and mm of length, in N/mm2, of a long contact of parallel faces. */
  stiffnessNPerMm2: number;
  lengthMm: number;
  /** What the difference of the angles opens for each mm of length, as travel: |tan s - tan a|/tan s, above 0. */
  opening: number;
  /** Tangent of the bore's angle over that of the spindle: below 1 first contact is at the mouth, else at the spindle's end. */
  tangentRatio: number;
  /** Bore beyond the end of the spindle. */
  collarMm: number;
  /** Length over which the wall of the boss fades beside a loaded ring of it. */
  decayMm: number;
}

// Share of the compliance that a ring of the wall does not share with its neighbours: spindle and surface. Fitted to the
// rows of two of the four bore angles, 1.5 and 2.2 deg.
const LOCAL_SHARE = 0.0525;

/**
 * What a difference of the face angles adds to the travel of parallel faces.
 *
 * The wall is a row of springs coupled by shear, so that beside a loaded length it fades as exp(-z/decay), under a layer of
 * springs that stand alone (the foundation of Kerr): over the contact (k0 + k1) w - G w'' = k1 u with u falling linearly,
 * beyond it k0 w = G w''. The wall ends where bore or collar end; contact ends where wall and face meet without pressure.
 * For a given length of contact that is a linear problem, so only the length that carries the force is sought. Once the
 * whole length bears, more force moves the arm like parallel faces.
 * @internal
 */
export function closingTravel(contact: AngleContact): number {
  const { axialForceN, stiffnessNPerMm2, lengthMm, opening, tangentRatio, collarMm, decayMm } = contact;
  const atMouth = tangentRatio < 1;
  const farMm = atMouth ? collarMm : 0;
  // The end of the spindle rides on the steeper face of the bore, the edge of the mouth on that of the spindle.
  const slope = Math.max(1, tangentRatio);
  const at = (contactMm: number): { load: number; addedMm: number } => {
    const solve = (nearMm: number): Row => row(contactMm, lengthMm - contactMm + farMm, nearMm, decayMm);
    let nearMm = atMouth ? 0 : collarMm;
    let found = solve(nearMm);
    if (nearMm > 0) {
      // What the arm has travelled, the spindle has moved into the collar.
      nearMm = Math.max(0, collarMm - (found.depth * opening) / slope);
      found = solve(nearMm);
    }
    const parallel = found.load / parallelLoad(lengthMm, nearMm, farMm, decayMm);
    return {
      load: found.load * opening * stiffnessNPerMm2,
      addedMm: Math.max(0, (found.depth - parallel) * opening) / slope,
    };
  };
  const whole = at(lengthMm);
  if (axialForceN >= whole.load) return whole.addedMm;
  const excess = (contactMm: number): number => at(contactMm).load - axialForceN;
  return at(falsePosition(excess, 0, lengthMm, 1e-13 * axialForceN)).addedMm;
}

/** What a difference of the face angles does to the travel of a joint. @internal */
export const unequalAngles: AngleModel = (state, { joint, mouthMm, corner }, stiffnessNPerMm) => {
  const { axialForceN, engagedLengthMm: lengthMm, collarMm, acrossFlatsMm, faceAngleRad } = state;
  const { spindle, arm } = joint;
  // Below 1 first contact is at the mouth of the bore.
  const tangentRatio = tangent(corner(arm.faceAngleDeg, false)) / tangent(corner(spindle.faceAngleDeg));
  const contact = {
    axialForceN,
    stiffnessNPerMm2: stiffnessNPerMm / lengthMm,
    lengthMm,
    // Travel over which the difference closes, over the length.
    opening:
      Math.max(0, (engagedAt(joint, mouthMm, corner) * mismatchAt(joint, corner)) / Math.tan(faceAngleRad)) / lengthMm,
    tangentRatio,
    decayMm: LONGEST_COLLAR_RATIO * acrossFlatsMm,
  };
  // What is added may rise or fall with the collar: both ends of it are tried.
  const extreme = corner === lowest ? Math.min : Math.max;
  const closingMm =
    contact.opening > 0
      ? extreme(
          closingTravel({ ...contact, collarMm }),
          closingTravel({ ...contact, collarMm: collarAt(joint, mouthMm, corner) }),
        )
      : 0;
  // On the steeper face of the bore the end of the spindle is wedged sooner.
  return { closingMm, slope: Math.max(1, tangentRatio) };
};

interface Row {
  /** Interference at the end that touched first, over the opening for each mm of length. */
  depth: number;
  /** Force over stiffness and opening. */
  load: number;
}

const WALL_SHARE = 1 - LOCAL_SHARE;

/** Slope over deflection of the wall where it fades over a free length. */
const fading = (freeMm: number, decayMm: number): number => Math.tanh(freeMm / decayMm) / decayMm;

/** Contact over a length from one end: w = wall share x u + a exp(-m z) + b exp(m (z - c)). */
function row(contactMm: number, freeMm: number, nearMm: number, decayMm: number): Row {
  const m = 1 / (decayMm * Math.sqrt(LOCAL_SHARE));
  const x = m * contactMm;
  const fallen = -Math.expm1(-x);
  const e = 1 - fallen;
  const near = fading(nearMm, decayMm);
  const far = fading(freeMm, decayMm);
  const [sum, less] = [m + near, (m - near) * e * e];
  const start = WALL_SHARE / (2 * m);
  const rise = far / (2 * m) + LOCAL_SHARE / 2;
  // Interference where the contact ends, from w'(0) = near w(0), w(c) = u(c), w'(c) = -far w(c); written with cosh x - 1 and
  // sinh x - x, so that a short contact keeps its digits.
  const last =
    (WALL_SHARE * (fallen ** 2 / 2 + (near / m) * ((fallen * (1 + e)) / 2 - x * e))) /
    (e * near * WALL_SHARE + sum * rise - less * (LOCAL_SHARE - rise));
  const depth = last + contactMm;
  const b = LOCAL_SHARE * last - (rise * last - start);
  const a = ((m - near) * e * b - WALL_SHARE * (1 + near * depth)) / sum;
  const first = WALL_SHARE * depth + a + b * e;
  const inside = WALL_SHARE * contactMm * (last + contactMm / 2) + ((a + b) * fallen) / m;
  return { depth, load: (inside + decayMm ** 2 * (near * first + far * last)) / WALL_SHARE };
}

/** Force over stiffness and interference when the whole length bears evenly: the length and what the collars add to it. */
function parallelLoad(lengthMm: number, nearMm: number, farMm: number, decayMm: number): number {
  const m = 1 / (decayMm * Math.sqrt(LOCAL_SHARE));
  const e = Math.exp(-m * lengthMm);
  const near = fading(nearMm, decayMm);
  const far = fading(farMm, decayMm);
  const determinant = (m - near) * (m - far) * e * e - (m + near) * (m + far);
  const a = (WALL_SHARE * (near * (m + far) + far * (m - near) * e)) / determinant;
  const b = (WALL_SHARE * (far * (m + near) + near * (m - far) * e)) / determinant;
  return lengthMm - ((a + b) * (1 - e)) / (m * LOCAL_SHARE);
}
