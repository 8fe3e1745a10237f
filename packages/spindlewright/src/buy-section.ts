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
      ? fixingRows(job, records.spindle).map(([what = '', ...rest]) => [`other side, ${what}`, ...rest])
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
  const whole = record.family === 'one-piece';
  const pedals = (whole ? ['pedal-1-2'] : PEDALS).flatMap((id) => pedalWords(id, job.side));
  const hand = job.side === 'drive' ? 'the right pedal thread is right-hand' : 'the left pedal thread is left-hand';
  return [
    [`${part}: joint`, jointWanted(record), howToKnow(record)],
    ...(whole ? [[`${part}: side`, 'both: the crank is bought whole', 'it goes in from the right']] : []),
    ...(whole ? [] : [[`${part}: side`, `${job.side} side`, hand]]),
    [
      `${part}: length`,
      whole ? 'as the old one' : 'as the other arm',
      `stamped inside the arm, or centre of the ${record.family === 'square-taper' ? 'square' : 'axle'} to centre of pedal eye`,
    ],
    ...positionRows(record, part),
    ...(record.puller.threads.length === 0
      ? []
      : [
          [
            `${part}: puller thread`,
            threads(record.puller.threads),
            'a near size starts and then strips: turn the puller in by hand, all the way',
          ],
        ]),
    [
      `${part}: pedal thread`,
      pedals.map(({ text }) => text).join('; '),
      `the pedal has to turn in by hand${cited(pedals.flatMap(({ sources }) => sources))}`,
    ],
    ...(job.side === 'drive' || whole ? chainRows(part, record) : []),
  ];
}

/** What a joint is bought by, besides its name. */
function jointWanted(record: InterfaceRecord): string {
  return record.interchange.kind === 'maker-specific'
    ? `${record.title}, of the same maker and part number`
    : record.title;
}

const HOW_TO_KNOW: Readonly<Record<InterfaceRecord['family'], string>> = {
  'square-taper': 'trial fit on this spindle: both gaps by depth rod, before pressing',
  spline: 'count the splines, and try it by hand: it goes on to its stop without force',
  'face-spline': 'count the teeth, and put the halves together by hand: closed all round',
  'through-spindle': 'diameter of the spindle by caliper, number and form of the splines, and where the catch lies',
  cottered: 'diameters of spindle and cotter by caliper: inch and metric ones look alike',
  'one-piece': 'bore of the shell, and cones and cups that belong to it',
};

const howToKnow = (record: InterfaceRecord): string =>
  `${HOW_TO_KNOW[record.family]}${cited(record.interchange.sources)}`;

function positionRows(record: InterfaceRecord, part: string): string[][] {
  if (record.family === 'one-piece') return [];
  const { claims } = record.indexPositions;
  if (claims.length === 0) return [];
  const statements = claims.map(({ statement }) => statement).join(' ');
  const taper = record.family === 'square-taper';
  return [
    [
      `${part}: ${taper ? 'square' : 'position'}`,
      taper ? 'the same way round as the other arm' : 'opposite the other arm',
      `${statements}${cited(claims.flatMap(({ sources }) => sources))}`,
    ],
  ];
}

const chainRows = (part: string, record: InterfaceRecord): string[][] => [
  ...(record.family === 'one-piece'
    ? []
    : [
        [
          `${part}: chainring fixing`,
          'bolt circle and number of arms as the rings',
          `five arms: neighbouring holes stand ${Math.sin(Math.PI / 5).toFixed(3)} of the circle apart, the sine of half the angle between them`,
        ],
      ]),
  [
    `${part}: chainline`,
    'the same offset as the old one',
    record.family === 'square-taper'
      ? 'chainline moves one to one with the depth at which the arm seats'
      : 'measured from the middle of the frame to the middle of the rings',
  ],
];

const spindleRows = (record: InterfaceRecord, part: string): string[][] => [
  [
    `${part}: joint`,
    record.title,
    record.family === 'square-taper'
      ? 'sizes are published without tolerance: try the arm on it before fitting'
      : howToKnow(record),
  ],
  [`${part}: length`, 'as the old one', 'stamped, or end to end; half of a change moves the chainline'],
  [`${part}: shell`, 'thread and width of the frame', 'read on the frame and on the old cup, hand of the thread too'],
];

function fixingRows(job: Job, record: InterfaceRecord): string[][] {
  if (record.family === 'one-piece') return [];
  if (record.family === 'cottered') {
    const { value } = record.geometry.cotterDiameterMm;
    return [
      [
        'cotter with nut and washer',
        `${value} mm, or as the hole measures`,
        'the same diameter and the same flat, angle and depth: laid beside the old one, before it is pressed in',
      ],
    ];
  }
  const thread = job.fixing?.spindleThread ?? job.fixing?.thread;
  const pinched = record.drawnTight.by === 'pinch-bolts';
  const known = threads(record.fixingThreads);
  return [
    [
      pinched ? 'pinch bolts' : record.family === 'square-taper' ? 'bolt or nut' : 'bolt',
      thread === undefined
        ? known || 'as the part maker says: no thread of it was found in print'
        : `${thread}, as ${pinched ? 'the arm' : 'the spindle'}`,
      pinched
        ? 'both at once, of one length, with their washers; the thread in the arm is tried by hand'
        : 'gauge the thread in the spindle; the washer goes with it; the mark on the head (8.8, 10.9, 12.9) tells how much it stands',
    ],
  ];
}
