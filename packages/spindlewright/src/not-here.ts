import type { InterfaceRecord } from '@spindlewright/interfaces';
import type { Job } from './job.ts';
import type { Mechanics } from './joint-mechanics.ts';
import type { NotHere } from './joint-part.ts';

const SEAT = 'Where the arm seats on a taper: end gap, shoulder gap, trial fit, published sizes';

const WHY_NO_SEAT: Readonly<Record<InterfaceRecord['axialStop']['kind'], string>> = {
  'press-on-taper': 'no size of this square is published: measure both gaps at a trial fit and judge them by hand',
  shoulder: 'this arm goes home on a stop; home or not home is looked at, not predicted',
  'preload-adjuster': 'a clamped arm has no taper: cap and bearings set where it stands',
  cotter: 'the cotter sets where the arm stands, not a taper under it',
  'face-teeth': 'the teeth centre and stop the halves in one go',
  forged: 'arm and axle are one piece',
};

/** What a sheet of a square taper would hold and this one does not, by name. @internal */
export function notHere(job: Job, record: InterfaceRecord, { notWorked }: Mechanics, asWhole: boolean): NotHere[] {
  const { by } = record.drawnTight;
  return [
    { what: SEAT, why: WHY_NO_SEAT[record.axialStop.kind] },
    {
      what: 'Turns of the bolt and what riding leaves of its preload',
      why:
        by === 'none' || by === 'cotters'
          ? 'no bolt holds the arm'
          : 'that estimate is made for a pressed taper; for this joint no model and no measurement was found',
    },
    ...(notWorked === undefined ? [] : [{ what: 'What the joint holds, in figures', why: notWorked }]),
    ...(by === 'centre-bolt-or-nut' && job.fixing?.lengthUnderHeadMm !== undefined
      ? [
          {
            what: 'Whether the bolt is long enough',
            why: 'it is only worked for a pressed taper, whose gap is predicted',
          },
        ]
      : []),
    ...(asWhole ? [{ what: 'Whether arm and spindle go together', why: 'they are one piece' }] : []),
    ...(record.puller.threads.length === 0 && by !== 'none'
      ? [{ what: 'Puller thread', why: 'this arm has none' }]
      : []),
  ];
}
