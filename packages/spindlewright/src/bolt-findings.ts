import type { InterfaceRecord } from '@spindlewright/interfaces';
import { createFinding, type Finding, hardLimits } from '@spindlewright/quantity';
import { threadFor } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';
import type { PressPlan } from './seat-part.ts';

type Code = keyof typeof messages;

/** What can be said of the fixing without its length: thread, washer, torque, and what was not read. @internal */
export function boltFindings(job: Job, press: PressPlan, record: InterfaceRecord, lengthChecked: boolean): Finding[] {
  const { fixing } = job;
  const say = (code: Code, severity: Finding['severity'], values: Finding['values'], path: string): Finding =>
    createFinding({ code, severity, template: messages[code], values, path });
  if (fixing === undefined) {
    return [
      ...torqueFindings(job, press, say),
      say('thread-assumed', 'caution', { thread: press.thread }, 'fixing.thread'),
    ];
  }
  const thread = threadFor(fixing.thread);
  const findings = torqueFindings(job, press, say);
  const known = record.fixingThreads.map(({ designation }) => designation);
  // A designation without a pitch in the record stands for any pitch of that diameter.
  const usual = known.some((text) => text === thread.designation || thread.designation.startsWith(`${text}x`));
  if (!usual) {
    const values = { thread: thread.designation, known: known.join(', ') };
    findings.push(say('unusual-fixing-thread', 'caution', values, 'fixing.thread'));
  }
  if (thread.hand === 'left') {
    findings.push(say('left-hand-fixing', 'note', { thread: thread.designation }, 'fixing.thread'));
  }
  if (fixing.washerThicknessMm === undefined && fixing.head !== 'flanged') {
    findings.push(say('washer-not-read', 'caution', {}, 'fixing.washerThicknessMm'));
  }
  if (lengthChecked) return findings;
  const { spindleThread, washerThicknessMm, head } = fixing;
  if (spindleThread !== undefined && threadFor(spindleThread).designation !== thread.designation) {
    const values = { thread: thread.designation, spindleThread };
    findings.push(say('spindle-thread-differs', 'stop', values, 'fixing.spindleThread'));
  }
  if (washerThicknessMm !== undefined && hardLimits(washerThicknessMm).upper === 0 && head !== 'flanged') {
    findings.push(say('no-washer-under-plain-head', 'stop', {}, 'fixing.washerThicknessMm'));
  }
  const missing = fixing.lengthUnderHeadMm === undefined ? 'its length under the head' : 'the end gap';
  findings.push(say('fixing-not-checked', 'note', { missing }, 'fixing'));
  return findings;
}

function torqueFindings(
  job: Job,
  press: PressPlan,
  say: (code: Code, severity: Finding['severity'], values: Finding['values'], path: string) => Finding,
): Finding[] {
  if (job.partMakerTorqueNm === undefined) return [];
  const lowerNm = Math.min(...press.tradeTorques.map((row) => row.lowerNm));
  const upperNm = Math.max(...press.tradeTorques.map((row) => row.upperNm));
  const torqueNm = press.torqueNm.nominal;
  const share = jobDefaults.doubtedTorqueShare.value;
  if (torqueNm >= lowerNm * share && torqueNm <= upperNm / share) return [];
  return [say('torque-far-from-trade', 'caution', { torqueNm, lowerNm, upperNm }, 'partMakerTorqueNm')];
}
