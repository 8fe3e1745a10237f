import { convert, createFinding, type Finding } from '@spindlewright/quantity';
import { wrenchSetting } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { Wrench } from './job.ts';
import { messages } from './messages/en.ts';
import type { WrenchPlan } from './tightening-part.ts';

const STEP_MM = jobDefaults.extensionStep.value;
const LONGEST_SHARE = jobDefaults.longestExtension.value;

/** Says what to set the wrench at hand to, and the way out when its scale does not reach the target. @internal */
export function wrenchPlan(targetNm: number, wrench: Wrench): { plan: WrenchPlan; findings: Finding[] } {
  const { unit, lowestSetting, highestSetting, lengthMm } = wrench;
  const target = convert(targetNm, 'Nm', unit);
  if (target >= lowestSetting && target <= highestSetting) {
    return { plan: { unit, target, reach: 'direct', setting: target }, findings: [] };
  }
  const values = { target, unit, lowestSetting, highestSetting };
  const say = (code: keyof typeof messages, more: Record<string, number> = {}): Finding[] => [
    createFinding({
      code,
      severity: 'caution',
      template: messages[code],
      values: { ...values, ...more },
      sources: code === 'wrench-needs-extension' ? ['torque-adapter-rule'] : [],
      path: 'wrench',
    }),
  ];
  if (target > highestSetting && lengthMm !== undefined) {
    const neededMm = lengthMm * (target / highestSetting - 1);
    const extensionLengthMm = Math.ceil(neededMm / STEP_MM) * STEP_MM;
    if (extensionLengthMm <= LONGEST_SHARE * lengthMm) {
      const { settingNm } = wrenchSetting({
        targetTorqueNm: targetNm,
        wrenchLengthMm: lengthMm,
        extensionLengthMm,
        extensionAngleDeg: 0,
      });
      const setting = convert(settingNm, 'Nm', unit);
      if (setting >= lowestSetting) {
        return {
          plan: { unit, target, reach: 'with-extension', setting, extensionLengthMm },
          findings: say('wrench-needs-extension', { neededMm, extensionLengthMm, setting, lengthMm }),
        };
      }
    }
  }
  const code = target < lowestSetting ? ('wrench-too-large' as const) : ('wrench-too-small' as const);
  return { plan: { unit, target, reach: 'other-wrench' }, findings: say(code) };
}
