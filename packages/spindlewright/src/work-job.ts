import { buySection } from './buy-section.ts';
import { candidatesSection, judgeCandidates } from './candidates.ts';
import { costOf, costSection } from './cost-section.ts';
import { decideJob } from './decide-job.ts';
import { decideSeat, seatFindings } from './decide-seat.ts';
import { diagnosisOf } from './diagnosis-part.ts';
import { diagnosisFindings, diagnosisSections } from './diagnosis-sections.ts';
import { assumptions, groundsSection } from './grounds-section.ts';
import { identifySection } from './identify-section.ts';
import type { Job } from './job.ts';
import { forReader, gravestFirst, sourcesOf } from './job-sources.ts';
import { isTaperJob } from './joint-kind.ts';
import { planMode } from './plan-mode.ts';
import { pressPlan } from './press-plan.ts';
import { provenanceWith } from './provenance.ts';
import { readJob } from './read-job.ts';
import { recordsOf } from './records-of.ts';
import { seatOf } from './seat.ts';
import { seatSections } from './seat-sections.ts';
import type { JobSheet, Section } from './sheet.ts';
import { sheetHead, standingCautions } from './sheet-head.ts';
import { tightenSections } from './tighten-section.ts';
import { tighteningOf } from './tightening.ts';
import { tighteningProblems } from './tightening-problems.ts';
import { whatIfRows, whatIfSection } from './what-if.ts';
import { workJoint } from './work-joint.ts';

/**
 * Works a job: says what is wrong and why, where the arm seats, how to tighten it and when to look again.
 *
 * @remarks
 * Formula: none of its own; `diagnose` for the observations, `predictSeat` for each way of knowing the seat (trial fit,
 * readings, each published set apart), `preloadRange` for the force that presses the arm on, `assemblyLimit`,
 * `checkFixing`, `boltTurns` and `settledPreload` for the tightening, `checkMate` for the pair; `pinchClamp`, `splinePress`,
 * `cotterWedge`, `faceSpline` and `onePieceCrank` at the joints that are no taper.
 *
 * Validity: every interface that has a record. A seat is predicted for square tapers of published sizes (JIS, ISO, or not
 * known); at every other joint the sheet holds diagnosis, interfaces, fastening and, where there is a model, the mechanics
 * of that joint, and names what does not apply. Readings without limits get the half-width of their instrument, which is
 * judgement and named in the sheet. Published sizes alone never give `fits`, since no arm-bore size is published.
 *
 * Accuracy: as the limits in the sheet say; with a trial fit about 0.1 mm plus the range of the press. Probabilities of
 * the diagnosis rest on judgement.
 *
 * @param job - The job, as `readJob` gives it or as plain data; lengths in mm, torque in Nm.
 * @returns The sheet: state, headline, figures, findings, cautions, sections, provenance. It equals its JSON round trip.
 * @throws {@link DomainError} for a job that `readJob` refuses, an interface without a record, or an observation that
 * the joint does not have.
 * @example
 * ```ts
 * import { workJob } from 'spindlewright';
 * const sheet = workJob({
 *   format: 'spindlewright-job-1',
 *   title: 'Demo',
 *   date: '2026-11-25',
 *   bike: 'an invented bike',
 *   side: 'drive',
 *   interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *   trialFit: { endGapMm: 0.3, shoulderGapMm: 3 },
 * });
 * sheet.state; // => 'does-not-fit'
 * sheet.seat?.lead.prediction.verdict; // => 'bottoms-on-end'
 * sheet.doNotRide; // => true
 * ```
 * @see The packages named above and their sources.
 */
export function workJob(job: Job): JobSheet {
  const read = readJob(job);
  return withExtras(read, workParts(read));
}

const workParts = (read: Job): JobSheet => (isTaperJob(read) ? workTaper(read) : workJoint(read));

/** Adds what a job asks for besides: changes side by side, minutes and costs; before what else there is to know. */
function withExtras(read: Job, sheet: JobSheet): JobSheet {
  const rows = whatIfRows(read, sheet.seat);
  const cost = costOf(read, sheet.diagnosis);
  if (rows.length === 0 && cost === undefined) return sheet;
  const added = [...whatIfSection(rows), ...costSection(cost, sheet.diagnosis)];
  const place = sheet.sections.findIndex(({ id }) => AFTER_EXTRAS.includes(id));
  return {
    ...sheet,
    ...(rows.length === 0 ? {} : { whatIf: rows }),
    ...(cost === undefined ? {} : { cost }),
    sections: [...sheet.sections.slice(0, place), ...added, ...sheet.sections.slice(place)],
  };
}

