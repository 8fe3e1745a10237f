import type { InterfaceRecord } from '@spindlewright/interfaces';
import type { Finding } from '@spindlewright/quantity';
import { boltFindings } from './bolt-findings.ts';
import { boltStrength } from './bolt-strength.ts';
import { fixingPlan } from './fixing-plan.ts';
import type { Job } from './job.ts';
import type { PressPlan, SeatFacts } from './seat-part.ts';
import { settlingPlan } from './settling-plan.ts';
import type { TighteningPart } from './tightening-part.ts';
import { tradeTorqueFinding } from './trade-torque-finding.ts';
import { wrenchPlan } from './wrench-plan.ts';

/** Puts the tightening together: target, strength of the bolt, wrench, fit of the bolt, turns and settling. @internal */
export function tighteningOf(
  job: Job,
  press: PressPlan,
  seat: SeatFacts | undefined,
  record: InterfaceRecord,
): TighteningPart {
  const { strength, findings: strengthFindings } = boltStrength(job, press);
  const wrench = job.wrench === undefined ? undefined : wrenchPlan(press.torqueNm.nominal, job.wrench);
  const fixing = fixingPlan(job, press, seat);
  const settling = seat === undefined ? undefined : settlingPlan(press, seat);
  const findings: Finding[] = [
    ...tradeTorqueFinding(press),
    ...strengthFindings,
    ...boltFindings(job, press, record, fixing !== undefined),
    ...(wrench?.findings ?? []),
    ...(fixing?.findings ?? []),
  ];
  return {
    press,
    strength,
    ...(wrench === undefined ? {} : { wrench: wrench.plan }),
    ...(fixing === undefined ? {} : { fixing }),
    ...(settling === undefined ? {} : { settling }),
    findings,
  };
}
