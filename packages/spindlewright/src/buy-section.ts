import { type ActionId, listActions } from '@spindlewright/diagnosis';
import { getNeighbour, type InterfaceRecord } from '@spindlewright/interfaces';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job } from './job.ts';
import type { JobRecords } from './records-of.ts';
import type { Section } from './sheet.ts';

const ARM_PARTS = ['arm', 'arm-and-spindle', 'arm-or-spindle'];
const SPINDLE_PARTS = ['spindle', 'arm-and-spindle', 'arm-or-spindle'];

/** What to ask for when a part is bought: every interface of it, and what to read on the old one. @internal */
export function buySection(
  job: Job,
  diagnosis: DiagnosisPart | undefined,
  records: JobRecords,
  fails: { seat: boolean; bolt: boolean },
): Section[] {
  const own = partOf(diagnosis?.result.action);
  const condemned = ['arm', 'spindle', 'arm-and-spindle'].includes(own);
  const needed = new Set([
    own,
    // A part that is condemned is replaced whatever the seat says; only else either of the pair may stay.
    ...(fails.seat && !condemned ? ['arm-or-spindle'] : []),
    ...(fails.bolt ? ['fixing'] : []),
  ]);
  const asks = (parts: readonly string[]): boolean => parts.some((part) => needed.has(part));
  const either = needed.has('arm-or-spindle');
  // Of a pair that does not match one part stays: an arm is bought for the spindle that stays, or the other way round.
  const rows = [
    ...(asks(ARM_PARTS) ? armRows(job, records.spindle, either ? 'either an arm' : 'arm') : []),
    ...(asks(SPINDLE_PARTS)
      ? spindleRows(either ? records.arm : records.spindle, either ? 'or a spindle' : 'spindle')
      : []),
    ...(asks(['fixing', ...ARM_PARTS]) ? fixingRows(job, records.spindle) : []),
  ];
  rows.push(...otherSideRows(job, diagnosis, records));
  if (rows.length === 0) return [];
  return [
    {
      id: 'buy',
      title: 'What to buy, and what must match',
      blocks: [
        {
          kind: 'table',
          caption: 'Read each on the old part and on the one that stays; names alone do not decide',
          head: ['of', 'ask for', 'how to know'],
          rows,
        },
      ],
    },
  ];
}

const partOf = (action: ActionId | undefined): string => listActions().find(({ id }) => id === action)?.part ?? 'none';

/** What the other end of the spindle needs, when it was compared and is condemned. */
function otherSideRows(job: Job, diagnosis: DiagnosisPart | undefined, records: JobRecords): string[][] {
  const comparison = diagnosis?.comparison;
  if (comparison === undefined) return [];
  const side = job.side === 'drive' ? ('non-drive' as const) : ('drive' as const);
  const result = side === 'drive' ? comparison.drive : comparison.nonDrive;
  const part = partOf(result.action);
  return [
    ...(ARM_PARTS.includes(part) ? armRows({ ...job, side }, records.spindle, 'other side, arm') : []),
    ...(part === 'fixing'
      ? fixingRows(job, records.spindle).map(([, ...rest]) => ['other side, bolt or nut', ...rest])
      : []),
  ];
}

const threads = (list: readonly { designation: string; use: string }[]): string =>
  list.map(({ designation, use }) => `${designation} (${use.charAt(0).toLowerCase()}${use.slice(1)})`).join('; ');

const cited = (ids: readonly string[]): string => (ids.length === 0 ? '' : ` [${[...new Set(ids)].join(', ')}]`);

/** Pedal threads of three-piece arms, by record. */
const PEDALS = ['pedal-9-16', 'pedal-14x1-25'];

function pedalWords(id: string, side: Job['side']): { text: string; sources: readonly string[] }[] {
  const record = getNeighbour(id);
  if (record.kind !== 'pedal-thread') return [];
  const thread = side === 'drive' ? record.threads.right : record.threads.left;
  const what = record.summary.replace(/\.$/, '');
  return [
    {
      text: `${thread.designation}, ${thread.hand}-hand (${what.charAt(0).toLowerCase()}${what.slice(1)})`,
      sources: thread.nominalDiameterMm.sources,
    },
  ];
}

function armRows(job: Job, record: InterfaceRecord, part: string): string[][] {
  const pedals = PEDALS.flatMap((id) => pedalWords(id, job.side));
  const orientation = record.indexPositions?.claims ?? [];
  const hand = job.side === 'drive' ? 'the right pedal thread is right-hand' : 'the left pedal thread is left-hand';
  return [
    [`${part}: joint`, record.title, 'trial fit on this spindle: both gaps by depth rod, before pressing'],
    [`${part}: side`, `${job.side} side`, hand],
    [`${part}: length`, 'as the other arm', 'stamped inside the arm, or centre of square to centre of pedal eye'],
    [
      `${part}: square`,
      'the same way round as the other arm',
      `${orientation.map(({ statement }) => statement).join(' ')}${cited(orientation.flatMap(({ sources }) => sources))}`,
    ],
    [
      `${part}: puller thread`,
      threads(record.puller?.threads ?? []),
      'a near size starts and then strips: turn the puller in by hand, all the way',
    ],
    [
      `${part}: pedal thread`,
      pedals.map(({ text }) => text).join('; '),
      `the pedal has to turn in by hand${cited(pedals.flatMap(({ sources }) => sources))}`,
    ],
    ...(job.side === 'drive'
      ? [
          [
            `${part}: chainring fixing`,
            'bolt circle and number of arms as the rings',
            `five arms: neighbouring holes stand ${Math.sin(Math.PI / 5).toFixed(3)} of the circle apart, the sine of half the angle between them`,
          ],
          [
            `${part}: chainline`,
            'the same offset as the old arm',
            'chainline moves one to one with the depth at which the arm seats',
          ],
        ]
      : []),
  ];
}

const spindleRows = (record: InterfaceRecord, part: string): string[][] => [
  [`${part}: joint`, record.title, 'sizes are published without tolerance: try the arm on it before fitting'],
  [`${part}: length`, 'as the old one', 'stamped, or end to end; half of a change moves the chainline'],
  [`${part}: shell`, 'thread and width of the frame', 'read on the frame and on the old cup, hand of the thread too'],
];

function fixingRows(job: Job, record: InterfaceRecord): string[][] {
  const thread = job.fixing?.spindleThread ?? job.fixing?.thread;
  return [
    [
      'bolt or nut',
      thread === undefined ? threads(record.fixingThreads) : `${thread}, as the spindle`,
      'gauge the thread in the spindle; the washer goes with it; the mark on the head (8.8, 10.9, 12.9) tells how much it stands',
    ],
  ];
}
