import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds } from './interval.ts';
import { resolveJoint } from './joint.ts';
import { loadMessages as messages } from './messages/load.ts';
import {
  carryingSection,
  legLoad,
  loadSpec,
  opensInPlaces,
  type PedalLoad,
  type SquareOrientation,
  unloadingForceAt,
} from './pedal-load.ts';
import { type ArmShape, armSpec, type SpindleShape, spindleSpec } from './shapes.ts';

/** Axial force that keeps every edge of the flats loaded. */
export interface NeededPreload {
  /** For the left taper, in N, at least 0; the upper limit is enough whatever the inputs are; null without contact. */
  leftAxialForceN: Limits | null;
  /** For the right taper, in N, at least 0; null without contact. */
  rightAxialForceN: Limits | null;
  /** What it means and what it does not. */
  findings: Finding[];
}

/**
 * Gives the axial force that a wanted margin against the first unloading of an edge needs.
 *
 * @remarks
 * Formula: the inverse of {@link loadMargin}: F = 4 (sin a + mu cos a) m [3 T/(2 b) + 3 f M/L] on the left, with the larger
 * of the two terms on the right, m the wanted margin, f as there.
 *
 * Validity: that of {@link loadMargin}. More force also presses the arm farther on; see {@link pressFit} for what the boss
 * stands. The friction is that while pressing: a slicker press gives more normal force for the same bolt.
 *
 * Accuracy: that of {@link loadMargin}.
 *
 * @param input - `spindle`, `arm` as readings; `friction` 0 to 1; `load` in N, mm, deg; `squareOrientation`;
 * `firstEdgeUnloading` 0.01 to 100, 1 for an edge that just unloads under this load.
 * @returns Axial forces in N as limits.
 * @throws {@link DomainError} for unknown keys and values outside the domain.
 * @example
 * ```ts
 * import { preloadFor } from '@spindlewright/taper';
 * const needed = preloadFor({
 *   spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
 *   arm: { acrossFlatsAtMouthMm: 13.5777, faceAngleDeg: 2, boreLengthMm: 15.5 },
 *   friction: 0.1,
 *   squareOrientation: 'corner-in-line',
 *   load: { pedalForceN: 700, crankLengthMm: 170, overhangMm: 65, faceToSeatMm: 15, crankAngleDeg: 0 },
 *   firstEdgeUnloading: 1,
 * });
 * ((needed.leftAxialForceN?.nominal ?? 0) / 1000).toFixed(1); // => '14.9'
 * ```
 * @see Statics; source `fe-square-taper` for the torque at which an edge lifts.
 */
export function preloadFor(input: {
  spindle: SpindleShape<Measurand>;
  arm: ArmShape<Measurand>;
  friction: Measurand;
  load: PedalLoad;
  squareOrientation: SquareOrientation;
  firstEdgeUnloading: number;
}): NeededPreload {
  checkInput({
    where: 'preloadFor',
    value: input,
    fields: {
      spindle: { type: 'object', fields: spindleSpec('measurand') },
      arm: { type: 'object', fields: armSpec('measurand') },
      ...loadSpec,
      firstEdgeUnloading: { type: 'number', unit: '', min: 0.01, max: 100 },
    },
  });
  const section = carryingSection(resolveJoint(input.spindle, input.arm), hardLimits(input.friction));
  const leg = legLoad(input.load, input.squareOrientation);
  const bears = section.lengthMm.lower > 1e-3 && section.flatWidthMm.lower > 1e-3;
  const needed = (side: 'left' | 'right'): Limits | null =>
    bears
      ? bounds(
          (corner) => corner(section.wedge) * input.firstEdgeUnloading * unloadingForceAt(section, leg, corner)[side],
        )
      : null;
  const findings = [
    find(messages, 'preload-has-other-limits', 'caution'),
    find(messages, 'margin-compares-only', 'caution'),
  ];
  const normalForceN = bounds((corner) => input.firstEdgeUnloading * unloadingForceAt(section, leg, corner).right);
  if (bears && normalForceN.lower > 0) findings.push(...opensInPlaces(section, leg, normalForceN));
  return {
    leftAxialForceN: needed('left'),
    rightAxialForceN: needed('right'),
    findings: bears ? findings : [find(messages, 'no-contact', 'stop'), ...findings],
  };
}
