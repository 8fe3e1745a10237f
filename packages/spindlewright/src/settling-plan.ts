import { type Limits, limitsOf } from '@spindlewright/quantity';
import { boltTurns, settledPreload } from '@spindlewright/taper';
import { threadFor } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { PressPlan, SeatFacts } from './seat-part.ts';
import type { SettlingPlan } from './tightening-part.ts';

/** Domain of the settling estimate. */
const LONGEST_TRAVEL_MM = 50;

/** Turns of the bolt while the arm is pressed, and what riding leaves of its preload, at every corner. @internal */
export function settlingPlan(press: PressPlan, seat: SeatFacts): SettlingPlan | undefined {
  const { travelMm } = seat.lead.prediction;
  // Outside the range that the estimate is made for nothing is said rather than something wrong.
  if (travelMm.lower <= 0 || travelMm.upper > LONGEST_TRAVEL_MM) return undefined;
  const stiffness = limitsOf(jobDefaults.boltStiffness);
  const { pitchMm } = threadFor(press.thread);
  const turnsAt = (travel: number, force: number, k: number) =>
    boltTurns({ travelMm: travel, axialForceN: force, boltStiffnessNPerMm: k, boltPitchMm: pitchMm });
  const over = (pick: (turns: ReturnType<typeof boltTurns>) => number): Limits => ({
    lower: pick(turnsAt(travelMm.lower, press.preloadN.lower, stiffness.upper)),
    nominal: pick(turnsAt(travelMm.nominal, press.preloadN.nominal, stiffness.nominal)),
    upper: pick(turnsAt(travelMm.upper, press.preloadN.upper, stiffness.lower)),
  });
  const settled = (force: number, friction: number, travel: number, k: number) =>
    settledPreload({
      preloadN: force,
      friction,
      faceAngleDeg: jobDefaults.settlingFaceAngle.value,
      travelMm: travel,
      boltStiffnessNPerMm: k,
    });
  const corners = (['lower', 'upper'] as const).flatMap((f) =>
    (['lower', 'upper'] as const).flatMap((m) =>
      (['lower', 'upper'] as const).flatMap((t) =>
        (['lower', 'upper'] as const).map(
          (k) => settled(press.preloadN[f], press.flatsFriction[m], travelMm[t], stiffness[k]).preloadAfterShakedownN,
        ),
      ),
    ),
  );
  const nominal = settled(press.preloadN.nominal, press.flatsFriction.nominal, travelMm.nominal, stiffness.nominal);
  const lossAt = (k: number): number =>
    settled(press.preloadN.nominal, press.flatsFriction.nominal, travelMm.nominal, k).preloadLossPerMicrometreN;
  return {
    tighteningTurns: over((turns) => turns.boltTurns),
    solidBoltTurns: over((turns) => turns.solidTurns),
    preloadAfterShakedownN: {
      lower: Math.min(...corners),
      nominal: nominal.preloadAfterShakedownN,
      upper: Math.max(...corners),
    },
    preloadLossPerMicrometreN: {
      lower: lossAt(stiffness.lower),
      nominal: lossAt(stiffness.nominal),
      upper: lossAt(stiffness.upper),
    },
  };
}
