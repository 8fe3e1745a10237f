import type { Datum } from '@spindlewright/quantity';

/** Where the lines are drawn when two parts are compared; all of it judgement, stated so. */
export interface MatingData {
  /** Edition of the data. */
  dataEdition: string;
  /** Nominal diameters of threads closer than this, in mm, are one thread in practice. */
  sameDiameterMm: Datum;
  /** Excess of the bore of a pinched arm over the spindle, in mm, up to which it goes on and then fails to grip. */
  clampClosesMm: Datum;
  /** Bores and spindles closer than this, in mm, carry one nominal size. */
  sameBoreMm: Datum;
}
