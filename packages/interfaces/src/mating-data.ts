import type { Datum } from '@spindlewright/quantity';

/** Where the lines are drawn when sizes are compared; all of it judgement, stated so. */
export interface ThreadFitData {
  /** Edition of the data. */
  dataEdition: string;
  /** Nominal diameters closer than this, in mm, are one thread in practice. */
  sameDiameterMm: Datum;
  /** Pitches closer than this share of the coarser one go together. */
  samePitchShare: Datum;
  /** Share of the height of the thread below which the smaller part drops in. */
  leastOverlapShare: Datum;
  /** Excess of the bore of a pinched arm over the spindle, in mm, up to which it goes on and then fails to grip. */
  clampClosesMm: Datum;
  /** Bores closer than this, in mm, carry one nominal size. */
  sameBoreMm: Datum;
}
