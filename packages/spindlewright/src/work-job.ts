import { version as drawingVersion } from '@spindlewright/drawing';
import { dataEdition, version as interfacesVersion } from '@spindlewright/interfaces';
import { version as quantityVersion } from '@spindlewright/quantity';
import { version as taperVersion } from '@spindlewright/taper';
import { version as torqueVersion } from '@spindlewright/torque';
import { decideSeat } from './decide-seat.ts';
import { groundsSection } from './grounds-section.ts';
import type { Job } from './job.ts';
import { forReader, gravestFirst, sourcesOf } from './job-sources.ts';
import { readJob } from './read-job.ts';
import { seatOf } from './seat.ts';
import { seatSections } from './seat-sections.ts';
import type { JobSheet, Section } from './sheet.ts';
import { squareTaper } from './square-taper.ts';
import { version } from './version.ts';

const CAUTIONS = [
  "The part maker's instructions come before this sheet; where they differ, follow them.",
  'A qualified mechanic has to judge the parts at the stand; this sheet has not seen them.',
  'Never ride without the fixing bolt or nut, however tight the arm feels: friction holds it at rest only.',
  'An arm with a crack, a rounded bore or play is not to be ridden, whatever the figures say.',
] as const;

/**
 * Works a job: predicts where the arm seats by every way of knowing it, decides, and writes the sheet.
 *
 * @remarks
 * Formula: none of its own; `predictSeat` of the taper package for each way of knowing (trial fit, readings, each
 * published set apart), `preloadRange` of the torque package for the force that presses the arm on, `checkMate` of the
 * interfaces package for the pair.
 *
 * Validity: square tapers (JIS and ISO). Readings without limits get the half-width of their instrument, which is
 * judgement and named in the sheet. Published sizes alone never give `fits`, since no arm-bore size is published.
 *
 * Accuracy: as the limits in the sheet say; with a trial fit about 0.1 mm plus the range of the press.
 *
 * @param job - The job, as `readJob` gives it or as plain data; lengths in mm, torque in Nm.
 * @returns The sheet: state, headline, figures, findings, cautions, sections, provenance. It equals its JSON round trip.
 * @throws {@link DomainError} for a job that `readJob` refuses, or an interface that is no square taper.
 * @example
 * ```ts
 * import { workJob } from 'spindlewright';
 * const sheet = workJob({
 *   format: 'spindlewright-job-1',
 *   title: 'Demo',
 *   date: '2026-11-25',
 *   bike: 'an invented bike',
 *   side: 'drive',
 *   interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *   trialFit: { endGapMm: 0.3, shoulderGapMm: 3 },
 * });
 * sheet.state; // => 'does-not-fit'
 * sheet.seat.lead.prediction.verdict; // => 'bottoms-on-end'
 * ```
 * @see The packages named above and their sources.
 */
export function workJob(job: Job): JobSheet {
  const read = readJob(job);
  const spindleRecord = squareTaper('interface.spindle', read.interface.spindle);
  const armRecord = squareTaper('interface.arm', read.interface.arm);
  const seat = seatOf(read, spindleRecord, armRecord);
  const decision = decideSeat(read, seat);
  const findings = gravestFirst(
    forReader([...decision.findings, ...seat.lead.prediction.findings, ...seat.mate.findings]),
  );
  const provenance = {
    versions: {
      spindlewright: version,
      '@spindlewright/drawing': drawingVersion,
      '@spindlewright/interfaces': interfacesVersion,
      '@spindlewright/quantity': quantityVersion,
      '@spindlewright/taper': taperVersion,
      '@spindlewright/torque': torqueVersion,
    },
    dataEdition,
    sources: sourcesOf(seat, findings),
  };
  const sections: Section[] = [
    {
      id: 'owner',
      title: 'In short',
      blocks: [{ kind: 'list', ordered: false, items: decision.forOwner }],
    },
    ...seatSections(seat),
    { id: 'findings', title: 'What else there is to know', blocks: [{ kind: 'findings', findings }] },
    { id: 'cautions', title: 'Cautions', blocks: [{ kind: 'list', ordered: false, items: CAUTIONS }] },
    groundsSection(read, seat, provenance),
  ];
  return {
    format: 'spindlewright-sheet-1',
    title: read.title,
    date: read.date,
    invented: read.invented ?? false,
    bike: read.bike,
    side: read.side,
    state: decision.state,
    ...(decision.missingFact === undefined ? {} : { missingFact: decision.missingFact }),
    headline: decision.headline,
    forOwner: decision.forOwner,
    seat,
    findings,
    cautions: CAUTIONS,
    sections,
    provenance,
  };
}
