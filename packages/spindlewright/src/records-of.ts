import {
  getInterface,
  type InterfaceRecord,
  identifySpindle,
  type SpindleIdentification,
} from '@spindlewright/interfaces';
import { createFinding, type Finding } from '@spindlewright/quantity';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { recordAt } from './joint-kind.ts';
import { messages } from './messages/en.ts';
import { withReadingError } from './with-reading-error.ts';

/** Interfaces of which one is taken for a spindle whose flats were read. */
const SQUARE_TAPERS = ['square-taper-jis', 'square-taper-iso'] as const;
const UNKNOWN = 'unknown';

/** The records that a job is worked with, and how sure they are. */
export interface JobRecords {
  spindle: InterfaceRecord;
  arm: InterfaceRecord;
  /** Present when the spindle's standard was not named but could be read. */
  identification?: SpindleIdentification;
  findings: readonly Finding[];
}

/** Finds the records of a job; a spindle that is not named is identified from its readings. @internal */
export function recordsOf(job: Job): JobRecords {
  const arm = job.interface.arm === UNKNOWN ? undefined : recordAt('interface.arm', job.interface.arm, [UNKNOWN]);
  if (job.interface.spindle !== UNKNOWN) {
    const spindle = recordAt('interface.spindle', job.interface.spindle, [UNKNOWN]);
    return { spindle, arm: arm ?? spindle, findings: [] };
  }
  const flats = job.spindle?.flats;
  if (flats === undefined) {
    const spindle = arm ?? getInterface(SQUARE_TAPERS[0]);
    // An arm that was tried on has told more than any name.
    if (job.trialFit !== undefined) return { spindle, arm: arm ?? spindle, findings: [] };
    const findings = [
      createFinding({
        code: 'taper-not-identified',
        severity: 'caution',
        template: messages['taper-not-identified'],
        path: 'interface.spindle',
      }),
    ];
    return { spindle, arm: arm ?? spindle, findings };
  }
  const identification = identifySpindle({
    readings: flats.map(({ acrossFlatsMm, atMm }) => ({
      acrossFlatsMm: withReadingError(acrossFlatsMm, jobDefaults.caliperReading),
      atMm: withReadingError(atMm, jobDefaults.caliperPlane, 'zero'),
    })),
    ...(job.spindle?.flatLengthMm === undefined
      ? {}
      : { flatLengthMm: withReadingError(job.spindle.flatLengthMm, jobDefaults.lengthReading) }),
  });
  const likeliest = identification.candidates.find(({ id }) => (SQUARE_TAPERS as readonly string[]).includes(id));
  const spindle = getInterface(likeliest?.id ?? SQUARE_TAPERS[0]);
  return { spindle, arm: arm ?? spindle, identification, findings: identification.findings };
}
