import { describePreloadRange, drawPreloadRange } from '@spindlewright/drawing';
import type { InterfaceRecord } from '@spindlewright/interfaces';
import { convert } from '@spindlewright/quantity';
import { limitsWords, plain } from './seat-words.ts';
import type { Block, Section } from './sheet.ts';
import type { TighteningPart } from './tightening-part.ts';

const FLATS_WORDS = {
  greased: 'Flats: thin grease, as the job says.',
  dry: 'Flats: clean and dry, as the job says.',
  unknown: 'Flats: clean them, decide greased or dry before pressing, and write it down; the trade disagrees.',
} as const;

/** How to tighten, with the wrench at hand, and when to look again. @internal */
export function tightenSections(part: TighteningPart, record: InterfaceRecord, refused: boolean): Section[] {
  const { press, settling } = part;
  const target = press.torqueNm.nominal;
  const items = [
    FLATS_WORDS[press.flats],
    press.lubrication === 'unknown'
      ? `Thread ${press.thread} and bolt head: the job does not say; grease or oil both, washer in place.`
      : `Thread ${press.thread} and bolt head: ${press.lubrication}, as the job says; washer in place.`,
    `Tighten to ${plain(target, 0)} Nm (${plain(convert(target, 'Nm', 'lbf.in'), 0)} lbf.in), ${
      press.torqueFrom === 'part-maker'
        ? "the part maker's value."
        : "the value that most sources of the trade allow; the part maker's value goes first if you have it."
    }`,
    ...wrenchWords(part),
    `Reckon with ${plain(press.preloadN.nominal / 1000, 0)} kN of preload (${plain(press.preloadN.lower / 1000, 0)} to ${plain(press.preloadN.upper / 1000, 0)} kN): friction decides, not the wrench.`,
    ...(settling === undefined
      ? []
      : [
          `From snug to torque takes ${limitsWords(settling.tighteningTurns, 'turns')} while the arm moves; a bolt that has gone solid takes ${limitsWords(settling.solidBoltTurns, 'turns', 2)}.`,
        ]),
    'If it goes solid before half a turn, stop and look: the bolt is on the spindle end or the arm on the wall.',
    'Measure the end gap again when tight; it has to be there still.',
  ];
  return [
    {
      id: 'tighten',
      title: refused ? 'How it would be tightened, if it could be' : 'How to tighten it',
      blocks: [
        ...(refused
          ? [
              {
                kind: 'paragraph' as const,
                text: 'Do not tighten this pair: the list says what the figures above reckon with.',
              },
            ]
          : []),
        { kind: 'list', ordered: !refused, items },
        preloadDrawing(part),
      ],
    },
    ...(refused ? [] : [recheckSection(part, record)]),
  ];
}

/** The preload that tightening may make, beside what the bolt stands and what riding leaves. */
function preloadDrawing({ press, strength, settling }: TighteningPart): Block {
  const picture = {
    preloadN: press.preloadN,
    title: `Bolt preload at ${plain(press.torqueNm.nominal, 0)} Nm`,
    marks: [
      {
        label: `class ${strength.propertyClass} at 90 % of yield${strength.read ? '' : ' (class not read)'}`,
        forceN: strength.limitPreloadN,
      },
      ...(settling === undefined
        ? []
        : [{ label: 'left after riding, no wear', forceN: settling.preloadAfterShakedownN.nominal }]),
    ],
  };
  return {
    kind: 'drawing',
    narrowSvg: drawPreloadRange({ ...picture, idPrefix: 'preload-narrow' }),
    wideSvg: drawPreloadRange({ ...picture, idPrefix: 'preload-wide', widthPx: 720 }),
    description: describePreloadRange(picture),
  };
}

function wrenchWords({ wrench }: TighteningPart): string[] {
  if (wrench === undefined) return [];
  const setting =
    wrench.setting === undefined ? '' : `${plain(wrench.setting, wrench.unit === 'Nm' ? 1 : 0)} ${wrench.unit}`;
  switch (wrench.reach) {
    case 'direct':
      return [`Your wrench: set ${setting}.`];
    case 'with-extension':
      return [
        `Your wrench: with an in-line extension of ${wrench.extensionLengthMm} mm from its square to the bolt, hand on the mark of the grip, set ${setting}.`,
      ];
    case 'other-wrench':
      return [`Your wrench does not reach ${plain(wrench.target, 0)} ${wrench.unit}: use another one.`];
  }
}

function recheckSection({ settling, press }: TighteningPart, record: InterfaceRecord): Section {
  const positions = record.retightening.map(({ statement, sources }) => `${statement} [${sources.join(', ')}]`);
  return {
    id: 're-check',
    title: 'When to check again',
    blocks: [
      {
        kind: 'list',
        ordered: false,
        items: [
          `After the first ride, once: set the wrench to ${plain(press.torqueNm.nominal, 0)} Nm and see whether the bolt turns.`,
          ...(settling === undefined
            ? []
            : [
                `Why: riding shakes the friction out of the taper, and the bolt keeps about ${limitsWords(inKilonewtons(settling.preloadAfterShakedownN), 'kN', 0)} even without wear; each micrometre that the flats bed in may cost a further ${plain(settling.preloadLossPerMicrometreN / 1000, 1)} kN. No lower bound is claimed.`,
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

const inKilonewtons = ({ lower, nominal, upper }: { lower: number; nominal: number; upper: number }) => ({
  lower: lower / 1000,
  nominal: nominal / 1000,
  upper: upper / 1000,
});
