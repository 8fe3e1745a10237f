/** What a part in a catalogue is. */
export type PartKind = 'arm' | 'spindle' | 'bolt' | 'chainring' | 'pedals' | 'puller';

/** Side of the bicycle that a part is made for; `pair` is both in one pack. */
export type PartSide = 'drive' | 'non-drive' | 'pair';

/** What a catalogue tells of one part, under our names; several ids where it leaves open which. */
export interface Part {
  /** The shop's own id. */
  partId: string;
  /** Its title, in which a standard may be named. */
  title?: string;
  /** What it is; `other` for a part of none of these kinds. */
  kind?: PartKind | 'other';
  /** Id of the joint that an arm or a spindle is made for. */
  interface?: string | readonly string[];
  /** Id of the thread of a bolt, a pedal or a puller, such as `bolt-m8x1`. */
  thread?: string | readonly string[];
  /** Id of the shell that a spindle's cups are made for. */
  shell?: string | readonly string[];
  /** Side of the bicycle. */
  side?: PartSide;
  /** Length of an arm, mm. */
  armLengthMm?: number;
  /** Length of a spindle, mm. */
  spindleLengthMm?: number;
  /** Diameter of the bolt circle of a chainring, mm. */
  boltCircleMm?: number;
  /** Number of its bolts. */
  boltCount?: number;
  /** Number of its teeth. */
  toothCount?: number;
  /** Across flats of an arm's square at its mouth, mm. */
  acrossFlatsAtMouthMm?: number;
  /** Length of an arm's square hole, mm. */
  boreLengthMm?: number;
  /** Depth of the bolt's seat in an arm from the mouth, mm. */
  boltSeatFromMouthMm?: number;
  /** Across flats of a spindle's square at its end, mm. */
  acrossFlatsAtEndMm?: number;
  /** Length of a spindle's flats, mm. */
  flatLengthMm?: number;
  /** From a spindle's end to its shoulder, mm. */
  shoulderFromEndMm?: number;
  /** Angle of a face against the axis, deg. */
  faceAngleDeg?: number;
}

/** A fact about a part. */
export type PartField = keyof Part;

/** How a field of a part is read. */
type FieldForm =
  | { form: 'text' }
  | { form: 'words' }
  | { form: 'number'; unit: 'mm' | 'deg' | ''; min: number; max: number };

const length = (min: number, max: number): FieldForm => ({ form: 'number', unit: 'mm', min, max });
const count = (min: number, max: number): FieldForm => ({ form: 'number', unit: '', min, max });

/**
 * Every field of a part. The ranges are judgement: what lies outside is a slip of a unit or of a column and no part, and
 * is reported rather than used. @internal
 */
export const PART_FIELDS: Readonly<Record<PartField, FieldForm>> = {
  partId: { form: 'text' },
  title: { form: 'text' },
  kind: { form: 'words' },
  interface: { form: 'words' },
  thread: { form: 'words' },
  shell: { form: 'words' },
  side: { form: 'words' },
  armLengthMm: length(60, 260),
  spindleLengthMm: length(60, 220),
  boltCircleMm: length(40, 200),
  boltCount: count(3, 8),
  toothCount: count(8, 80),
  acrossFlatsAtMouthMm: length(8, 25),
  boreLengthMm: length(5, 40),
  boltSeatFromMouthMm: length(5, 60),
  acrossFlatsAtEndMm: length(8, 25),
  flatLengthMm: length(5, 40),
  shoulderFromEndMm: length(5, 60),
  faceAngleDeg: { form: 'number', unit: 'deg', min: 0.5, max: 5 },
};

/** Names of the fields that hold numbers. @internal */
export type NumberField = {
  [K in PartField]: NonNullable<Part[K]> extends number ? K : never;
}[PartField];

/** Names of the fields that hold one of our words. @internal */
export type WordField = 'kind' | 'interface' | 'thread' | 'shell' | 'side';

/** Why a value that a row holds is not used. */
export interface Doubt {
  /** What is the matter with it. */
  code: 'value-suspicious' | 'value-out-of-range' | 'word-not-mapped' | 'facts-contradict' | 'several-values';
  /** What came, cut short. */
  received: string;
}

/** What was read of a row: words as lists, numbers, and what was not used. @internal */
export interface Facts {
  words: Partial<Record<WordField, readonly string[]>>;
  numbers: Partial<Record<NumberField, number>>;
  doubts: Partial<Record<PartField, Doubt>>;
}
