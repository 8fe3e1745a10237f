import type { ArmReadings, Fixing, Reading, SpindleReadings } from '../job.ts';
import type { PartKind } from './part.ts';

/** What a part is wanted for: the counterpart that stays on the bicycle. */
export interface Need {
  /** Format of the need. */
  format: 'spindlewright-need-1';
  /** What is wanted. */
  for: PartKind;
  /** Id of the joint: of the spindle when an arm is wanted, of the arm when a spindle or a puller is, of either for a bolt. */
  interface?: string;
  /** Id of the thread that takes the bolt, the pedals or the puller, when it is known by itself. */
  thread?: string;
  /** Id of the bolt circle of the arm, when a chainring is wanted. */
  boltCircle?: string;
  /** Id of the shell of the frame, when a spindle with its cups is wanted. */
  shell?: string;
  /** Side of the bicycle. */
  side?: 'drive' | 'non-drive';
  /** Length that a new arm has to have, mm; any when absent. */
  armLengthMm?: number;
  /** Length of the old spindle, mm; the chainline is reckoned against it. */
  spindleLengthMm?: number;
  /** What was read on the spindle that stays. */
  spindle?: SpindleReadings;
  /** What was read on the arm that stays. */
  arm?: ArmReadings;
  /** State of the flats when the arm is pressed on. */
  flats?: 'greased' | 'dry' | 'unknown';
  /** The fixing; `M8x1` with unknown lubrication when absent. */
  fixing?: Fixing;
  /** Torque that the part maker asks for, Nm. */
  partMakerTorqueNm?: Reading;
}
