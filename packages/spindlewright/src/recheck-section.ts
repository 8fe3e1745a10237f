import type { InterfaceRecord } from '@spindlewright/interfaces';
import type { Limits } from '@spindlewright/quantity';
import { limitsWords, torqueWords } from './seat-words.ts';
import type { Section } from './sheet.ts';
import type { TighteningPart } from './tightening-part.ts';

/** When to look again, why, and what the trade says of it. @internal */
export function recheckSection({ settling, press }: TighteningPart, record: InterfaceRecord): Section {
  const positions = record.retightening.map(({ statement, sources }) => `${statement} [${sources.join(', ')}]`);
  return {
    id: 're-check',
    title: 'When to check again',
    blocks: [
      {
        kind: 'list',
        ordered: false,
        items: [
          `After the first ride, once: set the wrench to ${torqueWords(press.torqueNm.nominal)} Nm and see whether the bolt turns.`,
          ...(settling === undefined
            ? []
            : [
                `Why: riding shakes the friction out of the taper, and the bolt keeps about ${limitsWords(inKilonewtons(settling.preloadAfterShakedownN), 'kN', 0)} even without wear; each micrometre that the flats bed in would cost a further ${limitsWords(inKilonewtons(settling.preloadLossPerMicrometreN), 'kN', 0)}, so a fraction of one takes the rest. No lower bound is claimed.`,
              ]),
          'If it turns again at a second check, take the arm off and look at the hole: re-tightening it again and again opens the hole.',
          'At once, at any time: a creak at each stroke, play at the pedal, or dark powder at the joint.',
        ],
      },
      { kind: 'paragraph', text: 'The trade disagrees on tightening again; what is in print, each apart:' },
      { kind: 'list', ordered: false, items: positions },
    ],
  };
}

const inKilonewtons = ({ lower, nominal, upper }: Limits): Limits => ({
  lower: lower / 1000,
  nominal: nominal / 1000,
  upper: upper / 1000,
});
