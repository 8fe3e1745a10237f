import { jobDefaults } from './defaults.ts';
import type { OtherWay, SeatChances, SeatPart } from './seat-part.ts';
import { basisWords, gapWords, limitsWords, pathWords, plain, shareWords, verdictWords } from './seat-words.ts';
import type { Section } from './sheet.ts';

/** The sections of the sheet that speak of the seat. @internal */
export function seatSections(seat: SeatPart): Section[] {
  return [seatSection(seat), otherWaysSection(seat)];
}

function seatSection({ lead, drawing, chances }: SeatPart): Section {
  const { handFit, pressed, travelMm, pressReached, sensitivity } = lead.prediction;
  const [top] = sensitivity;
  const unbounded = lead.prediction.findings.some(({ code }) => code === 'travel-unbounded');
  return {
    id: 'seat',
    title: 'Where the arm seats',
    blocks: [
      {
        kind: 'table',
        caption: `By ${basisWords[lead.basis]}: nominal (lower to upper limit)`,
        head: ['clearance', 'pushed on by hand', 'pressed'],
        rows: [
          ['end gap: bolt seat to spindle end', gapWords(handFit.endGapMm), gapWords(pressed.endGapMm)],
          [
            'shoulder gap: arm to wall or run-out',
            limitsWords(handFit.shoulderGapMm, 'mm'),
            gapWords(pressed.shoulderGapMm),
          ],
          ['flats in use', limitsWords(handFit.engagedLengthMm, 'mm'), limitsWords(pressed.engagedLengthMm, 'mm')],
        ],
      },
      {
        kind: 'paragraph',
        text: `The press moves the arm ${limitsWords(travelMm, 'mm')} further on${
          unbounded
            ? ' (no upper bound can be given: at the worst limits the boss gives way, and such limits end where something stops the arm)'
            : ''
        }; ${shareWords(pressReached)} of that is reached before anything stops it.`,
      },
      ...(top === undefined || Math.abs(top.effectMm) < jobDefaults.worthNamingEffect.value
        ? []
        : [
            {
              kind: 'paragraph' as const,
              text: `What moves this prediction most: ${pathWords(top.path)}, ${plain(Math.abs(top.effectMm), 1)} mm of seat within its limits.`,
            },
          ]),
      ...(chances === undefined ? [] : [{ kind: 'paragraph' as const, text: chanceWords(chances) }]),
      { kind: 'drawing', ...drawing },
      ...(chances === undefined ? [] : [{ kind: 'drawing' as const, ...chances.drawing }]),
    ],
  };
}

/** The verdicts by their share, and what such a share means. */
function chanceWords({ verdicts, samples, seed }: SeatChances): string {
  const shares = verdicts
    .map(({ verdict, probability }) => {
      const rounded = Math.round(probability * 100);
      const share = rounded < 1 ? 'under 1' : rounded > 99 ? 'over 99' : String(rounded);
      return `${verdictWords[verdict]}: ${share} in 100`;
    })
    .join('; ');
  return `If each reading lies anywhere within its limits, alike: ${shares} (${samples} samples, seed ${seed}; standard error at most ${Math.ceil(50 / Math.sqrt(samples))} in 100). The limits above are the worst case, and they decide.`;
}

function otherWaysSection({ lead, others, mate }: SeatPart): Section {
  const row = (way: OtherWay): string[] => [
    way.basis === 'published-set' ? `set ${way.set}` : basisWords[way.basis],
    gapWords(way.prediction.pressed.endGapMm),
    gapWords(way.prediction.pressed.shoulderGapMm),
    verdictWords[way.prediction.verdict],
  ];
  const published = others.filter((way) => way.basis === 'published-set');
  const verdicts = new Map<string, number>();
  for (const way of published) {
    const words = verdictWords[way.prediction.verdict];
    verdicts.set(words, (verdicts.get(words) ?? 0) + 1);
  }
  const counts = [...verdicts].map(([words, count]) => `${count} of ${published.length} say "${words}"`).join(', ');
  return {
    id: 'other-ways',
    detail: true,
    title: 'What the other ways of knowing say',
    blocks: [
      {
        kind: 'table',
        caption: 'Pressed, each way apart; the published sets disagree and are not averaged',
        head: ['way', 'end gap', 'shoulder gap', 'verdict'],
        rows: [lead, ...others].map(row),
      },
      ...(published.length === 0
        ? []
        : [
            {
              kind: 'paragraph' as const,
              text: `Published sizes alone: ${counts}. No arm-bore size is published; the sets' arms are derived from how an arm sits on a spindle of its own standard (judgement). ${
                lead.basis === 'published-set'
                  ? 'Only a trial fit settles it.'
                  : `The ${basisWords[lead.basis]} comes before them.`
              }`,
            },
          ]),
      ...shiftBlocks(mate),
    ],
  };
}

function shiftBlocks(mate: SeatPart['mate']): Section['blocks'] {
  if (mate.verdict !== 'mates-with-shift' || mate.shiftMm.length === 0) return [];
  const shifts = mate.shiftMm.map((entry) => entry.shiftMm.nominal);
  const least = Math.min(...shifts.map(Math.abs));
  const most = Math.max(...shifts.map(Math.abs));
  const way = (shifts[0] ?? 0) > 0 ? 'deeper, toward the frame' : 'farther out, away from the frame';
  return [
    {
      kind: 'paragraph',
      text: `Mixed tapers: by the published sets this arm sits ${plain(least, 1)} to ${plain(most, 1)} mm ${way}, than on a spindle of its own standard, and chainline and pedal move with it. The other mix goes the other way.`,
    },
    {
      kind: 'paragraph',
      text: `Claims in print of that shift, none of them measured on these parts: ${mate.claims
        .map(
          ({ value, statement, sources }) =>
            `${value === undefined ? statement.replace(/\.$/, '') : `${value.value} ${value.unit}`} [${sources.join(', ')}]`,
        )
        .join('; ')}.`,
    },
  ];
}
