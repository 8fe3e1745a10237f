import { createFinding, type Finding } from '@spindlewright/quantity';
import { messages } from './messages/en.ts';
import type { PressPlan } from './seat-part.ts';

/** Says that the target is the trade's and not the part maker's. @internal */
export function tradeTorqueFinding(press: PressPlan): Finding[] {
  if (press.torqueFrom === 'part-maker') return [];
  return [
    createFinding({
      code: 'torque-from-trade-range',
      severity: 'caution',
      template: messages['torque-from-trade-range'],
      values: {
        lowerNm: Math.min(...press.tradeTorques.map((row) => row.lowerNm)),
        upperNm: Math.max(...press.tradeTorques.map((row) => row.upperNm)),
        chosenNm: press.torqueNm.nominal,
      },
      sources: [...new Set(press.tradeTorques.flatMap((row) => row.sources))].sort(),
      path: 'partMakerTorqueNm',
    }),
  ];
}
