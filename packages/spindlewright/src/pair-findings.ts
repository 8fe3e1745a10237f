import { createFinding, type Finding } from '@spindlewright/quantity';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';
import type { SeatFacts } from './seat-part.ts';

/** What is worth saying of the pair besides its prediction. @internal */
export function pairFindings(job: Job, seat: SeatFacts): Finding[] {
  const published = [seat.lead, ...seat.others].filter((way) => way.basis === 'published-set');
  const verdicts = new Set(published.map((way) => way.prediction.verdict));
  const { spindle, arm } = job.interface;
  const known = (id: string): boolean => id !== 'unknown';
  const findings: Finding[] = [];
  if (verdicts.size > 1) {
    findings.push(
      createFinding({
        code: 'published-sets-disagree',
        severity: job.trialFit === undefined ? 'caution' : 'note',
        template: messages['published-sets-disagree'],
        values: { sets: published.length, verdicts: verdicts.size },
        sources: [...new Set(published.flatMap((way) => way.sources))].sort(),
      }),
    );
  }
  if (known(spindle) && known(arm) && spindle !== arm) {
    findings.push(
      createFinding({
        code: 'mixed-tapers',
        severity: 'caution',
        template: messages['mixed-tapers'],
        values: { spindle, arm },
        sources: seat.mate.sources,
        path: 'interface',
      }),
    );
  } else if (known(spindle) !== known(arm)) {
    findings.push(
      createFinding({
        code: 'one-standard-assumed',
        severity: 'caution',
        template: messages['one-standard-assumed'],
        values: { part: known(spindle) ? 'arm' : 'spindle', standard: known(spindle) ? spindle : arm },
        path: 'interface',
      }),
    );
  }
  return findings;
}