/** Sections that close every sheet; the first of them there is. */
const AFTER_EXTRAS = ['findings', 'not-here', 'cautions'];

function workTaper(read: Job): JobSheet {
  const records = recordsOf(read);
  const press = pressPlan(read);
  const diagnosis = diagnosisOf(read);
  const seat = asksForSeat(read) ? seatOf(read, press, records.spindle, records.arm) : undefined;
  const candidates = judgeCandidates(read, press, records.spindle, seat === undefined);
  const fitting = candidates.find(({ state }) => state === 'fits');
  const action = diagnosis?.result.action;
  // The gap of an arm that might be fitted says nothing of the one that sits, unless that one goes.
  const replacing = action === undefined || REPLACES_ARM.includes(action);
  const tightening = tighteningOf(read, press, seat ?? (replacing ? fitting?.seat : undefined), records.spindle);
  const seatDecision = seat === undefined ? undefined : decideSeat(read, seat);
  const decision = decideJob({ job: read, diagnosis, seat: seatDecision, tightening, candidates });
  const leavesJointAlone = seat === undefined && JOINT_LEFT_ALONE.includes(action);
  // Without a plan only what concerns the bolt as it is stays worth saying.
  const boltFindings = tightening.findings.filter(({ severity }) => !leavesJointAlone || severity === 'stop');
  const findings = gravestFirst(
    forReader([
      ...records.findings,
      ...(diagnosis === undefined ? [] : diagnosisFindings(read, diagnosis)),
      ...(seatDecision?.findings ?? []),
      ...(seat === undefined ? [] : seatFindings(seat)),
      ...(seat?.mate.findings ?? []),
      ...boltFindings,
    ]),
  );
  const mode = planMode({
    action,
    seatState: seatDecision?.state,
    candidateFits: fitting !== undefined,
    problems: tighteningProblems(tightening).length > 0,
  });
  const boltFails = tighteningProblems(tightening).length > 0;
  const cautions = standingCautions(FIXING_CAUTION, WEAR_CAUTION);
  const sections: Section[] = [
    { id: 'owner', title: 'In short', blocks: [{ kind: 'list', ordered: false, items: decision.forOwner }] },
    ...(diagnosis === undefined ? [] : diagnosisSections(read, diagnosis)),
    ...buySection(read, diagnosis, records, { seat: seatDecision?.state === 'does-not-fit', bolt: boltFails }),
    ...identifySection(records),
    ...(seat === undefined ? [] : seatSections(seat)),
    ...candidatesSection(candidates),
    ...(leavesJointAlone ? [] : tightenSections(read, tightening, records.spindle, mode)),
    ...(findings.length === 0
      ? []
      : [{ id: 'findings', title: 'What else there is to know', blocks: [{ kind: 'findings' as const, findings }] }]),
    { id: 'cautions', title: 'Cautions', blocks: [{ kind: 'list', ordered: false, items: cautions }] },
  ];
  const seats = [...(seat === undefined ? [] : [seat]), ...candidates.flatMap((candidate) => candidate.seat ?? [])];
  const taken = leavesJointAlone ? [] : assumptions(read, tightening, seats.length > 0);
  const provenance = provenanceWith([
    ...sourcesOf(
      sections,
      findings,
      taken.map(({ datum }) => datum),
      seats,
    ),
    ...candidates.flatMap(({ mate }) => mate?.sources ?? []),
  ]);
  return {
    ...sheetHead(read, decision, diagnosis),
    ...(records.identification === undefined ? {} : { identification: records.identification }),
    ...(seat === undefined ? {} : { seat }),
    candidates,
    tightening,
    findings,
    cautions,
    sections: [...sections, groundsSection(taken, seat, provenance)],
    provenance,
  };
}

const FIXING_CAUTION =
  'Never ride without the fixing bolt or nut, however tight the arm feels: friction holds it at rest only.';
const WEAR_CAUTION = 'An arm with a crack, a rounded bore or play is not to be ridden, whatever the figures say.';

/** Actions after which another arm is fitted. */
const REPLACES_ARM: readonly unknown[] = ['replace-arm', 'replace-both', 'fit-matching-part'];

/** Actions that do not touch the arm's joint, so that the sheet has no tightening to plan. */
const JOINT_LEFT_ALONE: readonly unknown[] = ['ride', 'service-bearing', 'look-elsewhere'];

/** A seat is asked for when something of the arm was read, or when nothing else was asked. */
const asksForSeat = (job: Job): boolean =>
  job.trialFit !== undefined ||
  job.arm !== undefined ||
  (job.observations === undefined && job.candidates === undefined);
