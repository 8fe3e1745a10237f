import { convert } from '@spindlewright/quantity';
import { wrenchSetting } from '@spindlewright/torque';
import { inches } from './units.ts';
import { steps, type Worked } from './worked.ts';

/** A 12 in wrench with a 3 in extension, in line and across. */
export function wrenchExtension(): Worked {
  const settingAt = (extensionAngleDeg: number): number =>
    convert(
      wrenchSetting({
        targetTorqueNm: convert(20, 'lbf.ft', 'Nm'),
        wrenchLengthMm: inches(12),
        extensionLengthMm: inches(3),
        extensionAngleDeg,
      }).settingNm,
      'Nm',
      'lbf.ft',
    );
  return {
    title: 'Setting for 20 lbf.ft through an extension',
    source: 'torque-adapter-rule',
    citation: 'example of the sheet',
    steps: steps(1e-12, 'exact', [
      ['in line', 16, settingAt(0), 'lbf.ft'],
      ['at right angles', 20, settingAt(90), 'lbf.ft'],
    ]),
  };
}
