import { createFinding, type Finding } from '@spindlewright/quantity';
import { assemblyLimit, threadFor } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';
import { bearingOf } from './press-plan.ts';
import type { PressPlan } from './seat-part.ts';
import type { BoltStrength } from './tightening-part.ts';

/**
 * Sets the target against what the bolt stands. A class that was read and is too weak is a stop; one that was not read is
 * only ever a reason to ask for the head mark.
 *
 * @internal
 */
export function boltStrength(job: Job, press: PressPlan): { strength: BoltStrength; findings: Finding[] } {
  const read = job.fixing?.propertyClass;
  const propertyClass = read ?? jobDefaults.unreadPropertyClass.value.toFixed(1);
  const limitAt = (friction: number) =>
    assemblyLimit({
      thread: threadFor(press.thread),
      propertyClass,
      threadFriction: friction,
      bearing: bearingOf(job, press.thread),
    });
  const atNominal = limitAt(press.threadFriction.nominal);
  const limitTorqueNm = {
    lower: limitAt(press.threadFriction.lower).torqueNm,
    nominal: atNominal.torqueNm,
    upper: limitAt(press.threadFriction.upper).torqueNm,
  };
  const limits = { limitTorqueNm, limitPreloadN: atNominal.preloadN };
  const targetNm = press.torqueNm.nominal;
  const values = { propertyClass, targetNm, limitNm: limitTorqueNm.nominal, lowestLimitNm: limitTorqueNm.lower };
  const say = (code: keyof typeof messages, severity: Finding['severity'], path: string): Finding[] => [
    createFinding({
      code,
      severity,
      template: messages[code],
      values,
      sources: ['vdi-2230-2001-quoted', 'iso-898-1-quoted'],
      path,
    }),
  ];
  const exceeded = targetNm > limitTorqueNm.nominal;
  const tight = targetNm > limitTorqueNm.lower;
  if (read === undefined) {
    const findings = tight ? say('head-mark-needed', 'caution', 'fixing.propertyClass') : [];
    return { strength: { propertyClass, read: false, ...limits, state: tight ? 'unknown' : 'within' }, findings };
  }
  const path = 'fixing.propertyClass';
  if (exceeded) {
    const findings = say('bolt-class-too-weak', 'stop', path);
    return { strength: { propertyClass, read: true, ...limits, state: 'exceeded' }, findings };
  }
  return {
    strength: {
      propertyClass,
      read: true,
      ...limits,
      state: tight ? 'within-if-friction-is-not-low' : 'within',
    },
    findings: tight ? say('bolt-class-near-its-limit', 'caution', path) : [],
  };
}
