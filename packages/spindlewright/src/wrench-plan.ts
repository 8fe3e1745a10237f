import { convert, createFinding, type Finding } from '@spindlewright/quantity';
import { wrenchReach } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { Wrench } from './job.ts';
import { messages } from './messages/en.ts';
import { plain } from './seat-words.ts';
import type { WrenchPlan } from './tightening-part.ts';

const STEP_MM = jobDefaults.extensionStep.value;

/** Says what to set the wrench at hand to, and the way out when its scale does not reach the target. @internal */
export function wrenchPlan(targetNm: number, wrench: Wrench): { plan: WrenchPlan; findings: Finding[] } {
  const { unit, lowestSetting, highestSetting, lengthMm } = wrench;
  const target = convert(targetNm, 'Nm', unit);
  // By the scale itself: a target at its very end may leave it by the last bit once both are in Nm.
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
  // Without its length no extension can be named, and below the scale none helps.
  if (target > highestSetting && lengthMm !== undefined) {
    const { settingNm, extensionLengthMm } = wrenchReach({
      targetTorqueNm: targetNm,
      lowestSettingNm: convert(lowestSetting, unit, 'Nm'),
      highestSettingNm: convert(highestSetting, unit, 'Nm'),
      wrenchLengthMm: lengthMm,
      extensionStepMm: STEP_MM,
    });
    if (settingNm !== null && extensionLengthMm !== null) {
      const setting = convert(settingNm, 'Nm', unit);
      const neededMm = lengthMm * (target / highestSetting - 1);
      return {
        plan: { unit, target, reach: 'with-extension', setting, extensionLengthMm },
        findings: say('wrench-needs-extension', { neededMm, extensionLengthMm, setting, lengthMm }),
      };
    }
  }
  const code = target < lowestSetting ? ('wrench-too-large' as const) : ('wrench-too-small' as const);
  return { plan: { unit, target, reach: 'other-wrench' }, findings: say(code) };
}

/** The plan for the wrench in a sentence. @internal */
export function wrenchWords(wrench: WrenchPlan): string[] {
  const decimals = wrench.unit === 'Nm' || wrench.unit === 'lbf.ft' ? 1 : 0;
  const setting = wrench.setting === undefined ? '' : `${plain(wrench.setting, decimals)} ${wrench.unit}`;
  switch (wrench.reach) {
    case 'direct':
      return [`Your wrench: set ${setting}.`];
    case 'with-extension':
      return [
        `Your wrench: with an in-line extension of ${wrench.extensionLengthMm} mm from its square to the bolt, hand on the mark of the grip, set ${setting}.`,
      ];
    case 'other-wrench':
      return [`Your wrench does not reach ${plain(wrench.target, decimals)} ${wrench.unit}: use another one.`];
  }
}
