import { checkInput, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { boltMessages as messages } from './messages/bolt.ts';
import { faceAngleSpec, forceSpec, frictionSpec } from './shapes.ts';

/** What riding leaves of the preload. */
export interface SettledPreload {
  /** Preload once cyclic load has shaken the axial friction out, without wear, in N. */
  preloadAfterShakedownN: number;
  /** Axial force of the same press without friction, in N: what the wedge alone takes. */
  frictionlessForceN: number;
  /** Further loss for each micrometre of bedding or wear per flat, in N/um. */
  preloadLossPerMicrometreN: number;
  /** Cautions. */
  findings: Finding[];
}

/**
 * Estimates what is left of the bolt's preload after the first rides have shaken the friction out of the taper.
 *
 * @remarks
 * Formula: without friction the press holds against Fs = F0 sin a/(sin a + mu cos a). The arm creeps on by d where the
 * bolt, F0 - k d, meets the press, Fs (1 + d/travel): F1 = F0 - k (F0 - Fs)/(k + Fs/travel). Wear of w per flat lets the
 * arm move on by w/tan a, which costs a further k w/tan a when it follows all the way.
 *
 * Validity: friction wholly shaken out, bolt elastic and tight, thread not turning. No lower bound of the preload is
 * claimed: wear goes on. The loss at wear is that of an arm that follows at full normal force; one that lags loses less.
 *
 * Accuracy: closed form; not checked against measured joints, since no measurement was found.
 *
 * @param input - `preloadN` 0 to 200000 N; `friction` of the flats 0 to 1; `faceAngleDeg` 0.2 to 10 deg; `travelMm` of the
 * press above 0 to 50 mm (see {@link pressFit}); `boltStiffnessNPerMm` 1000 to 10000000 N/mm, bolt and its seat in series.
 * @returns Forces in N, at least 0, and the loss in N per micrometre.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { settledPreload } from '@spindlewright/taper';
 * const settled = settledPreload({
 *   preloadN: 12000, friction: 0.1, faceAngleDeg: 2, travelMm: 0.82, boltStiffnessNPerMm: 200000,
 * });
 * [settled.frictionlessForceN.toFixed(0), settled.preloadAfterShakedownN.toFixed(0)]; // => ['3106', '3271']
 * ```
 * @see Statics of the wedge and the bolt as a spring; shakedown seen in the torque rows of source `fe-square-taper`.
 */
export function settledPreload(input: {
  preloadN: number;
  friction: number;
  faceAngleDeg: number;
  travelMm: number;
  boltStiffnessNPerMm: number;
}): SettledPreload {
  checkInput({
    where: 'settledPreload',
    value: input,
    fields: {
      preloadN: forceSpec('number'),
      friction: frictionSpec('number'),
      faceAngleDeg: faceAngleSpec('number'),
      travelMm: { type: 'number', unit: 'mm', above: 0, max: 50 },
      boltStiffnessNPerMm: { type: 'number', unit: 'N/mm', min: 1e3, max: 1e7 },
    },
  });
  const { preloadN, friction, travelMm, boltStiffnessNPerMm } = input;
  const tangent = Math.tan((input.faceAngleDeg * Math.PI) / 180);
  const frictionlessForceN = (preloadN * tangent) / (tangent + friction) + 0;
  const creepMm = (preloadN - frictionlessForceN) / (boltStiffnessNPerMm + frictionlessForceN / travelMm);
  const preloadAfterShakedownN = preloadN - boltStiffnessNPerMm * creepMm + 0;
  const preloadLossPerMicrometreN = boltStiffnessNPerMm / (1000 * tangent);
  return {
    preloadAfterShakedownN,
    frictionlessForceN,
    preloadLossPerMicrometreN,
    findings: [
      find(messages, 'preload-needs-recheck', 'caution', { preloadAfterShakedownN, preloadN }),
      find(messages, 'no-lower-bound', 'caution', { preloadLossPerMicrometreN }),
    ],
  };
}
