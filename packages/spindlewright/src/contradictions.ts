import { type DomainIssue, hardLimits, limitsOf } from '@spindlewright/quantity';
import { jobDefaults } from './defaults.ts';
import type { ArmReadings, Job, Reading, SpindleReadings } from './job.ts';
import { plainText } from './plain-text.ts';

/** Pairs of fields where the first may not lie wholly above the second. */
type Order = readonly [path: string, value: Reading | undefined, otherPath: string, other: Reading | undefined];

/** Finds fields of a job that cannot both be true. @internal */
export function contradictions(job: Job): DomainIssue[] {
  const { spindle = {}, arm = {} } = job;
  const orders: Order[] = [
    ['spindle.flatLengthMm', spindle.flatLengthMm, 'spindle.shoulderFromEndMm', spindle.shoulderFromEndMm],
    ['spindle.endChamferMm', spindle.endChamferMm, 'spindle.flatLengthMm', spindle.flatLengthMm],
    ...armOrders(arm, job.trialFit, spindle, ''),
  ];
  const issues = orders.flatMap(orderIssue);
  issues.push(...trialFitIssues(job.trialFit, 'trialFit'));
  for (const [index, candidate] of (job.candidates ?? []).entries()) {
    const at = `candidates[${index}]`;
    issues.push(...trialFitIssues(candidate.trialFit, `${at}.trialFit`));
    if (candidate.name.trim() === '') issues.push({ path: `${at}.name`, received: '""', allowed: 'some words' });
    issues.push(...armOrders(candidate.arm ?? {}, candidate.trialFit, spindle, `${at}.`).flatMap(orderIssue));
  }
  issues.push(...clampIssues(job.clamp), ...teethIssues(job.faceTeeth));
  if (job.measurements !== undefined && job.observations === undefined) {
    issues.push({
      path: 'observations',
      received: 'nothing',
      allowed: 'an object, also an empty one, beside measurements',
    });
  }
  if (job.otherSide !== undefined && job.observations === undefined) {
    issues.push({
      path: 'observations',
      received: 'nothing',
      allowed: 'the observations of this side, to compare with',
    });
  }
  if (job.wrench !== undefined && job.wrench.lowestSetting >= job.wrench.highestSetting) {
    issues.push({
      path: 'wrench.lowestSetting',
      received: String(job.wrench.lowestSetting),
      allowed: `less than wrench.highestSetting, which is ${job.wrench.highestSetting}`,
    });
  }
  for (const key of ['title', 'bike'] as const) {
    if (plainText(job[key]).trim() === '')
      issues.push({ path: key, received: JSON.stringify(job[key]), allowed: 'some words' });
  }
  if (!isCalendarDate(job.date)) {
    issues.push({ path: 'date', received: JSON.stringify(job.date), allowed: 'a date of the calendar, YYYY-MM-DD' });
  }
  return issues;
}

const armOrders = (arm: ArmReadings, trialFit: Job['trialFit'], spindle: SpindleReadings, at: string): Order[] => [
  [`${at}arm.mouthChamferMm`, arm.mouthChamferMm, `${at}arm.boreLengthMm`, arm.boreLengthMm],
  [`${at}arm.seatIntrusionMm`, arm.seatIntrusionMm, `${at}arm.boltSeatFromMouthMm`, arm.boltSeatFromMouthMm],
  [`${at}trialFit.endGapMm`, trialFit?.endGapMm, `${at}arm.boltSeatFromMouthMm`, arm.boltSeatFromMouthMm],
  [`${at}trialFit.shoulderGapMm`, trialFit?.shoulderGapMm, 'spindle.shoulderFromEndMm', spindle.shoulderFromEndMm],
];

function clampIssues(clamp: Job['clamp']): DomainIssue[] {
  if (clamp === undefined) return [];
  const count = clamp.boltCount ?? 1;
  const issues: DomainIssue[] = Number.isInteger(count)
    ? []
    : [{ path: 'clamp.boltCount', received: String(count), allowed: 'a whole number' }];
  const boltMm = hardLimits(clamp.hingeToBoltMm ?? limitsOf(jobDefaults.hingeToBolt)).lower;
  if (hardLimits(clamp.hingeToAxisMm ?? limitsOf(jobDefaults.hingeToAxis)).upper >= boltMm) {
    const path = clamp.hingeToAxisMm === undefined ? 'clamp.hingeToBoltMm' : 'clamp.hingeToAxisMm';
    issues.push({
      path,
      received: 'a hinge farther from the axis than from the bolts',
      allowed: 'the axis between them',
    });
  }
  return issues;
}

function teethIssues(teeth: Job['faceTeeth']): DomainIssue[] {
  if (teeth?.innerDiameterMm === undefined || teeth.outerDiameterMm === undefined) return [];
  const innerMm = hardLimits(teeth.innerDiameterMm).upper;
  const outerMm = hardLimits(teeth.outerDiameterMm).lower;
  if (innerMm < outerMm) return [];
  return [
    { path: 'faceTeeth.innerDiameterMm', received: String(innerMm), allowed: `less than the outer, ${outerMm} mm` },
  ];
}

function trialFitIssues(trialFit: Job['trialFit'], path: string): DomainIssue[] {
  if (trialFit === undefined || Object.values(trialFit).some((gap) => gap !== undefined)) return [];
  return [{ path, received: 'no gap', allowed: 'endGapMm, shoulderGapMm or both' }];
}

function orderIssue([path, value, otherPath, other]: Order): DomainIssue[] {
  if (value === undefined || other === undefined) return [];
  const lower = hardLimits(value).lower;
  const upper = hardLimits(other).upper;
  return lower <= upper
    ? []
    : [{ path, received: `at least ${lower}`, allowed: `no more than ${otherPath}, which is at most ${upper}` }];
}

function isCalendarDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}
