import type { Datum } from '@spindlewright/quantity';
import type { Claim, Conflict, FixingHead, MateVerdict, ThreadRecord, TorquePractice } from './record.ts';

/** What a neighbour record is about: an interface beside the joint that a replacement has to match, or a convention. */
export type NeighbourKind =
  | 'shell-thread'
  | 'shell-bore'
  | 'fixing'
  | 'puller-thread'
  | 'pedal-thread'
  | 'bolt-circle'
  | 'convention';

/** What is known about two neighbours of one kind put together. */
export interface NeighbourRule extends Claim {
  /** Record id of the part that goes in or on. */
  male: string;
  /** Record id of the part that takes it. */
  female: string;
  /** What happens. */
  verdict: MateVerdict;
}

/** A width of a shell. */
export interface ShellWidth {
  /** Id, unique in its list. */
  id: string;
  /** Width in mm. */
  widthMm: Datum;
  /** What a reader has to know to use it. */
  note?: string;
}

/** Two threads of one part, by the side of the bicycle. */
export interface SidedThreads {
  /** Left, the non-drive side. */
  left: ThreadRecord;
  /** Right, the drive side. */
  right: ThreadRecord;
}

/** What every neighbour record holds, whatever its kind. */
export interface NeighbourRecordBase {
  /** Edition of the data. */
  dataEdition: string;
  /** Id, never reused. */
  id: string;
  /** Ids that this record had before. */
  aliases: readonly string[];
  /** Name for people. */
  title: string;
  /** One or two sentences. */
  summary: string;
  /** Standards and documents that govern it. */
  documents: readonly Claim[];
  /** Further facts. */
  claims: readonly Claim[];
  /** Torques as published and practised; never merged. */
  torquePractice: readonly TorquePractice[];
  /** What happens with other records of the kind; one part of each rule is this record. */
  mating: readonly NeighbourRule[];
  /** Where sources disagree. */
  conflicts: readonly Conflict[];
  /** What could not be found out. */
  missing: readonly string[];
}

/** A bottom-bracket shell with threads, and the cups that go into it. */
export interface ShellThreadRecord extends NeighbourRecordBase {
  /** Always `shell-thread`. */
  kind: 'shell-thread';
  /** Threads by side. */
  threads: SidedThreads;
  /** Widths in which the shell is made. */
  widths: readonly ShellWidth[];
  /** What a caliper shows. */
  caliper: {
    /** Outer diameter of the cup in mm, as its bounds are published. */
    cupOutsideMm?: Datum;
    /** Inner diameter of the shell in mm, as its bounds are published. */
    shellInsideMm?: Datum;
  };
}

/** A bottom-bracket shell without threads, and what is seated in it. */
export interface ShellBoreRecord extends NeighbourRecordBase {
  /** Always `shell-bore`. */
  kind: 'shell-bore';
  /** What sits in the bore. */
  seat: 'bearing' | 'pressed-cup' | 'loose-pressed-cup' | 'clamped-cartridge';
  /** Bores. */
  bores: readonly {
    /** Id, unique in its list. */
    id: string;
    /** Bore in mm. */
    boreMm: Datum;
  }[];
  /** Widths in which the shell is made. */
  widths: readonly ShellWidth[];
  /** Spindles that it is made for. */
  spindles: readonly {
    /** Id, unique in its list. */
    id: string;
    /** Spindle diameter in mm. */
    spindleDiameterMm: Datum;
  }[];
}

/** A bolt or nut of a crank. */
export interface FixingRecord extends NeighbourRecordBase {
  /** Always `fixing`. */
  kind: 'fixing';
  /** Which fixing. */
  form: 'spindle-bolt' | 'spindle-nut' | 'pinch-bolt' | 'chainring-bolt';
  /** Its thread. */
  thread: ThreadRecord;
  /** Drives that it is made with. */
  heads: readonly FixingHead[];
}

/** The thread by which an arm is pulled off. */
export interface PullerThreadRecord extends NeighbourRecordBase {
  /** Always `puller-thread`. */
  kind: 'puller-thread';
  /** The thread, of the arm and of its puller. */
  thread: ThreadRecord;
}

/** The thread of a pedal and of the eye that takes it. */
export interface PedalThreadRecord extends NeighbourRecordBase {
  /** Always `pedal-thread`. */
  kind: 'pedal-thread';
  /** Threads by side. */
  threads: SidedThreads;
}

/** A circle of chainring bolts. */
export interface BoltCircleRecord extends NeighbourRecordBase {
  /** Always `bolt-circle`. */
  kind: 'bolt-circle';
  /** Number of arms of the spider, and of bolts. */
  armCount: Datum;
  /** Diameter of the circle through the bolts, in mm. */
  boltCircleDiameterMm: Datum;
  /** Teeth of the smallest ring that goes on. */
  smallestRing: Datum;
  /** Distance between neighbouring bolts in mm, reckoned from diameter and number. */
  holeSpacingMm: Datum;
}

/** A convention that a replacement has to keep to: a line, a length, a direction. */
export interface ConventionRecord extends NeighbourRecordBase {
  /** Always `convention`. */
  kind: 'convention';
  /** What it settles. */
  topic: 'chainline' | 'spindle-length' | 'arm-length' | 'tread' | 'square-orientation';
  /** Its numbers. */
  values: readonly {
    /** Id, unique in its list. */
    id: string;
    /** What the number is. */
    use: string;
    /** The number with its unit. */
    quantity: Datum;
  }[];
}

/** One interface or convention beside the joint, told apart by `kind`. */
export type NeighbourRecord =
  | ShellThreadRecord
  | ShellBoreRecord
  | FixingRecord
  | PullerThreadRecord
  | PedalThreadRecord
  | BoltCircleRecord
  | ConventionRecord;
