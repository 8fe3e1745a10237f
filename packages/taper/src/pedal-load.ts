import {
  type Datum,
  type FieldSpecs,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds, type Corner } from './interval.ts';
import type { Joint } from './joint.ts';
import { loadMessages } from './messages/load.ts';
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

/**
 * What bending takes off the edge at the mouth, over what it takes there with a rigid spindle.
 *
 * A spindle that bends and shears in its bore leaves more to the mouth. Least: the rigid spindle. Middle: where the
 * finite-element meshes run to at the load that uses the edge up, 1.15 to 1.19. Most: judgement above the 1.31 that the
 * finest mesh has at small loads, which still grows with the mesh. Made by `bending.py`.
 */
const bendingAtMouth: Limits = { lower: 1, nominal: 1.17, upper: 1.35 };

/**
 * Share of the bending moment that unloads the mouth at which contact begins to open in places: judgement. In the rows one
 * hundredth of the area is gone between 0.2 and 0.5 of it, the later the finer the mesh.
 */
const OPENS_IN_PLACES = 0.25;

/** Says that bending opens the contact in places, where at worst it does. @internal */
export function opensInPlaces(
  section: ReturnType<typeof carryingSection>,
  leg: ReturnType<typeof legLoad>,
  normalForceN: Limits,
): Finding[] {
  const unloadingNm = (section.lengthMm.lower * normalForceN.lower) / 3000;
  const share = (leg.flatShare * leg.bendingNm.upper) / unloadingNm;
  if (!(share > OPENS_IN_PLACES)) return [];
  const values = { bendingPercent: 100 * share, opensPercent: 100 * OPENS_IN_PLACES };
  return [find(loadMessages, 'contact-opens-in-places', 'caution', values, { sources: ['fe-square-taper'] })];
}

/** The normal force at which an edge unloads, in N: 3 T/(2 b) by torque and 3 M/L by bending, times what the mouth takes. @internal */
export function unloadingForceAt(
  section: ReturnType<typeof carryingSection>,
  leg: ReturnType<typeof legLoad>,
  corner: Corner,
): { left: number; right: number } {
  const byTorque = (1500 * corner(leg.torqueNm)) / corner(section.flatWidthMm, false);
  const rigid = (3000 * leg.flatShare * corner(leg.bendingNm)) / corner(section.lengthMm, false);
  const byBending = corner(bendingAtMouth) * rigid;
  return { left: byTorque + byBending, right: Math.max(byTorque, byBending) };
}
