import { checkInput, DomainError, type FieldSpecs, type Measurand } from '@spindlewright/quantity';
import { identificationData } from './identification.generated.ts';
import { readingOf } from './reading-of.ts';
import type { Reading } from './square-hypotheses.ts';
import type { ThreadKind } from './thread-hypotheses.ts';
import { PITCH_RANGE, THREAD_DIAMETER_RANGE, type ThreadReadings } from './thread-likelihood.ts';

/** Readings of a thread; a diameter or a pitch at least. */
export interface IdentifyThreadInput {
  /** Diameter in mm, 4 to 60: over the crests of an external thread, between the crests of an internal one. */
  diameterMm?: Measurand;
  /** Plane in which the jaw bore, from the end of the thread inward, in mm, 0 to 60. */
  atMm?: Measurand;
  /** Pitch in mm, 0.2 to 6. */
  pitchMm?: Measurand;
  /** Threads per inch, 5 to 100, in place of the pitch. */
  threadsPerInch?: Measurand;
  /** Hand: a right-hand thread goes in clockwise. */
  hand?: 'right' | 'left';
  /** Whether it stands outside, as on a bolt, or inside, as in a nut. */
  kind?: ThreadKind;
}

const COUNT_RANGE = { min: 5, max: 100 } as const;
const FIELDS = {
  diameterMm: { type: 'measurand', unit: 'mm', ...THREAD_DIAMETER_RANGE, optional: true },
  atMm: { type: 'measurand', unit: 'mm', min: -5, max: 60, optional: true },
  pitchMm: { type: 'measurand', unit: 'mm', ...PITCH_RANGE, optional: true },
  threadsPerInch: { type: 'measurand', unit: 'threads per inch', ...COUNT_RANGE, optional: true },
  hand: { type: 'choice', values: ['right', 'left'], optional: true },
  kind: { type: 'choice', values: ['external', 'internal'], optional: true },
} as const satisfies FieldSpecs;

/** Checks the input and turns every reading into a value with its standard uncertainty. @internal */
export function threadReadings(input: IdentifyThreadInput): {
  readings: ThreadReadings;
  kinds: readonly ThreadKind[];
  assumed: boolean;
} {
  checkInput({ where: 'identifyThread', value: input, fields: FIELDS });
  const { diameterMm, atMm, pitchMm, threadsPerInch, hand, kind } = input;
  if (diameterMm === undefined && pitchMm === undefined && threadsPerInch === undefined) {
    throw refuse('', 'neither diameter nor pitch', 'a diameter or a pitch at least');
  }
  if (pitchMm !== undefined && threadsPerInch !== undefined) {
    throw refuse(
      'threadsPerInch',
      'a count of threads beside a pitch',
      'pitchMm or threadsPerInch, whichever was read',
    );
  }
  if (diameterMm === undefined && atMm !== undefined) {
    throw refuse('diameterMm', 'nothing', 'a diameter together with the plane in which it was read');
  }
  const kinds = kind === undefined ? (['external', 'internal'] as const) : [kind];
  const { assumedUncertainty: assumed, assumedPlaneMm } = identificationData.threads;
  const assumedSize = kind === 'external' ? assumed.externalDiameterMm : assumed.internalDiameterMm;
  const pitch = pitchOf(pitchMm, threadsPerInch);
  const size = diameterMm === undefined ? undefined : readingOf(diameterMm, assumedSize.value);
  if (size !== undefined && pitch !== undefined && pitch.value * LEAST_DIAMETER_IN_PITCHES > size.value) {
    const path = pitchMm === undefined ? 'threadsPerInch' : 'pitchMm';
    const received = `a pitch of ${Number(pitch.value.toFixed(3))} mm on a diameter of ${size.value} mm`;
    throw refuse(path, received, `a pitch of at most a ${LEAST_DIAMETER_IN_PITCHES}rd of the diameter`);
  }
  return {
    readings: {
      ...(size === undefined
        ? {}
        : { diameter: { size, at: readingOf(atMm ?? assumedPlaneMm.value, assumed.planeMm.value) } }),
      ...(pitch === undefined ? {} : { pitch }),
      ...(hand === undefined ? {} : { hand }),
    },
    kinds,
    assumed:
      [diameterMm, atMm, pitchMm, threadsPerInch].some((value) => typeof value === 'number') ||
      (diameterMm !== undefined && atMm === undefined),
  };
}

// The deepest thread of the coarse series, M1.6 x 0.35, is 4.6 pitches across; below 3 the core would be gone.
const LEAST_DIAMETER_IN_PITCHES = 3;

const MM_PER_INCH = 25.4;

function pitchOf(pitchMm: Measurand | undefined, threadsPerInch: Measurand | undefined): Reading | undefined {
  const { pitchMm: assumedPitch, threadsPerInch: assumedCount } = identificationData.threads.assumedUncertainty;
  if (pitchMm !== undefined) return readingOf(pitchMm, assumedPitch.value);
  if (threadsPerInch === undefined) return undefined;
  const count = readingOf(threadsPerInch, assumedCount.value);
  // First order: the spread of the reciprocal.
  return { value: MM_PER_INCH / count.value, uncertainty: (MM_PER_INCH / count.value ** 2) * count.uncertainty };
}

const refuse = (path: string, received: string, allowed: string): DomainError =>
  new DomainError('identifyThread', [{ path, received, allowed }]);
