import type { InterfaceRecord } from '@spindlewright/interfaces';
import { createFinding, type Finding, hardLimits, limitsOf } from '@spindlewright/quantity';
import { preloadRange, type Thread, threadFor } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import { fasteningSteps } from './fastening-steps.ts';
import type { Job } from './job.ts';
import type { FasteningPlan } from './joint-part.ts';
import { messages } from './messages/en.ts';
import { bearingOf, mostAgreed, TOOL, threadFrictionOf } from './press-plan.ts';
import type { StatedTorque } from './seat-part.ts';
import { wrenchPlan } from './wrench-plan.ts';

type Code = keyof typeof messages;

/** How a joint without a taper seat is drawn tight: torque, preload of a bolt, wrench and steps. @internal */
export function fasteningPlan(job: Job, record: InterfaceRecord): { plan: FasteningPlan; findings: Finding[] } {
  const { by } = record.drawnTight;
  const lubrication = job.fixing?.lubrication ?? 'unknown';
  const threadFriction = threadFrictionOf(lubrication);
  const base = { by, lubrication, threadFriction };
  if (by === 'none' || by === 'cotters') {
    const bare = { ...base, torqueFrom: 'no-torque' as const, tradeTorques: [] };
    const said =
      job.partMakerTorqueNm === undefined ? [] : [say('torque-not-used', 'caution', {}, 'partMakerTorqueNm')];
    return { plan: { ...bare, steps: fasteningSteps(job, record, bare) }, findings: said };
  }
  const read = job.fixing?.thread;
  const designation = read ?? record.fixingThreads[0]?.designation;
  const thread = designation === undefined ? undefined : threadFor(designation);
  const tradeTorques = tradeOf(record, thread);
  const findings: Finding[] = [];
  if (read === undefined && designation !== undefined) {
    findings.push(say('thread-assumed', 'caution', { thread: designation }, 'fixing.thread'));
  }
  const { spindleThread } = job.fixing ?? {};
  if (
    read !== undefined &&
    spindleThread !== undefined &&
    threadFor(spindleThread).designation !== thread?.designation
  ) {
    findings.push(say('spindle-thread-differs', 'stop', { thread: read, spindleThread }, 'fixing.spindleThread'));
  }
  const targetNm =
    job.partMakerTorqueNm === undefined ? agreedOf(tradeTorques) : hardLimits(job.partMakerTorqueNm).nominal;
  findings.push(...torqueFindings(job, tradeTorques, targetNm));
  const threadPart = thread === undefined ? {} : { thread: thread.designation };
  if (targetNm === undefined) {
    const plan = { ...base, ...threadPart, torqueFrom: 'not-known' as const, tradeTorques };
    return { plan: { ...plan, steps: fasteningSteps(job, record, plan) }, findings };
  }
  const range = thread === undefined ? undefined : preloadAt(job, record, targetNm, thread);
  const wrench = job.wrench === undefined ? undefined : wrenchPlan(targetNm, job.wrench);
  findings.push(...(wrench?.findings ?? []));
  const plan = {
    ...base,
    ...threadPart,
    torqueFrom: job.partMakerTorqueNm === undefined ? ('trade-range' as const) : ('part-maker' as const),
    torqueNm: range?.torqueNm ?? { lower: targetNm, nominal: targetNm, upper: targetNm },
    tradeTorques,
    ...(range === undefined ? {} : { preloadN: range.preloadN }),
    ...(wrench === undefined ? {} : { wrench: wrench.plan }),
  };
  return { plan: { ...plan, steps: fasteningSteps(job, record, plan) }, findings };
}

const say = (code: Code, severity: Finding['severity'], values: Finding['values'], path: string): Finding =>
  createFinding({ code, severity, template: messages[code], values, path });

/** Torques that the record states, those of another thread left out. */
function tradeOf(record: InterfaceRecord, thread: Thread | undefined): StatedTorque[] {
  const diameter = thread === undefined ? undefined : `M${Math.round(thread.majorDiameterMm)}`;
  const named = (joint: string): readonly string[] => joint.match(/M\d+/g) ?? [];
  return record.torquePractice
    .filter(({ joint }) => diameter === undefined || named(joint).length === 0 || named(joint).includes(diameter))
    .map(({ id, torqueNm }) => {
      const { lower, upper } = limitsOf(torqueNm);
      return { id, lowerNm: lower, upperNm: upper, sources: torqueNm.sources };
    });
}

const agreedOf = (rows: readonly StatedTorque[]): number | undefined =>
  rows.length === 0 ? undefined : mostAgreed(rows.map(({ lowerNm, upperNm }) => [lowerNm, upperNm] as const));

function torqueFindings(job: Job, rows: readonly StatedTorque[], targetNm: number | undefined): Finding[] {
  if (targetNm === undefined) return [say('torque-not-known', 'caution', {}, 'partMakerTorqueNm')];
  if (rows.length === 0) return [];
  const lowerNm = Math.min(...rows.map((row) => row.lowerNm));
  const upperNm = Math.max(...rows.map((row) => row.upperNm));
  if (job.partMakerTorqueNm === undefined) {
    const sources = [...new Set(rows.flatMap((row) => row.sources))].sort();
    const values = { lowerNm, upperNm, chosenNm: targetNm };
    return [
      createFinding({
        code: 'torque-from-trade-range',
        severity: 'caution',
        template: messages['torque-from-trade-range'],
        values,
        sources,
        path: 'partMakerTorqueNm',
      }),
    ];
  }
  const share = jobDefaults.doubtedTorqueShare.value;
  if (targetNm >= lowerNm * share && targetNm <= upperNm / share) return [];
  return [say('torque-far-from-trade', 'caution', { torqueNm: targetNm, lowerNm, upperNm }, 'partMakerTorqueNm')];
}

function preloadAt(job: Job, record: InterfaceRecord, torqueNm: number, thread: Thread) {
  const friction = threadFrictionOf(job.fixing?.lubrication ?? 'unknown');
  const pinched = record.drawnTight.by === 'pinch-bolts' && job.fixing?.bearingOuterDiameterMm === undefined;
  const bearing = bearingOf(job, thread.designation);
  const outerDiameterMm = Math.max(jobDefaults.pinchHead.value, bearing.holeDiameterMm + 1);
  return preloadRange({
    torqueNm,
    tool: TOOL,
    thread,
    threadFriction: friction,
    bearingFriction: friction,
    bearing: pinched ? { ...bearing, outerDiameterMm } : bearing,
  });
}
