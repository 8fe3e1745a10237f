import { createFinding, type Finding, hardLimits } from '@spindlewright/quantity';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';

/** What the readings of a joint say by themselves. @internal */
export function readingFindings({ clamp, spline, cotter }: Job, cotterWorked: boolean): Finding[] {
  const findings: Finding[] = [];
  const say = (code: keyof typeof messages, values: Finding['values'], path: string): void => {
    findings.push(createFinding({ code, severity: 'stop', template: messages[code], values, path }));
  };
  if (clamp?.safetyCatch === 'not-engaged') say('safety-catch-open', {}, 'clamp.safetyCatch');
  // Where the cotter could be reckoned, its mechanics say it with the angle.
  if (cotter?.sameWayRound === true && !cotterWorked) say('cotters-one-way-round', {}, 'cotter.sameWayRound');
  const gap = spline?.gapAtTorqueMm === undefined ? undefined : hardLimits(spline.gapAtTorqueMm);
  if (gap !== undefined && gap.lower > 0) say('arm-not-home', { gapMm: gap.nominal }, 'spline.gapAtTorqueMm');
  return findings;
}
