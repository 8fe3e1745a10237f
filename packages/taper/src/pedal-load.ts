import { type Datum, type FieldSpecs, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { bounds, type Corner } from './interval.ts';
import type { Joint } from './joint.ts';
import { engagedAt, flatWidthAt, handFitAt } from './seat-geometry.ts';
import { forceSpec, frictionSpec } from './shapes.ts';

/** How the square stands to the arm: a corner or a flat points along it. */
export type SquareOrientation = 'corner-in-line' | 'flat-in-line';

/** A vertical force on a pedal, the same on either side. */
export interface PedalLoad {
  /** Force on the pedal; 0 to 20000 N. */
  pedalForceN: Measurand;
  /** Middle of the spindle to middle of the pedal eye; 50 to 300 mm. */
  crankLengthMm: number;
  /** How far outboard of the arm's outer face the force acts; 0 to 200 mm (test geometry: 65). */
  overhangMm: number;
  /** From that outer face inward to the middle of the seat; 0 to 100 mm. */
  faceToSeatMm: number;
  /** Arm against the horizontal; -90 to 90 deg (riding: 0, test: 45). */
  crankAngleDeg: number;
}

/** Geometry and forces of the fatigue test of crank assemblies; the table of forces was not read. */
export const crankTestLoad: Readonly<
  Record<'overhangMm' | 'crankAngleDeg' | 'standingAngleDeg' | 'pedalForceN', Datum>
> = {
  overhangMm: { value: 65, unit: 'mm', standing: 'standard', sources: ['iso-4210-8'], note: 'Clause 4.6.' },
  crankAngleDeg: { value: 45, unit: 'deg', standing: 'standard', sources: ['iso-4210-8'], note: 'Clause 4.6.' },
  standingAngleDeg: {
    value: 30,
    unit: 'deg',
    standing: 'standard',
    sources: ['iso-4210-8'],
    note: 'Second test of mountain bicycles.',
  },
  pedalForceN: {
    value: 1300,
    lower: 1000,
    upper: 1800,
    unit: 'N',
    standing: 'from-memory',
    sources: [],
    note: 'City and trekking 1300, young adult 1000, mountain and racing 1800 as commonly cited; table 2 was not read.',
  },
};

/** Domain of a pedal load and of what holds against it. @internal */
export const loadSpec: FieldSpecs = {
  friction: frictionSpec('measurand'),
  squareOrientation: { type: 'choice', values: ['corner-in-line', 'flat-in-line'] },
  load: {
    type: 'object',
    fields: {
      pedalForceN: { type: 'measurand', unit: 'N', min: 0, max: 20000 },
      crankLengthMm: { type: 'number', unit: 'mm', min: 50, max: 300 },
      overhangMm: { type: 'number', unit: 'mm', min: 0, max: 200 },
      faceToSeatMm: { type: 'number', unit: 'mm', min: 0, max: 100 },
      crankAngleDeg: { type: 'number', unit: 'deg', min: -90, max: 90 },
    },
  },
};

/** Domain of the axial force. @internal */
export const axialForceSpec = forceSpec('measurand');

/** Section that carries: engaged length and flat width at hand fit, axial over normal force. @internal */
export function carryingSection(joint: Joint, friction: Limits): Record<'lengthMm' | 'flatWidthMm' | 'wedge', Limits> {
  const mouth = bounds((corner) => handFitAt(joint, corner));
  return {
    lengthMm: bounds((corner) => engagedAt(joint, mouth, corner)),
    flatWidthMm: bounds((corner) => flatWidthAt(joint, mouth, corner)),
    wedge: bounds((corner) => {
      const angle = (corner(joint.spindle.faceAngleDeg) * Math.PI) / 180;
      return 4 * (Math.sin(angle) + corner(friction) * Math.cos(angle));
    }),
  };
}

/** Torque and bending moment of one leg in Nm, and what of the bending lies across one pair of flats. @internal */
export function legLoad(
  load: PedalLoad,
  squareOrientation: SquareOrientation,
): { torqueNm: Limits; bendingNm: Limits; flatShare: number } {
  const { crankLengthMm, overhangMm, faceToSeatMm, crankAngleDeg } = load;
  const force = hardLimits(load.pedalForceN);
  const toArm = ((90 - crankAngleDeg) * Math.PI) / 180;
  const toFlat = toArm - (squareOrientation === 'corner-in-line' ? Math.PI / 4 : 0);
  const leverMm = crankLengthMm * Math.abs(Math.sin(toArm));
  return {
    torqueNm: bounds((corner) => (corner(force) * leverMm) / 1000),
    bendingNm: bounds((corner) => (corner(force) * (overhangMm + faceToSeatMm)) / 1000),
    flatShare: Math.max(Math.abs(Math.cos(toFlat)), Math.abs(Math.sin(toFlat))),
  };
}

// A spindle that bends and shears in its bore leaves more of a bending moment to the mouth than a rigid one: finite elements
// unload the edge there at 0.95 to 0.98 of the moment of a rigid spindle across a pair of flats and at 1.00 along the diagonal,
// the lower the finer the mesh.
const BENDING_AT_MOUTH = 1.1;

/** The normal force at which an edge unloads, in N: 3 T/(2 b) by torque and 1.1 times 3 M/L by bending. @internal */
export function unloadingForceAt(
  section: ReturnType<typeof carryingSection>,
  leg: ReturnType<typeof legLoad>,
  corner: Corner,
): { left: number; right: number } {
  const byTorque = (1500 * corner(leg.torqueNm)) / corner(section.flatWidthMm, false);
  const byBending = (3000 * BENDING_AT_MOUTH * leg.flatShare * corner(leg.bendingNm)) / corner(section.lengthMm, false);
  return { left: byTorque + byBending, right: Math.max(byTorque, byBending) };
}
