import type { SeatScene } from './seat-scene.ts';
import type { Point } from './view.ts';

/** Fixing bolt, washer and puller recess as drawn, mm: stand-ins after common sizes, not to measure. @internal */
export const FIXING = {
  shankRadius: 4,
  coreRadius: 3.3,
  washerThickness: 1.6,
  headRadius: 6.5,
  headHeight: 6,
  recessDepth: 9.5,
  threadDepth: 0.5,
} as const;

/** Distance of a spindle surface from the axis, in the section through the flats. @internal */
export function spindleHalf(scene: SeatScene, zMm: number): number {
  const { halfAtEndMm, slope, chamferMm } = scene.spindle;
  const flat = halfAtEndMm + slope * zMm;
  return zMm >= chamferMm ? flat : flat - 0.6 * (chamferMm - zMm);
}

/** Upper outline of the spindle from its end face to the break, without closing. @internal */
export function spindleOutline(scene: SeatScene, breakMm: number): Point[] {
  const { chamferMm, flatEndMm, wallMm, cornerRadiusMm, wallRadiusMm } = scene.spindle;
  const flatHalf = spindleHalf(scene, flatEndMm);
  const runOutEnd = wallMm ?? flatEndMm + Math.max(1.5, (cornerRadiusMm - flatHalf) / 0.8);
  // Below 45 degrees throughout, so that a chamfered bore clears it wherever the shoulder gap is not used up.
  const rise = Math.min(cornerRadiusMm - flatHalf, 0.9 * (runOutEnd - flatEndMm));
  const runOut = Array.from({ length: 6 }, (_, step): Point => {
    const t = (step + 1) / 6;
    return [flatEndMm + t * (runOutEnd - flatEndMm), flatHalf + rise * t * t];
  });
  const behind: Point[] =
    wallMm === null
      ? [[breakMm, flatHalf + rise]]
      : [
          [wallMm, wallRadiusMm],
          [breakMm, wallRadiusMm],
        ];
  const start: Point[] = [
    [0, spindleHalf(scene, 0)],
    [chamferMm, spindleHalf(scene, chamferMm)],
    [flatEndMm, flatHalf],
  ];
  return [...start, ...runOut, ...behind];
}

/**
 * Upper half of the arm's cut with its inner face at `mouthMm`. Where the bore would cut into the spindle (interference of
 * a press, some hundredths) it is drawn opened just that far: parts are never drawn through each other. @internal
 */
export function armOutline(scene: SeatScene, mouthMm: number): Point[] {
  const { arm } = scene;
  const seat = mouthMm - arm.boltSeatMm;
  const face = seat - FIXING.recessDepth;
  const edge = mouthMm - arm.chamferMm;
  const innerEnd = mouthMm - arm.boreLengthMm;
  const nominalBore = (z: number): number => arm.mouthHalfMm - arm.slope * (mouthMm - z);
  // Both surfaces are straight between these, so the deepest overlap lies at one of them.
  const { chamferMm, flatEndMm } = scene.spindle;
  const [from, to] = [Math.max(0, innerEnd), Math.min(mouthMm, flatEndMm)];
  const overlap = [from, chamferMm, edge, to]
    .filter((z) => z >= from && z <= to)
    .map((z) => spindleHalf(scene, z) - nominalBore(Math.min(z, edge)) - Math.max(0, z - edge));
  const opened = Math.max(0, ...overlap);
  const bore = (z: number): number => Math.max(nominalBore(z) + opened, 1);
  const relief: Point[] =
    innerEnd - seat > 0.01
      ? [
          [innerEnd, bore(innerEnd)],
          [innerEnd, bore(innerEnd) + 0.7],
          [seat, bore(innerEnd) + 0.7],
        ]
      : [[seat, bore(seat)]];
  return [
    [face, arm.recessRadiusMm],
    [face, arm.bossRadiusMm],
    [mouthMm, arm.bossRadiusMm],
    [mouthMm, bore(edge) + arm.chamferMm],
    [edge, bore(edge)],
    ...relief,
    [seat, arm.recessRadiusMm],
  ];
}

/** Largest radius that washer and head may have inside the recess. */
const washerRadius = (scene: SeatScene): number => scene.arm.recessRadiusMm - 0.8;

/** Shank radius that fits the spindle. @internal */
export const shankRadius = (scene: SeatScene): number => Math.min(FIXING.shankRadius, 0.55 * scene.spindle.halfAtEndMm);

/** Upper half of the washer, with what reaches into the bore; `seatMm` is the plane of the bolt seat. @internal */
export function washerOutline(scene: SeatScene, seatMm: number): Point[] {
  const inner = shankRadius(scene) + 0.2;
  const outer = washerRadius(scene);
  const intrusion = scene.arm.intrusionMm;
  const lip = Math.max(Math.min(spindleHalf(scene, 0), 0.8 * scene.arm.mouthHalfMm), inner + 0.5);
  const reach: Point[] =
    intrusion === 0
      ? [[seatMm, inner]]
      : [
          [seatMm, lip],
          [seatMm + intrusion, lip],
          [seatMm + intrusion, inner],
        ];
  return [
    [seatMm - FIXING.washerThickness, inner],
    [seatMm - FIXING.washerThickness, outer],
    [seatMm, outer],
    ...reach,
  ];
}

/** The bolt as a whole: head and shank down to its tip. @internal */
export function boltOutline(scene: SeatScene, seatMm: number, tipMm: number): Point[] {
  const under = seatMm - FIXING.washerThickness;
  const head = Math.min(FIXING.headRadius, washerRadius(scene) - 0.6);
  const top = under - FIXING.headHeight;
  const shank = shankRadius(scene);
  const upper: Point[] = [
    [top, head - 0.8],
    [top + 0.6, head],
    [under, head],
    [under, shank],
    [tipMm - 0.8, shank],
    [tipMm, shank - 0.8],
  ];
  return [...upper, ...upper.map(([z, radius]): Point => [z, -radius]).reverse()];
}

/** Freehand break line by ISO 128: a wave between two points at one end of a part. @internal */
export function breakLine(from: Point, to: Point): Point[] {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, step): Point => {
    const t = step / steps;
    const wave = 0.35 * Math.sin(t * Math.PI * 4) * Math.sin(t * Math.PI);
    const along: Point = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
    return from[0] === to[0] ? [along[0] + wave, along[1]] : [along[0], along[1] + wave];
  });
}
