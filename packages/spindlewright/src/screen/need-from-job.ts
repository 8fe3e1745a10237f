import { listActions } from '@spindlewright/diagnosis';
import { DomainError } from '@spindlewright/quantity';
import type { Job } from '../job.ts';
import { recordsOf } from '../records-of.ts';
import { workJob } from '../work-job.ts';
import { checkNeed } from './check-need.ts';
import type { Need } from './need.ts';
import type { PartKind } from './part.ts';

/** Parts of a diagnosis' action, as kinds of a catalogue; of a pair that does not match the arm is the cheaper change. */
const PARTS: Readonly<Record<string, PartKind>> = {
  arm: 'arm',
  'arm-and-spindle': 'arm',
  'arm-or-spindle': 'arm',
  spindle: 'spindle',
  fixing: 'bolt',
};

const UNKNOWN = 'unknown';

/**
 * Turns a job into what a catalogue is screened for.
 *
 * @remarks
 * Formula: none. Without `for` the part is the one that the action of the job's diagnosis replaces, an arm when it replaces
 * none. An arm is wanted for the spindle of the job and a spindle for its arm; readings of the part that stays, state of the
 * flats, fixing and torque go along. A spindle whose taper is not named is identified from its readings.
 *
 * Validity: jobs as `readJob` gives them; arms, spindles, bolts and pullers. A chainring or pedals need a bolt circle or a
 * thread, of which a job says nothing: write that need by hand.
 *
 * Accuracy: as the job; nothing is added.
 *
 * @param input - `job`: the job; `for`: what is wanted, when it is not what the diagnosis says.
 * @returns The need.
 * @throws {@link DomainError} when the job cannot tell what the part has to go with.
 * @example
 * ```ts
 * import { needFromJob } from 'spindlewright';
 * const job = {
 *   format: 'spindlewright-job-1', title: 'Invented', date: '2026-11-27', bike: 'a bike', side: 'non-drive',
 *   interface: { spindle: 'square-taper-iso', arm: 'unknown' },
 * } as const;
 * needFromJob({ job, for: 'arm' }).interface; // => 'square-taper-iso'
 * ```
 * @see {@link screenParts}
 */
export function needFromJob(input: { job: Job; for?: PartKind }): Need {
  const { job } = input;
  const wanted = input.for ?? wantedBy(job);
  const { spindle, arm } = job.interface;
  const stays = wanted === 'spindle' || wanted === 'puller' ? arm : spindle;
  const other = stays === arm ? spindle : arm;
  if (stays === UNKNOWN && other === UNKNOWN && job.spindle?.flats === undefined) {
    throw new DomainError('needFromJob', [
      {
        path: wanted === 'spindle' ? 'interface.arm' : 'interface.spindle',
        received: '"unknown"',
        allowed: 'the interface of the part that stays, or readings across the flats of the spindle',
      },
    ]);
  }
  const known = stays === UNKNOWN ? recordsOf(job)[wanted === 'spindle' ? 'arm' : 'spindle'].id : stays;
  const need: Need = {
    format: 'spindlewright-need-1',
    for: wanted,
    interface: known,
    ...(wanted === 'arm' ? { side: job.side } : {}),
    ...(wanted === 'arm' && job.spindle !== undefined ? { spindle: job.spindle } : {}),
    ...(wanted === 'spindle' && job.arm !== undefined ? { arm: job.arm } : {}),
    ...(job.flats === undefined ? {} : { flats: job.flats }),
    ...(job.fixing === undefined ? {} : { fixing: job.fixing }),
    ...(job.partMakerTorqueNm === undefined ? {} : { partMakerTorqueNm: job.partMakerTorqueNm }),
  };
  checkNeed('needFromJob', need);
  return need;
}

function wantedBy(job: Job): PartKind {
  if (job.observations === undefined) return 'arm';
  const action = workJob(job).diagnosis?.result.action;
  const part = listActions().find(({ id }) => id === action)?.part ?? '';
  return (Object.hasOwn(PARTS, part) ? PARTS[part] : undefined) ?? 'arm';
}
