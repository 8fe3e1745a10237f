import { convert } from '@spindlewright/quantity';
import { preloadFromTorque, threadFor, torqueFromPreload } from '@spindlewright/torque';
import { steps, type Worked } from './worked.ts';

/** Torque of a small screw at five nut factors. */
export function smallScrew(): Worked {
  const torqueAt = (nutFactor: number): number => {
    const joint = { thread: threadFor('#10-32 UNF'), nutFactor, method: 'nut-factor' } as const;
    return convert(torqueFromPreload({ preloadN: convert(1275, 'lbf', 'N'), ...joint }).torqueNm, 'Nm', 'lbf.in');
  };
  return {
    title: 'Torque of a no. 10 screw at nut factors from 0.10 to 0.30',
    source: 'mechanical-fastening-joining',
    citation: 'page 85',
    steps: steps(0.002, 'printed to 0.1 lbf.in', [
      ['nut factor 0.30', 72.7, torqueAt(0.3), 'lbf.in'],
      ['nut factor 0.25', 60.6, torqueAt(0.25), 'lbf.in'],
      ['nut factor 0.20', 48.5, torqueAt(0.2), 'lbf.in'],
      ['nut factor 0.15', 36.3, torqueAt(0.15), 'lbf.in'],
      ['nut factor 0.10', 24.2, torqueAt(0.1), 'lbf.in'],
    ]),
  };
}

/** What 400 lbf.ft make of a 7/8-9 bolt, predicted and measured. */
export function lubricatedBolt(): Worked {
  const thread = threadFor('7/8-9 UNC');
  const torqueNm = convert(400, 'lbf.ft', 'Nm');
  const preload = (nutFactor: number): number =>
    convert(preloadFromTorque({ torqueNm, thread, nutFactor, method: 'nut-factor' }).preloadN, 'N', 'lbf');
  const measured = (load: number): number => (400 * 12) / (load * 0.875);
  return {
    title: 'A 7/8-9 bolt at 400 lbf.ft, dry and lubricated',
    source: 'torque-tension-tests',
    citation: 'predictions and tests',
    steps: [
      ...steps(0.00004, 'printed to 1 lbf', [
        ['preload at nut factor 0.20', 27_429, preload(0.2), 'lbf'],
        ['preload at nut factor 0.15', 36_571, preload(0.15), 'lbf'],
      ]),
      ...steps(0.028, 'printed to two places', [
        ['nut factor measured dry, 30 000 lbf', 0.18, measured(30_000), '1'],
        ['nut factor with anti-seize paste, 32 000 lbf', 0.17, measured(32_000), '1'],
        ['nut factor oiled, 32 000 lbf', 0.17, measured(32_000), '1'],
      ]),
    ],
  };
}
