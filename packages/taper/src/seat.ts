import type { Finding, Limits } from '@spindlewright/quantity';

/** Where an arm sits; `L` is `Limits`, or `Limits | null` where something may not be known. */
export interface Seat<L extends Limits | null = Limits> {
  /** Depth of the arm's inner face behind the spindle end, in mm. */
  mouthFromEndMm: L;
  /** Gap between the bolt's seat and the spindle end, in mm; negative when the bolt would meet the spindle first. */
  endGapMm: L;
  /** Gap between the arm and the run-out or shoulder, in mm; negative when the arm would be stopped first. */
  shoulderGapMm: L;
  /** Length over which the flats bear, in mm; 0 or less when they do not meet. */
  engagedLengthMm: L;
}

/** A way of knowing where an arm seats: a gap read by hand, the mark of a pressed arm, or the shapes of both parts. */
export type SeatWay = 'end-gap' | 'shoulder-gap' | 'witness-mark' | 'shapes';

/** Every verdict of a seat; their places are the codes of columns. @internal */
export const SEAT_VERDICTS = [
  'seats',
  'marginal',
  'bottoms-on-end',
  'hits-shoulder',
  'too-little-engagement',
  'does-not-start',
] as const;

/** What a seat comes to, worst of the reasons first where several hold. */
export type SeatVerdict = (typeof SEAT_VERDICTS)[number];

/** How much one input moves the pressed seat. */
export interface SeatSensitivity {
  /** Path of the input field, such as `arm.acrossFlatsAtMouthMm`. */
  path: string;
  /** Shift of the pressed mouth in mm per unit of that field; the sign tells the direction. */
  mmPerUnit: number;
  /** Shift of the pressed mouth over half the width of the field's limits, in mm; at least 0. */
  effectMm: number;
}

/** Where an arm seats, before and after pressing, and whether that is good. */
export interface SeatPrediction<L extends Limits | null = Limits> {
  /** What the seat rests on: the best of what was given. */
  basis: 'trial-fit' | 'witness-mark' | 'shapes';
  /** The ways that were put together to tell the place of the mouth (without shapes: the gaps), best first. */
  ways: SeatWay[];
  /** Seat of the arm pushed on by hand. */
  handFit: Seat<L>;
  /** Seat after pressing, as if nothing stopped the arm; a negative gap tells by how much it is stopped before. */
  pressed: Seat<L>;
  /** Travel from hand fit to pressed, in mm, at least 0. */
  travelMm: Limits;
  /** Share of the travel that the stops leave, 0 to 1; 0 with a stop nearer than a nanometre. */
  pressReached: Limits;
  /** Verdict at nominal values, lowered to `marginal` when a worst case is not `seats`. */
  verdict: SeatVerdict;
  /** Verdicts with the seat farthest out (`lower`) and farthest in (`upper`). */
  worstVerdicts: { lower: SeatVerdict; upper: SeatVerdict };
  /** Inputs by how much they move the pressed seat; the first is the reading to improve. */
  sensitivity: SeatSensitivity[];
  /** Cautions, assumptions and what is not known. */
  findings: Finding[];
}
