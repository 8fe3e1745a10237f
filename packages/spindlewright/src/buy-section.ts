import { listActions } from '@spindlewright/diagnosis';
import type { InterfaceRecord } from '@spindlewright/interfaces';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job } from './job.ts';
import type { Section } from './sheet.ts';

const ARM_PARTS = ['arm', 'arm-and-spindle', 'arm-or-spindle'];
const SPINDLE_PARTS = ['spindle', 'arm-and-spindle', 'arm-or-spindle'];

/** What to ask for when a part is bought: every interface of it, and what to read on the old one. @internal */
export function buySection(
  job: Job,
  diagnosis: DiagnosisPart | undefined,
  seatFails: boolean,
  record: InterfaceRecord,
): Section[] {
  const action = diagnosis?.result.action;
  const needed = listActions().find(({ id }) => id === action)?.part ?? (seatFails ? 'arm-or-spindle' : 'none');
  const rows = [
    ...(ARM_PARTS.includes(needed) ? armRows(job, record) : []),
    ...(SPINDLE_PARTS.includes(needed) ? spindleRows(record) : []),
    ...(needed === 'fixing' || ARM_PARTS.includes(needed) ? fixingRows(record) : []),
  ];
  if (rows.length === 0) return [];
  return [
    {
      id: 'buy',
      title: 'What to buy, and what must match',
      blocks: [
        {
          kind: 'table',
          caption: 'Read each on the old part and on the spindle; names alone do not decide',
          head: ['of', 'ask for', 'how to know'],
          rows,
        },
      ],
    },
  ];
}

const threads = (list: readonly { designation: string; use: string }[]): string =>
  list.map(({ designation, use }) => `${designation} (${use.charAt(0).toLowerCase()}${use.slice(1)})`).join('; ');

const sourced = (ids: readonly string[]): string => (ids.length === 0 ? '' : ` [${[...new Set(ids)].join(', ')}]`);

function armRows(job: Job, record: InterfaceRecord): string[][] {
  const orientation = record.indexPositions?.claims ?? [];
  return [
    ['arm: joint', record.title, 'trial fit on this spindle: both gaps by depth rod, before pressing'],
    ['arm: side', `${job.side} side`, 'the left pedal thread is left-hand'],
    ['arm: length', 'as the other arm', 'stamped inside the arm, or centre of square to centre of pedal eye'],
    [
      'arm: square',
      'the same way round as the other arm',
      `${orientation.map(({ statement }) => statement).join(' ')}${sourced(orientation.flatMap(({ sources }) => sources))}`,
    ],
    [
      'arm: puller thread',
      threads(record.puller?.threads ?? []),
      'a near size starts and then strips: turn the puller in by hand, all the way',
    ],
    [
      'arm: pedal thread',
      '9/16 in x 20 on three-piece cranks; 14 x 1.25 mm on old French ones',
      'the pedal has to turn in by hand [thread-size-list, pedal-threads-fr-wiki]',
    ],
    ...(job.side === 'drive'
      ? [
          [
            'arm: chainring fixing',
            'bolt circle and number of arms as the rings',
            'five arms: neighbouring holes stand 0.588 of the circle apart [bolt-circle-list]',
          ],
          [
            'arm: chainline',
            'the same offset as the old arm',
            'chainline moves one to one with the depth at which the arm seats',
          ],
        ]
      : []),
  ];
}

function spindleRows(record: InterfaceRecord): string[][] {
  return [
    ['spindle: joint', record.title, 'sizes are published without tolerance: try the arm on it before fitting'],
    ['spindle: length', 'as the old one', 'stamped, or end to end; half of a change moves the chainline'],
    ['spindle: shell', 'thread and width of the frame', 'read on the frame and on the old cup, hand of the thread too'],
  ];
}

function fixingRows(record: InterfaceRecord): string[][] {
  return [
    [
      'bolt or nut',
      threads(record.fixingThreads),
      'gauge the thread in the spindle; the washer goes with it; head mark 8.8, 10.9 or 12.9 tells how much it stands',
    ],
  ];
}
