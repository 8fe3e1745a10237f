import type { Limits } from '@spindlewright/quantity';
import { seatAxial } from './seat-axial.ts';
import type { SeatPicture } from './seat-picture.ts';
import { seatRadial } from './seat-radial.ts';

/** Which of the two gaps: bolt seat to spindle end, or arm to shoulder. @internal */
export type GapKind = 'end' | 'shoulder';

/** A gap as given and as drawn. @internal */
export interface Gap {
  /** As given. */
  limits: Limits;
  /** As drawn, mm: never negative, larger than given where the other gap stops the arm first. */
  drawnMm: number;
}

/** The arm in one place. @internal */
export interface Place {
  /** Distance of the arm's inner face from the spindle's end face as drawn, mm. */
  mouthMm: number;
  /** How far short of the place asked for the arm is stopped, mm, at least 0. */
  shortMm: number;
  /** Bolt seat to spindle end, when known. */
  end: Gap | null;
  /** Arm to shoulder or run-out, when known. */
  shoulder: Gap | null;
  /** What the arm touches there, if anything; both at once counts as the spindle's end, the worse of the two. */
  touching: GapKind | null;
}

/** All sizes of the section, finite and drawable, in mm. @internal */
export interface SeatScene {
  /** Spindle: half across flats at the end, growth of it a millimetre, lengths from the end, radii. */
  spindle: {
    halfAtEndMm: number;
    slope: number;
    chamferMm: number;
    flatEndMm: number;
    wallMm: number | null;
    cornerRadiusMm: number;
    wallRadiusMm: number;
  };
  /** Arm: lengths from its inner face, half across flats there, radii. */
  arm: {
    boltSeatMm: number;
    boreLengthMm: number;
    intrusionMm: number;
    mouthHalfMm: number;
    slope: number;
    chamferMm: number;
    bossRadiusMm: number;
    recessRadiusMm: number;
  };
  /** The arm pushed on by hand. */
  hand: Place;
  /** The arm pressed. */
  pressed: Place;
  /** What stops the pressed arm, if anything does. */
  stop: GapKind | null;
  /** Where the arm meets shoulder or run-out, mm from the spindle's end. */
  stopPlaneMm: number;
  /** Whether the wall, not the run-out, is the stop. */
  stopIsWall: boolean;
  /** Which shapes are not known. */
  standIn: { spindle: boolean; arm: boolean };
  /** Whether sizes and gaps as given cannot all hold. */
  disagree: boolean;
}

/** Works out where everything lies; gaps rule, outlines give way. @internal */
export function seatScene(picture: SeatPicture): SeatScene {
  const axial = seatAxial(picture);
  const radial = seatRadial(picture, axial);
  const { pressed } = axial;
  return {
    spindle: { ...radial.spindle, flatEndMm: axial.flatEndMm, wallMm: axial.wallMm },
    arm: {
      ...radial.arm,
      boltSeatMm: axial.boltSeatMm,
      boreLengthMm: axial.boreLengthMm,
      intrusionMm: axial.intrusionMm,
      chamferMm: axial.mouthChamferMm,
    },
    hand: axial.hand,
    pressed,
    stop: pressed.touching,
    stopPlaneMm: axial.stopPlaneMm,
    stopIsWall: axial.stopIsWall,
    standIn: { spindle: picture.spindle === undefined, arm: picture.arm === undefined },
    disagree: axial.disagree,
  };
}
