// The leaves know nothing of each other, and yet what one gives has to fit what another takes: checked by
// `npm run typecheck`, never run.
import { diagnose } from '@spindlewright/diagnosis';
import { describeSeat, drawBorePlay, drawDiagnosis, drawPreloadRange, drawSeat } from '@spindlewright/drawing';
import { armGeometries, getInterface, spindleGeometries } from '@spindlewright/interfaces';
import { playFromClearance, predictSeat, pressFit, settledPreload } from '@spindlewright/taper';
import { preloadRange, threadFor, torqueFromPreload } from '@spindlewright/torque';

const record = getInterface('square-taper-jis');

/** Records to seats: one prediction for each pair of one published set. */
export const predictions = spindleGeometries(record).flatMap((spindle) =>
  armGeometries(record)
    .filter((arm) => arm.set === spindle.set)
    .map((arm) =>
      predictSeat({ spindle: spindle.geometry, arm: arm.geometry, pressing: { axialForceN: 12000, friction: 0.1 } }),
    ),
);

/** Seats to drawings, with shapes and without. */
export const drawings = predictions.map(({ handFit, pressed, verdict }) => drawSeat({ handFit, pressed, verdict }));
export const words = spindleGeometries(record).map(({ geometry }) => {
  const { handFit, pressed, verdict } = predictSeat({ trialFit: { endGapMm: 5 } });
  return describeSeat({ spindle: geometry, handFit, pressed, verdict });
});

// @ts-expect-error A whole record is no shape: its sets have to be told apart first.
predictSeat({ spindle: record, arm: record });

const thread = threadFor('M8x1');
const bearing = { outerDiameterMm: 13, holeDiameterMm: 8.4 };
const friction = { threadFriction: 0.12, bearingFriction: 0.12 };

/** Preload to press fit to what is left of it after riding; without a bound on the travel nothing can be said. */
export const settled = ((): number | null => {
  const { torqueNm } = torqueFromPreload({ preloadN: 12000, thread, bearing, ...friction });
  const { travelMm } = pressFit({
    spindle: { acrossFlatsAtEndMm: 12.65, faceAngleDeg: 2, flatLengthMm: 16 },
    arm: { acrossFlatsAtMouthMm: 13.2, faceAngleDeg: 2, boreLengthMm: 20 },
    axialForceN: 12000,
    friction: 0.1,
  });
  if (travelMm === null) return null;
  const boltStiffnessNPerMm = 200_000;
  const after = settledPreload({ preloadN: 12000, friction: 0.1, faceAngleDeg: 2, travelMm, boltStiffnessNPerMm });
  return torqueNm + after.preloadAfterShakedownN;
})();

/** Preload range, play and diagnosis to their drawings. */
export const range = drawPreloadRange({
  preloadN: preloadRange({ torqueNm: 40, thread, bearing, ...friction }).preloadN,
});
const play = { clearanceMm: 0.05, halfWidthMm: 6.35, flatWidthMm: 8 };
export const bore = drawBorePlay({
  ...play,
  rotationDeg: playFromClearance({ ...play, crankLengthMm: 170 }).rotationDeg,
});
export const diagnosis = drawDiagnosis({
  conditions: diagnose({ joint: 'square-taper-jis', observations: { 'play-at-arm': 'none' } }).conditions.map(
    ({ id, probability }) => ({ label: id, probability }),
  ),
});
