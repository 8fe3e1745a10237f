import type { JobDecision } from './decide-job.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job } from './job.ts';
import type { JobSheet } from './sheet.ts';

/** What every sheet begins with, whatever the joint. @internal */
export const sheetHead = (
  job: Job,
  decision: JobDecision,
  diagnosis: DiagnosisPart | undefined,
): Omit<JobSheet, 'candidates' | 'findings' | 'cautions' | 'sections' | 'provenance'> => ({
  format: 'spindlewright-sheet-1',
  title: job.title,
  date: job.date,
  invented: job.invented ?? false,
  bike: job.bike,
  side: job.side,
  state: decision.state,
  ...(decision.missingFact === undefined ? {} : { missingFact: decision.missingFact }),
  doNotRide: decision.doNotRide,
  answer: decision.answer,
  headline: decision.headline,
  forOwner: decision.forOwner,
  ...(diagnosis === undefined ? {} : { diagnosis }),
});

/** The cautions that stand on every sheet, with those of the joint's fixing and of what wears there. @internal */
export const standingCautions = (fixing: string, wear: string): string[] => [
  "The part maker's instructions come before this sheet; where they differ, follow them.",
  'A qualified mechanic has to judge the parts at the stand; this sheet has not seen them.',
  fixing,
  wear,
];
