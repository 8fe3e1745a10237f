import type { FieldSpec, FieldSpecs } from '@spindlewright/quantity';

/** A square-taper spindle end; z runs along the axis from the end face inward. `N` is the kind of number. */
export interface SpindleShape<N = number> {
  /** Across flats at the end face (z = 0), extrapolated over the end chamfer; above 0 to 60 mm. */
  acrossFlatsAtEndMm: N;
  /** Angle of each face against the axis; 0.2 to 10 deg (trade: 2). */
  faceAngleDeg: N;
  /** Where the flats end and the run-out begins, from the end face; above 0 to 100 mm. */
  flatLengthMm: N;
  /** Length of the chamfer at the end, where nothing bears; 0 to 20 mm, 0 when absent. */
  endChamferMm?: N;
  /** Where the shoulder ("wall") stands, from the end face; above 0 to 200 mm, none when absent. */
  shoulderFromEndMm?: N;
  /** Twice the radius of the turned corners; above 0 to 80 mm. The width of the flats follows from it. */
  cornerDiameterMm?: N;
}

/** The square bore of a crank arm. `N` is the kind of number. */
export interface ArmShape<N = number> {
  /** Across flats of the bore at its inner face (the mouth), extrapolated over the mouth chamfer; above 0 to 60 mm. */
  acrossFlatsAtMouthMm: N;
  /** Angle of each face against the axis; 0.2 to 10 deg (trade: 2). */
  faceAngleDeg: N;
  /** Depth of the square bore from the mouth; above 0 to 100 mm. */
  boreLengthMm: N;
  /** Depth of the face on which the bolt or washer seats, from the mouth; above 0 to 100 mm, else `boreLengthMm`. */
  boltSeatFromMouthMm?: N;
  /** How far a dished washer or a pilot under the head reaches in from that face; 0 to 50 mm, 0 when absent. */
  seatIntrusionMm?: N;
  /** Length of the chamfer at the mouth, where nothing bears; 0 to 20 mm, 0 when absent. */
  mouthChamferMm?: N;
  /** Outside diameter of the boss round the bore; above 0 to 200 mm. */
  bossDiameterMm?: N;
  /** Radius of the fillets in the corners of the bore; above 0 to 10 mm. */
  boreCornerRadiusMm?: N;
}

/** Elastic constants of a part, and its yield strength where it is known. */
export interface Material<N = number> {
  /** Young's modulus; 1 to 1000 GPa. */
  youngsModulusGPa: N;
  /** Poisson's ratio; 0 to 0.49. */
  poissonsRatio: N;
  /** Yield strength; 1 to 5000 MPa, unknown when absent. */
  yieldStrengthMPa?: N;
}

/** Materials of both parts; one that is absent is assumed, and a finding says so. */
export interface Materials<N = number> {
  /** Material of the spindle. */
  spindle?: Material<N>;
  /** Material of the arm. */
  arm?: Material<N>;
}

/** How boss and spindle give way under the press: a fit to finite elements or a plain ring, elastic or with yield. */
export type Compliance = 'fitted' | 'fitted-plastic' | 'ring' | 'ring-plastic';

/** What presses the arm on. `N` is the kind of number. */
export interface Pressing<N = number> {
  /** Axial force between bolt and arm; 0 to 200000 N. */
  axialForceN: N;
  /** Coefficient of friction of the flats while the arm slides on; 0 to 1. */
  friction: N;
  /** Materials of both parts. */
  materials?: Materials<N>;
  /** Model; `fitted-plastic` when the arm's yield strength is known, else `fitted`. */
  compliance?: Compliance;
}

type NumberKind = 'number' | 'limits' | 'measurand';

const above0 = (type: NumberKind, max: number): FieldSpec => ({ type, unit: 'mm', above: 0, max });
const above0Optional = (type: NumberKind, max: number): FieldSpec => ({ ...above0(type, max), optional: true });
const from0 = (type: NumberKind, max: number): FieldSpec => ({ type, unit: 'mm', min: 0, max, optional: true });

/** Face angles in deg: flatter holds nothing, steeper does not hold. @internal */
export const FACE_ANGLE_DEG = { min: 0.2, max: 10 } as const;

/** Domain of a face angle. @internal */
export const faceAngleSpec = (type: NumberKind): FieldSpec => ({ type, unit: 'deg', ...FACE_ANGLE_DEG });

/** Domain of a friction coefficient. @internal */
export const frictionSpec = (type: NumberKind): FieldSpec => ({ type, unit: '', min: 0, max: 1 });

/** Domain of an axial force. @internal */
export const forceSpec = (type: NumberKind): FieldSpec => ({ type, unit: 'N', min: 0, max: 200000 });

/** Domain of a spindle shape. @internal */
export const spindleSpec = (type: NumberKind): FieldSpecs => ({
  acrossFlatsAtEndMm: above0(type, 60),
  faceAngleDeg: faceAngleSpec(type),
  flatLengthMm: above0(type, 100),
  endChamferMm: from0(type, 20),
  shoulderFromEndMm: above0Optional(type, 200),
  cornerDiameterMm: above0Optional(type, 80),
});

/** Domain of an arm shape. @internal */
export const armSpec = (type: NumberKind): FieldSpecs => ({
  acrossFlatsAtMouthMm: above0(type, 60),
  faceAngleDeg: faceAngleSpec(type),
  boreLengthMm: above0(type, 100),
  boltSeatFromMouthMm: above0Optional(type, 100),
  seatIntrusionMm: from0(type, 50),
  mouthChamferMm: from0(type, 20),
  bossDiameterMm: above0Optional(type, 200),
  boreCornerRadiusMm: above0Optional(type, 10),
});

/** Domain of a material. @internal */
export const materialSpec = (type: NumberKind): FieldSpecs => ({
  youngsModulusGPa: { type, unit: 'GPa', min: 1, max: 1000 },
  poissonsRatio: { type, unit: '', min: 0, max: 0.49 },
  yieldStrengthMPa: { type, unit: 'MPa', min: 1, max: 5000, optional: true },
});

/** Domain of what presses an arm on. @internal */
export const pressingSpec = (type: NumberKind): FieldSpecs => ({
  axialForceN: forceSpec(type),
  friction: frictionSpec(type),
  materials: {
    type: 'object',
    optional: true,
    fields: {
      spindle: { type: 'object', optional: true, fields: materialSpec(type) },
      arm: { type: 'object', optional: true, fields: materialSpec(type) },
    },
  },
  compliance: { type: 'choice', values: ['fitted', 'fitted-plastic', 'ring', 'ring-plastic'], optional: true },
});
