import type { Finding, Limits } from '@spindlewright/quantity';
import { find } from '../find.ts';
import { bounds, type Corner, opposite } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { NO_GAP_MM } from './measured.ts';
import type { SplinePress } from './spline-press.ts';

/** What the gap at the stop tells of the press. */
type SplineTravel = Pick<SplinePress, 'travelMm' | 'leftToStopMm' | 'stiffnessNPerMm' | 'interferenceMm'>;

/** Travel, what is left of it, stiffness and interference, with the force growing evenly up to the stop. @internal */
export function splineTravel(
  gap: Limits | undefined,
  toStop: Limits,
  angle: Limits,
  reached: (corner: Corner, whole: Limits) => number,
): SplineTravel {
  if (gap === undefined) return { travelMm: null, leftToStopMm: null, stiffnessNPerMm: null, interferenceMm: null };
  const way = bounds((corner) => Math.max(0, corner(gap)));
  const travelMm = bounds((corner) => corner(way) * reached(corner, toStop));
  return {
    travelMm,
    leftToStopMm: bounds((corner) => corner(way) * (1 - reached(opposite(corner), toStop))),
    stiffnessNPerMm: gap.lower > NO_GAP_MM ? bounds((corner) => corner(toStop) / corner(gap, false)) : null,
    interferenceMm: bounds((corner) => 2 * corner(travelMm) * Math.tan((corner(angle) * Math.PI) / 180)),
  };
}

/** What a gap at the stop, or its want, has to say. @internal */
export function gapFindings(gap: Limits | undefined): Finding[] {
  const at = { path: 'gapAtStopMm' };
  if (gap === undefined) return [find(messages, 'travel-not-reckoned', 'note', {}, at)];
  if (gap.upper <= NO_GAP_MM) return [find(messages, 'stop-before-press', 'stop', {}, at)];
  return [
    ...(gap.lower > NO_GAP_MM
      ? []
      : [
          find(messages, 'stop-may-come-first', 'caution', {}, at),
          find(messages, 'press-stiffness-unbounded', 'note', {}, at),
        ]),
    find(messages, 'press-grows-evenly', 'note'),
  ];
}
