import lossReasons from '../../data/losses-reasons.json' with { type: 'json' };
import scaleReasons from '../../data/scale-reasons.json' with { type: 'json' };
import type { ActionId, BesideId } from '../types.ts';

/** Why the losses are as they are. */
export const LOSS_REASONS = lossReasons as {
  unit: string;
  doNotRideAbove: string;
  lessUrgent: string;
  actions: Readonly<Record<ActionId, string>>;
  besides: Readonly<Record<BesideId, string>>;
};

/** Where the scale of words comes from. */
export const SCALE_REASON = scaleReasons as { standing: string; note: string; sources: readonly string[] };
