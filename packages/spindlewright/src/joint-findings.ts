import { createFinding, type Finding, hardLimits } from '@spindlewright/quantity';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';

/** What the readings of a joint say by themselves. @internal */
export function readingFindings({ clamp, spline }: Job): Finding[] {
  const findings: Finding[] = [];
  const say = (code: keyof typeof messages, values: Finding['values'], path: string): void => {
    findings.push(createFinding({ code, severity: 'stop', template: messages[code], values, path }));
  };
  if (clamp?.safetyCatch === 'not-engaged') say('safety-catch-open', {}, 'clamp.safetyCatch');
  const gap = spline?.gapAtTorqueMm === undefined ? undefined : hardLimits(spline.gapAtTorqueMm);
  if (gap !== undefined && gap.lower > 0) say('arm-not-home', { gapMm: gap.nominal }, 'spline.gapAtTorqueMm');
  return findings;
}
