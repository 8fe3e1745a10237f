import type { FieldSpec, FieldSpecs, Finding } from '@spindlewright/quantity';
import { headMissesCorners, squareHoleUnderHead } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { refuse } from './refuse.ts';

/** Bearing face of a head, nut or washer on a round hole. */
export interface RoundBearing {
  /** Outer diameter of the face that bears, in mm. */
  outerDiameterMm: number;
  /** Diameter of the hole under it in mm, below the outer one; 0 for a solid face. */
  holeDiameterMm: number;
}

/** Bearing face of a head or washer on the square hole of a crank arm. */
export interface SquareBearing {
  /** Outer diameter of the face that bears, in mm. */
  outerDiameterMm: number;
  /** Across flats of the square under it, in mm, below the outer diameter. */
  squareHoleMm: number;
  /** Radius of a round relief cut about each corner of the square, in mm; 0 for sharp corners. */
  cornerReliefMm?: number;
}

/** The face that turns under load: what its friction acts on. */
export type Bearing = RoundBearing | SquareBearing;

const outer = { type: 'number', unit: 'mm', min: 0.1, max: 500 } as const;

const roundFields: FieldSpecs = {
  outerDiameterMm: outer,
  holeDiameterMm: { type: 'number', unit: 'mm', min: 0, max: 500 },
};

const squareFields: FieldSpecs = {
  outerDiameterMm: outer,
  squareHoleMm: { type: 'number', unit: 'mm', min: 0.1, max: 500 },
  cornerReliefMm: { type: 'number', unit: 'mm', min: 0, max: 500, optional: true },
};

/** Tells a square hole from a round one. @internal */
export const isSquare = (bearing: Bearing): bearing is SquareBearing => Object.hasOwn(bearing, 'squareHoleMm');

/** Description of the field `bearing`, by the kind of hole that came. @internal */
export const bearingSpec = (input: unknown): FieldSpec => {
  const bearing = (input as { bearing?: unknown } | null | undefined)?.bearing;
  const square = typeof bearing === 'object' && bearing !== null && Object.hasOwn(bearing, 'squareHoleMm');
  return { type: 'object', fields: square ? squareFields : roundFields };
};

/** A ring thinner than that is no face: its area would come out as a difference of rounding errors. @internal */
export const THINNEST_RING_MM = 0.01;

/** Refuses a hole that leaves nothing to bear on. @internal */
export function checkRing(where: string, bearing: Bearing, path = 'bearing'): void {
  const across = isSquare(bearing) ? bearing.squareHoleMm : bearing.holeDiameterMm;
  if (across > bearing.outerDiameterMm - THINNEST_RING_MM) {
    const hole = `${path}.${isSquare(bearing) ? 'squareHoleMm' : 'holeDiameterMm'}`;
    throw refuse(where, hole, String(across), `below the outer diameter, ${bearing.outerDiameterMm} mm, by 0.01 mm`);
  }
  if (isSquare(bearing) && (bearing.cornerReliefMm ?? 0) > bearing.squareHoleMm / 2) {
    throw refuse(where, `${path}.cornerReliefMm`, String(bearing.cornerReliefMm), 'at most half the square');
  }
}

/** Area that bears, and the radius at which its friction acts. @internal */
export interface BearingRing {
  areaMm2: number;
  /** Even pressure: integral of r dA over the area. */
  evenPressureRadiusMm: number;
  /** What VDI 2230 and handbook collars take: mean of outer and inner radius; for a square that of even pressure. */
  customaryRadiusMm: number;
}

/** Works out the ring. @internal */
export function ringOf(bearing: Bearing): BearingRing {
  const outerRadius = bearing.outerDiameterMm / 2;
  if (!isSquare(bearing)) {
    const holeRadius = bearing.holeDiameterMm / 2;
    const areaMm2 = Math.PI * (outerRadius ** 2 - holeRadius ** 2);
    return {
      areaMm2,
      evenPressureRadiusMm: ((2 / 3) * Math.PI * (outerRadius ** 3 - holeRadius ** 3)) / areaMm2,
      customaryRadiusMm: (outerRadius + holeRadius) / 2,
    };
  }
  const { area, moment } = discLessSquare(outerRadius, bearing.squareHoleMm / 2, bearing.cornerReliefMm ?? 0);
  return { areaMm2: area, evenPressureRadiusMm: moment / area, customaryRadiusMm: moment / area };
}

/**
 * Area and first moment about the axis of a disc (radius R) less a square (half width h) with round reliefs (radius c)
 * about its corners. On the circle of radius r, an eighth of the turn has the square over all angles from acos(h/r)
 * to 45 degrees and the relief over an arc about the diagonal, so what is left is the smaller of the two rests; area =
 * 8 integral of r rest dr, moment = 8 integral of r^2 rest dr.
 */
function discLessSquare(outerRadius: number, half: number, relief: number): { area: number; moment: number } {
  const corner = half * Math.SQRT2;
  const rest = (r: number): number => {
    const besideSquare = Math.acos(Math.min(1, half / r));
    const cosine = (r * r + corner * corner - relief * relief) / (2 * r * corner);
    return Math.max(0, Math.min(besideSquare, Math.PI / 4 - Math.acos(Math.min(1, Math.max(-1, cosine)))));
  };
  // The rest has corners and steep ends at these radii only: the square's side, the relief's extremes, the corner, and
  // where the relief crosses the side.
  const crossing = Math.hypot(half, half - relief);
  const knots = [half, corner - relief, crossing, corner, corner + relief, outerRadius].filter(
    (r) => r >= half && r <= outerRadius,
  );
  let area = 0;
  let moment = 0;
  for (let k = 1; k < knots.length; k++) {
    const from = knots[k - 1] ?? half;
    const span = (knots[k] ?? half) - from;
    // r = from + span (1 - cos t)/2 makes the square-root ends smooth, so that Simpson's rule converges fast.
    // At both ends the slices are 0.
    for (let i = 1; i < PANELS; i++) {
      const t = (Math.PI * i) / PANELS;
      const weight = (i % 2 === 1 ? 4 : 2) * (Math.PI / PANELS / 3);
      const r = from + (span * (1 - Math.cos(t))) / 2;
      const slice = 8 * weight * rest(r) * ((span * Math.sin(t)) / 2) * r;
      area += slice;
      moment += slice * r;
    }
  }
  return { area, moment };
}

const PANELS = 64;

/** What is worth saying about the face itself. @internal */
export function bearingFindings(bearing: Bearing): Finding[] {
  if (!isSquare(bearing)) return [];
  return [
    raiseText('square-hole-under-head', squareHoleUnderHead, 'note', {}, { path: 'bearing' }),
    ...cornerFindings(bearing),
  ];
}

/** Says so when the face does not reach over the corners of the square and their reliefs. @internal */
export function cornerFindings(bearing: SquareBearing): Finding[] {
  const { outerDiameterMm, squareHoleMm, cornerReliefMm = 0 } = bearing;
  // A relief is a circle about the corner: along the diagonal it reaches its own radius further, on either side.
  const cornerMm = squareHoleMm * Math.SQRT2 + 2 * cornerReliefMm;
  if (outerDiameterMm > cornerMm) return [];
  return [
    raiseText('head-misses-corners', headMissesCorners, 'caution', { outerDiameterMm, cornerMm }, { path: 'bearing' }),
  ];
}
