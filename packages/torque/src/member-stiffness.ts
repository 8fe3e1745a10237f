import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import { modulusSpec } from './domain.ts';
import { frustumStiffness } from './frustum-stiffness.ts';
import { refuse } from './refuse.ts';

/** One clamped layer. */
export interface MemberLayer {
  /** Thickness in mm, above 0. */
  thicknessMm: number;
  /** Modulus of elasticity in GPa, above 0. */
  modulusGPa: number;
}

/** One cone of the pack, of one material. */
export interface MemberCone {
  /** Diameter of its smaller face in mm. */
  outerFaceDiameterMm: number;
  /** Height in mm. */
  thicknessMm: number;
  /** Modulus of elasticity in GPa. */
  modulusGPa: number;
  /** Stiffness in N/mm. */
  stiffnessNPerMm: number;
}

/** Stiffness of everything that is clamped. */
export interface MemberStiffness {
  /** Stiffness of the pack in N/mm, above 0. */
  stiffnessNPerMm: number;
  /** Sum of the layers in mm. */
  gripLengthMm: number;
  /** The cones, from the first face to the last. */
  cones: MemberCone[];
}

const fields: FieldSpecs = {
  layers: {
    type: 'list',
    minLength: 1,
    item: {
      type: 'object',
      fields: { thicknessMm: { type: 'number', unit: 'mm', min: 1e-5, max: 10_000 }, modulusGPa: modulusSpec },
    },
  },
  faceDiameterMm: { type: 'number', unit: 'mm', min: 0.1, max: 1000 },
  farFaceDiameterMm: { type: 'number', unit: 'mm', min: 0.1, max: 1000, optional: true },
  holeDiameterMm: { type: 'number', unit: 'mm', min: 0.01, max: 1000 },
};

/**
 * Gives the stiffness of a clamped pack of layers: two cones of 30 degrees that meet where they are equally wide.
 *
 * @remarks
 * Formula: from either face a cone widens by 2 tan 30 of its height; with equal faces the cones meet at mid-grip. Each
 * cone is cut at the borders of the layers, each piece is a `frustumStiffness`, and 1/k = sum 1/k_i.
 *
 * Validity: parts wide enough to hold the cones; a narrow boss is softer. A face so much wider than the other that its
 * cone never meets the other's inside the pack leaves one cone alone.
 *
 * Accuracy: handbook joints of two to four layers within 0.3 %.
 *
 * @param input - `layers` from the first face on: `thicknessMm` above 0 in mm, `modulusGPa` above 0 in GPa;
 * `faceDiameterMm`, `farFaceDiameterMm` (default: the same) and `holeDiameterMm` above 0 in mm.
 * @returns Stiffness in N/mm, grip in mm, and the cones in order.
 * @throws {@link DomainError} for an empty list, values that are not above 0, a hole that is not below both faces, or
 * unknown keys.
 * @example
 * ```ts
 * import { memberStiffness } from '@spindlewright/torque';
 * const layers = [{ thicknessMm: 20, modulusGPa: 207 }, { thicknessMm: 20, modulusGPa: 71 }];
 * const { cones } = memberStiffness({ layers, faceDiameterMm: 18, holeDiameterMm: 12 });
 * cones.map((cone) => cone.thicknessMm); // => [20, 20]
 * ```
 * @see Shigley (`shigley-9`), section 8-5; worked joints: `shigley-8-solutions`, problems 8-23 to 8-25.
 */
export function memberStiffness(input: {
  layers: readonly MemberLayer[];
  faceDiameterMm: number;
  farFaceDiameterMm?: number;
  holeDiameterMm: number;
}): MemberStiffness {
  checkInput({ where: 'memberStiffness', value: input, fields });
  const { layers, faceDiameterMm, farFaceDiameterMm = faceDiameterMm, holeDiameterMm } = input;
  if (holeDiameterMm >= Math.min(faceDiameterMm, farFaceDiameterMm)) {
    const allowed = `below the faces, ${Math.min(faceDiameterMm, farFaceDiameterMm)} mm`;
    throw refuse('memberStiffness', 'holeDiameterMm', String(holeDiameterMm), allowed);
  }
  const gripLengthMm = layers.reduce((sum, layer) => sum + layer.thicknessMm, 0);
  // Widths D1 + 2 y tan 30 and D2 + 2 (l - y) tan 30 are equal at y.
  const meeting = gripLengthMm / 2 + (farFaceDiameterMm - faceDiameterMm) / (4 * TAN_30);
  const nearMm = Math.min(gripLengthMm, Math.max(0, meeting));
  const cones = [
    ...coneOf(layers, nearMm, faceDiameterMm, holeDiameterMm),
    ...coneOf([...layers].reverse(), gripLengthMm - nearMm, farFaceDiameterMm, holeDiameterMm).reverse(),
  ];
  return {
    stiffnessNPerMm: 1 / cones.reduce((sum, cone) => sum + 1 / cone.stiffnessNPerMm, 0),
    gripLengthMm,
    cones,
  };
}

// Thinner than that is what rounding leaves at the place where the cones meet.
const THINNEST_MM = 1e-6;

/** Pieces of one cone of a height, from its face inwards. */
function coneOf(
  layers: readonly MemberLayer[],
  heightMm: number,
  faceMm: number,
  holeDiameterMm: number,
): MemberCone[] {
  const cones: MemberCone[] = [];
  let fromMm = 0;
  for (const { thicknessMm: layerMm, modulusGPa } of layers) {
    const thicknessMm = Math.min(layerMm, heightMm - fromMm);
    if (thicknessMm < THINNEST_MM) break;
    const frustum = { outerFaceDiameterMm: faceMm + 2 * fromMm * TAN_30, thicknessMm, modulusGPa };
    cones.push({ ...frustum, ...frustumStiffness({ ...frustum, holeDiameterMm }) });
    fromMm += layerMm;
  }
  return cones;
}

const TAN_30 = 0.5773502691896257;
