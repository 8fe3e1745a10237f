import {
  getInterface,
  type InterfaceRecord,
  identifySpindle,
  type SpindleIdentification,
} from '@spindlewright/interfaces';
import { createFinding, DomainError, type Finding, nearestName } from '@spindlewright/quantity';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';
import { withReadingError } from './with-reading-error.ts';

/** Interfaces that a job can be worked for. */
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
  const arm = job.interface.arm === UNKNOWN ? undefined : squareTaper('interface.arm', job.interface.arm, [UNKNOWN]);
  if (job.interface.spindle !== UNKNOWN) {
    const spindle = squareTaper('interface.spindle', job.interface.spindle, [UNKNOWN]);
    return { spindle, arm: arm ?? spindle, findings: [] };
  }
  const flats = job.spindle?.flats;
  if (flats === undefined) {
    const spindle = arm ?? getInterface(SQUARE_TAPERS[0]);
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

/** Looks a square taper up and refuses any other interface by its path in the job. @internal */
export function squareTaper(path: string, id: string, others: readonly string[] = []): InterfaceRecord {
  if ((SQUARE_TAPERS as readonly string[]).includes(id)) return getInterface(id);
  const known = [...SQUARE_TAPERS, ...others];
  const nearest = nearestName({ name: id, known });
  throw new DomainError('workJob', [
    {
      path,
      received: JSON.stringify(id),
      allowed: `an interface that a job can be worked for: ${known.join(', ')}`,
      ...(nearest === undefined ? {} : { nearest }),
    },
  ]);
}
