import { describeSeatDistribution, drawSeatDistribution } from '@spindlewright/drawing';
import { type SeatInput, seatDistribution } from '@spindlewright/taper';
import type { SeatChances, SeatWay } from './seat-part.ts';

// The standard error of a share p of n samples is sqrt(p (1 - p)/n), at most 2.9 in 100 here: judgement, enough beside
// limits that decide, and the sheet is made while the mechanic waits.
const SAMPLES = 300;
const SEED = 1;

/** The leading way of knowing a seat as a distribution, drawn. @internal */
export function chancesOf(lead: SeatWay, input: SeatInput): SeatChances {
  const { verdicts, kept } = seatDistribution({ ...input, samples: SAMPLES, seed: SEED, keepSamples: true });
  const samplesOf = (key: 'endGapMm' | 'shoulderGapMm'): number[] =>
    (kept ?? []).flatMap(({ pressed }) => pressed[key] ?? []);
  const { endGapMm, shoulderGapMm } = lead.prediction.pressed;
  const picture = {
    endGap: { samplesMm: samplesOf('endGapMm'), limitsMm: endGapMm },
    shoulderGap: { samplesMm: samplesOf('shoulderGapMm'), limitsMm: shoulderGapMm },
  };
  return {
    verdicts: verdicts.filter(({ probability }) => probability > 0),
    samples: SAMPLES,
    seed: SEED,
    drawing: {
      narrowSvg: drawSeatDistribution({ ...picture, idPrefix: 'chances-narrow' }),
      wideSvg: drawSeatDistribution({ ...picture, idPrefix: 'chances-wide', widthPx: 720 }),
      description: describeSeatDistribution(picture),
    },
  };
}
