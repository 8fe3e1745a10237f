import { convert, type Finding, hardLimits } from '@spindlewright/quantity';
import { wrenchSetting } from '@spindlewright/torque';
import type { WrenchPlan } from '../../tightening-part.ts';
import { wrenchPlan } from '../../wrench-plan.ts';
import type { Parsed } from '../parse.ts';
import { readMeasurand } from '../read-measurand.ts';
import { Refusal } from '../refusal.ts';

/** The wrench as the flags give it. @internal */
export interface WrenchAtHand {
  unit: WrenchPlan['unit'];
  scale?: { lowest: number; highest: number };
  lengthMm?: number;
  extension?: { lengthMm: number; angleDeg: number };
}

/** Reads the flags of the wrench. @internal */
export function wrenchAtHand(parsed: Parsed, unit: WrenchPlan['unit']): WrenchAtHand {
  const length = (name: string): number | undefined => {
    const text = parsed.text(name);
    return text === undefined ? undefined : hardLimits(readMeasurand(`--${name}`, text, 'mm')).nominal;
  };
  const lengthMm = length('wrench');
  const extensionMm = length('extension');
  const angle = parsed.text('angle');
  if (extensionMm !== undefined && lengthMm === undefined) {
    throw new Refusal('--extension asks for --wrench LENGTH: the setting depends on both');
  }
  if (angle !== undefined && extensionMm === undefined) throw new Refusal('--angle asks for --extension LENGTH');
  const scaleText = parsed.text('scale');
  const scale = scaleText === undefined ? undefined : hardLimits(readMeasurand('--scale', scaleText));
  if (scale !== undefined && (scale.lower < 0 || scale.upper <= scale.lower)) {
    throw new Refusal(`--scale ${scaleText}: where the scale begins and ends in ${unit}, such as "60..300"`);
  }
  return {
    unit,
    ...(scale === undefined ? {} : { scale: { lowest: scale.lower, highest: scale.upper } }),
    ...(lengthMm === undefined ? {} : { lengthMm }),
    ...(extensionMm === undefined
      ? {}
      : {
          extension: {
            lengthMm: extensionMm,
            angleDeg: angle === undefined ? 0 : hardLimits(readMeasurand('--angle', angle, 'deg')).nominal,
          },
        }),
  };
}

/** Torque at the bolt over what the wrench shows. @internal */
export function leverRatioOf({ lengthMm, extension }: WrenchAtHand): number {
  if (extension === undefined || lengthMm === undefined) return 1;
  return wrenchSetting({
    targetTorqueNm: 1,
    wrenchLengthMm: lengthMm,
    extensionLengthMm: extension.lengthMm,
    extensionAngleDeg: extension.angleDeg,
  }).leverRatio;
}

/** What to set the wrench to, and whether it reaches. @internal */
export function settingOf(targetNm: number, wrench: WrenchAtHand): { plan: WrenchPlan; findings: readonly Finding[] } {
  const { unit, scale, lengthMm, extension } = wrench;
  const target = convert(targetNm, 'Nm', unit);
  if (extension !== undefined && lengthMm !== undefined) {
    const { settingNm, findings } = wrenchSetting({
      targetTorqueNm: targetNm,
      wrenchLengthMm: lengthMm,
      extensionLengthMm: extension.lengthMm,
      extensionAngleDeg: extension.angleDeg,
    });
    const setting = convert(settingNm, 'Nm', unit);
    const reaches = scale === undefined || (setting >= scale.lowest && setting <= scale.highest);
    const plan: WrenchPlan = {
      unit,
      target,
      reach: reaches ? 'with-extension' : 'other-wrench',
      setting,
      extensionLengthMm: extension.lengthMm,
    };
    return { plan, findings };
  }
  if (scale === undefined) return { plan: { unit, target, reach: 'direct', setting: target }, findings: [] };
  return wrenchPlan(targetNm, {
    unit,
    lowestSetting: scale.lowest,
    highestSetting: scale.highest,
    ...(lengthMm === undefined ? {} : { lengthMm }),
  });
}
