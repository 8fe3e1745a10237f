// Numbers of `seatThresholds` by themselves, so that a verdict costs a page no words about them.

/** Clearance in mm that both gaps have to keep. @internal */
export const CLEAR_GAP_MM = 0.5;

/** Share of the shorter usable flat that has to be engaged. @internal */
export const USABLE_FLAT_SHARE = 0.75;
