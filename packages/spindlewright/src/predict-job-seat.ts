import { DomainError, type Finding, type Limits, type Measurand } from '@spindlewright/quantity';
import type { ArmShape, SeatInput, SpindleShape } from '@spindlewright/taper';
import { decideSeat, seatFindings } from './decide-seat.ts';
import type { Job } from './job.ts';
import { forReader, gravestFirst } from './job-sources.ts';
import { isTaperJob } from './joint-kind.ts';
import { pressPlan } from './press-plan.ts';
import { readJob } from './read-job.ts';
import { recordsOf } from './records-of.ts';
import { knowSeat } from './seat.ts';
import type { PressPlan, SeatFacts } from './seat-part.ts';
import type { FitState } from './sheet.ts';

/** Where the arm of a job seats, and what to make of it. */
export interface JobSeat extends SeatFacts {
  /** Whether arm and spindle fit, by the seat alone: what was found at the joint can still forbid the ride. */
  state: FitState;
  /** The answer in a sentence or two, as the sheet gives it. */
  headline: string;
  /** Path of the fact that decides, when it cannot be told. */
  missingFact?: string;
  /** The press that was reckoned with. */
  press: PressPlan;
  /** What the leading way was predicted from; `predictSeat` and `seatDistribution` take it. */
  input: SeatInput;
  /** Both parts as the leading way has them, in mm; `drawSeat` takes them. */
  shapes: {
    /** The spindle, lengths in mm, angle in deg. */
    spindle: SpindleShape<Measurand>;
    /** The arm, lengths in mm, angle in deg. */
    arm: ArmShape<Measurand>;
  };
  /** What else there is to know of the seat and the pair, gravest first. */
  findings: readonly Finding[];
}

/**
 * Predicts where the arm of a job seats, with what the sheet takes for everything that was not read.
 *
 * @remarks
 * Formula: none of its own; `predictSeat` for each way of knowing the seat, pressed by the preload that `preloadRange` makes
 * of the job's torque. The same as the seat of `workJob`, without diagnosis, tightening, drawings and chances: for a page or
 * a script that asks for the seat alone, many times.
 *
 * Validity: square tapers of published sizes (JIS, ISO, or not known), others are refused. Readings without limits get the
 * half-width of their instrument (`jobDefaults`, judgement). Published sizes alone never give `fits`.
 *
 * Accuracy: as its limits say; with a trial fit about 0.1 mm plus the range of the press.
 *
 * @param input - `job`: as `readJob` gives it or as plain data, lengths in mm, torque in Nm. `axialForceN`: limits of the
 * preload, N, at least 0, in place of those that follow from the torque.
 * @returns State, headline, every way of knowing the seat, the press, the input and shapes of the leading way, findings.
 * @throws {@link DomainError} for a job that `readJob` refuses or whose interfaces are no such tapers.
 * @example
 * ```ts
 * import { predictJobSeat } from 'spindlewright';
 * const seat = predictJobSeat({
 *   job: {
 *     format: 'spindlewright-job-1',
 *     title: 'Demo',
 *     date: '2026-11-28',
 *     bike: 'an invented bike',
 *     side: 'drive',
 *     interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *     trialFit: { endGapMm: 0.3, shoulderGapMm: 3 },
 *   },
 * });
 * seat.lead.prediction.verdict; // => 'bottoms-on-end'
 * seat.state; // => 'does-not-fit'
 * ```
 * @see `predictSeat` and `preloadRange`, and their sources.
 */
export function predictJobSeat(input: { job: Job; axialForceN?: Limits }): JobSeat {
  const { job, axialForceN } = input;
  const read = readJob(job);
  if (!isTaperJob(read)) {
    const { spindle, arm } = read.interface;
    throw new DomainError('predictJobSeat', [
      { path: 'job.interface', received: `${spindle} and ${arm}`, allowed: 'square tapers of published sizes' },
    ]);
  }
  const records = recordsOf(read);
  const planned = pressPlan(read);
  const press = axialForceN === undefined ? planned : { ...planned, preloadN: axialForceN };
  const {
    facts,
    input: seatInput,
    shown,
  } = knowSeat(read, press, records.spindle, records.arm, { sensitivities: true });
  const { state, headline, missingFact, findings } = decideSeat(read, facts);
  return {
    ...facts,
    state,
    headline,
    ...(missingFact === undefined ? {} : { missingFact }),
    press,
    input: seatInput,
    shapes: { spindle: shown.spindle, arm: shown.arm },
    findings: gravestFirst([
      ...forReader([...records.findings, ...findings, ...seatFindings(facts), ...facts.mate.findings]),
      // A sheet has cautions of its own, a seat alone has to bring its own along.
      ...facts.lead.prediction.findings.filter(({ code }) => code === 'instructions-first'),
    ]),
  };
}
