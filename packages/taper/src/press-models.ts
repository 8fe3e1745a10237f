import { unequalAngles } from './angle-contact.ts';
import { plasticRing } from './plastic-ring.ts';
import { fittedPlastic, type PressModel, type PressSolver, solvePress } from './press-model.ts';
import type { Compliance } from './shapes.ts';

const withoutYield: PressModel['travel'] = ({ elasticMm }) => ({
  bounded: true,
  nominalMm: elasticMm,
  upperMm: elasticMm,
});

/** A model that differs. Bundlers may leave out a call that is marked so, but no spread: who needs none pays for none. */
const variant = (model: PressModel, changes: Partial<PressModel>): PressModel => ({ ...model, ...changes });

const fitted = /* @__PURE__ */ variant(fittedPlastic, { travel: withoutYield });

// The ring of Lame stands for itself: no collar, no thickness.
const ring: PressModel = {
  factors({ arm, spindle }, bossRatio) {
    const square = bossRatio ** 2;
    return {
      armFactor: (square + 1) / (square - 1) + arm.poissonsRatio,
      spindleFactor: 1 - spindle.poissonsRatio,
    };
  },
  thickness: 1,
  collars: 0,
  travel: withoutYield,
  lower: 0.95,
  upper: 1.15,
};

const ringPlastic = /* @__PURE__ */ variant(ring, {
  travel({ pressureMPa, factors }, { arm, spindle, acrossFlatsMm, faceAngleRad }, bossRatio) {
    const { growthFactor, carries } = plasticRing({
      radiusRatio: bossRatio,
      pressureRatio: pressureMPa / arm.yieldStrengthMPa,
      poissonsRatio: arm.poissonsRatio,
    });
    // exp(2) is the largest (c/ri)^2 Sy/p that any ring reaches before it gives way, at ro/ri = e.
    const growth = carries ? growthFactor : Math.exp(2) - (1 - arm.poissonsRatio);
    const give = growth / arm.youngsModulusGPa + factors.spindleFactor / spindle.youngsModulusGPa;
    const travelMm = (pressureMPa * (acrossFlatsMm / 2000) * give) / Math.tan(faceAngleRad);
    return { bounded: carries, nominalMm: travelMm, upperMm: travelMm };
  },
  lower: 0.65,
});

/** Solves the press by the model of each name. @internal */
export const pressSolvers: Readonly<Record<Compliance, PressSolver>> = {
  fitted: (state, place) => solvePress(state, place, fitted, unequalAngles),
  'fitted-plastic': (state, place) => solvePress(state, place, fittedPlastic, unequalAngles),
  ring: (state, place) => solvePress({ ...state, growthMm: 0 }, place, ring, unequalAngles),
  'ring-plastic': (state, place) => solvePress({ ...state, growthMm: 0 }, place, ringPlastic, unequalAngles),
};
