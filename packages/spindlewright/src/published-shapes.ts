import { armGeometries, type InterfaceRecord, spindleGeometries } from '@spindlewright/interfaces';
import { limitsOf, type Measurand } from '@spindlewright/quantity';
import { type ArmShape, fitFlats, type SpindleShape } from '@spindlewright/taper';
import { jobDefaults } from './defaults.ts';
import type { ArmReadings, FlatReading, Job, SpindleReadings } from './job.ts';
import { withReadingError } from './with-reading-error.ts';

/** Shapes of both parts by one published set. */
export interface SetShapes {
  /** Name of the set. */
  set: string;
  /** Ids of its sources. */
  sources: readonly string[];
  /** As published, nothing read. */
  published: { spindle: SpindleShape<Measurand>; arm: ArmShape<Measurand> };
  /** With the job's readings laid over. */
  read: { spindle: SpindleShape<Measurand>; arm: ArmShape<Measurand> };
  /** True when the flats of both parts were read, so that the set decides nothing about the hand fit. */
  flatsRead: boolean;
  /** Paths of fields that still come from the set. */
  assumed: readonly string[];
}

/** Draws both parts from each set that both records share, never one part from one set and one from another. @internal */
export function publishedShapes(job: Job, spindleRecord: InterfaceRecord, armRecord: InterfaceRecord): SetShapes[] {
  const arms = armGeometries(armRecord);
  return spindleGeometries(spindleRecord).flatMap((spindle) => {
    const arm = arms.find((candidate) => candidate.set === spindle.set);
    if (arm === undefined) return [];
    const published = {
      spindle: spindle.geometry,
      arm: { bossDiameterMm: limitsOf(jobDefaults.bossDiameter), ...arm.geometry },
    };
    const readSpindle = overlaySpindle(published.spindle, job.spindle ?? {});
    const readArm = overlayArm(published.arm, job.arm ?? {});
    return [
      {
        set: spindle.set,
        sources: [...new Set([...spindle.sources, ...arm.sources])].sort(),
        published,
        read: { spindle: readSpindle, arm: readArm },
        flatsRead: job.spindle?.flats !== undefined && job.arm?.flats !== undefined,
        assumed: [
          ...assumedKeys(published.spindle, job.spindle ?? {}, 'spindle', 'acrossFlatsAtEndMm'),
          ...assumedKeys(published.arm, job.arm ?? {}, 'arm', 'acrossFlatsAtMouthMm'),
        ],
      },
    ];
  });
}

function overlaySpindle(shape: SpindleShape<Measurand>, readings: SpindleReadings): SpindleShape<Measurand> {
  const { flats, ...lengths } = readings;
  const merged = { ...shape, ...withErrors(lengths) };
  if (flats === undefined) return merged;
  const fitted = fitFlats({ part: 'spindle', readings: flats.map(flatWithError), faceAngleDeg: merged.faceAngleDeg });
  return { ...merged, acrossFlatsAtEndMm: fitted.acrossFlatsMm };
}

function overlayArm(shape: ArmShape<Measurand>, readings: ArmReadings): ArmShape<Measurand> {
  const { flats, yieldStrengthMPa: _, ...lengths } = readings;
  const merged = { ...shape, ...withErrors(lengths) };
  if (flats === undefined) return merged;
  const fitted = fitFlats({ part: 'arm', readings: flats.map(flatWithError), faceAngleDeg: merged.faceAngleDeg });
  return { ...merged, acrossFlatsAtMouthMm: fitted.acrossFlatsMm };
}

const withErrors = (lengths: Readonly<Record<string, Measurand | undefined>>): Record<string, Measurand> =>
  Object.fromEntries(
    Object.entries(lengths).flatMap(([key, value]) =>
      value === undefined
        ? []
        : [[key, key === 'faceAngleDeg' ? value : withReadingError(value, jobDefaults.lengthReading)]],
    ),
  );

const flatWithError = (reading: FlatReading) => ({
  ...reading,
  acrossFlatsMm: withReadingError(reading.acrossFlatsMm, jobDefaults.caliperReading),
  atMm: withReadingError(reading.atMm, jobDefaults.caliperPlane, 'zero'),
});

function assumedKeys(shape: object, readings: object, part: string, flatsKey: string): string[] {
  return Object.keys(shape)
    .filter((key) => !Object.hasOwn(readings, key === flatsKey ? 'flats' : key))
    .map((key) => `${part}.${key}`);
}
