import type { InterfaceRecord } from '@spindlewright/interfaces';
import { buySection } from './buy-section.ts';
import { candidatesSection, judgeCandidates } from './candidates.ts';
import { decideJob } from './decide-job.ts';
import { jobDefaults } from './defaults.ts';
import { diagnosisOf } from './diagnosis-part.ts';
import { diagnosisFindings, diagnosisSections } from './diagnosis-sections.ts';
import { fasteningPlan } from './fastening-plan.ts';
import { groundsSection } from './grounds-section.ts';
import type { Job } from './job.ts';
import { forReader, gravestFirst, sourcesOf } from './job-sources.ts';
import { readingFindings } from './joint-findings.ts';
import { familyOf, jointOf, recordAt } from './joint-kind.ts';
import { jointMechanics } from './joint-mechanics.ts';
import type { JointPart } from './joint-part.ts';
import { fastenSections, holdsSection, mateSection } from './joint-sections.ts';
import { jointWords } from './joint-words.ts';
import { mateDecision, mateOf, mateState } from './mate-decision.ts';
import { notHere } from './not-here.ts';
import { planMode } from './plan-mode.ts';
import { pressPlan } from './press-plan.ts';
import { provenanceWith } from './provenance.ts';
import type { JobSheet, Section } from './sheet.ts';
import { sheetHead, standingCautions } from './sheet-head.ts';
import { tighteningProblems } from './tightening-problems.ts';

const UNKNOWN = 'unknown';

/** Works a job whose joint is no pressed square taper of published sizes. @internal */
export function workJoint(job: Job): JobSheet {
  const known = job.interface.spindle === UNKNOWN ? undefined : recordAt('interface.spindle', job.interface.spindle);
  const arm = job.interface.arm === UNKNOWN ? undefined : recordAt('interface.arm', job.interface.arm);
  const spindle = known ?? arm ?? recordAt('interface.spindle', job.interface.spindle);
  const joint = jointOf(job);
  const onePiece = spindle.family === 'one-piece' && arm?.family === 'one-piece';
  const mate = onePiece || known === undefined ? undefined : mateOf(known, arm);
  const diagnosis = diagnosisOf(job);
  const candidates = judgeCandidates(job, pressPlan(job), spindle, false);
  const { plan, findings: planFindings } = fasteningPlan(job, spindle);
  const mechanics = jointMechanics(job, spindle, plan);
  const part: JointPart = {
    interface: spindle.id,
    family: familyOf(joint),
    ...(mate === undefined ? {} : { mate }),
    fastening: plan,
    ...mechanics.part,
    notHere: notHere(job, spindle, mechanics, onePiece),
    findings: [...planFindings, ...readingFindings(job, mechanics.part.cotter !== undefined), ...mechanics.findings],
  };
  const nothingAsked = diagnosis === undefined && candidates.length === 0;
  const pair =
    mate !== undefined && (nothingAsked || mateState(mate).state !== 'cannot-tell') ? mateDecision(mate) : undefined;
  const fixing = { findings: part.findings, withoutTaper: true };
  const decision = decideJob({ job, diagnosis, seat: pair, tightening: fixing, candidates });
  const problems = tighteningProblems(fixing).length > 0;
  const mode = planMode({
    action: diagnosis?.result.action,
    seatState: pair?.state === 'fits' && diagnosis !== undefined ? undefined : pair?.state,
    candidateFits: candidates.some(({ state }) => state === 'fits'),
    problems,
  });
  // The bearings of a clamped or a forged crank are set with the very parts that fasten it.
  const alone = plan.by === 'pinch-bolts' || plan.by === 'none' ? LEFT_ALONE : [...LEFT_ALONE, 'service-bearing'];
  const leftAlone = alone.includes(diagnosis?.result.action) && pair?.state !== 'does-not-fit';
  const findings = gravestFirst(
    forReader(
      [
        ...(diagnosis === undefined ? [] : diagnosisFindings(job, diagnosis)),
        ...(pair === undefined ? [] : (mate?.cautions ?? [])),
        ...part.findings.filter(({ severity, code }) => (!leftAlone || severity === 'stop') && !SAID.includes(code)),
      ],
      jointWords(joint),
    ),
  );
  // An arm that stays, on the spindle of its own name, is no question of fit.
  const asksForPair =
    diagnosis === undefined ||
    job.interface.spindle !== job.interface.arm ||
    REPLACES_A_PART.includes(diagnosis.result.action);
  const cautions = cautionsFor(plan.by, spindle.family);
  const records = { spindle, arm: arm ?? spindle, findings: [] };
  const sections: Section[] = [
    { id: 'owner', title: 'In short', blocks: [{ kind: 'list', ordered: false, items: decision.forOwner }] },
    ...(diagnosis === undefined ? [] : diagnosisSections(job, diagnosis)),
    ...buySection(job, diagnosis, records, { seat: pair?.state === 'does-not-fit', bolt: problems }),
    ...(asksForPair ? mateSection(job, mate) : []),
    ...candidatesSection(candidates),
    ...(leftAlone ? [] : [...fastenSections(part, spindle, mode, job.spline?.forceToStopN), ...holdsSection(part)]),
    ...(findings.length === 0
      ? []
      : [{ id: 'findings', title: 'What else there is to know', blocks: [{ kind: 'findings' as const, findings }] }]),
    {
      id: 'not-here',
      title: 'What does not apply here, or was not worked',
      blocks: [{ kind: 'list', ordered: false, items: part.notHere.map(({ what, why }) => `${what}: ${why}.`) }],
    },
    { id: 'cautions', title: 'Cautions', blocks: [{ kind: 'list', ordered: false, items: cautions }] },
  ];
  const friction = {
    lubricated: jobDefaults.lubricatedThread,
    dry: jobDefaults.dryThread,
    unknown: jobDefaults.unknownThread,
  };
  const taken = leftAlone
    ? []
    : [
        ...(plan.preloadN === undefined
          ? []
          : [{ words: `friction of thread and head, ${plan.lubrication}`, datum: friction[plan.lubrication] }]),
        ...mechanics.taken,
      ];
  const sources = [
    ...sourcesOf(
      sections,
      findings,
      taken.map(({ datum }) => datum),
      [],
    ),
    ...(mate?.sources ?? []),
    ...candidates.flatMap((candidate) => candidate.mate?.sources ?? []),
    ...plan.tradeTorques.flatMap((row) => row.sources),
  ];
  const provenance = provenanceWith(sources);
  return {
    ...sheetHead(job, decision, diagnosis),
    joint: part,
    candidates,
    findings,
    cautions,
    sections: [...sections, groundsSection(taken, undefined, provenance)],
    provenance,
  };
}

/** Actions that do not touch the joint of the arm. */
const LEFT_ALONE: readonly unknown[] = ['ride', 'look-elsewhere'];

/** Actions after which another part meets the one that stays. */
const REPLACES_A_PART: readonly unknown[] = ['replace-arm', 'replace-spindle', 'replace-both', 'fit-matching-part'];

/** Codes that every sheet says in its cautions, or in the steps of its plan. */
const SAID = ['joint-instructions-first', 'safety-catch'];

/** The standing cautions, in the words of the joint. */
function cautionsFor(by: JointPart['fastening']['by'], family: InterfaceRecord['family']): string[] {
  const bolt = family === 'square-taper' ? 'bolt or nut' : 'bolt';
  const fixing = {
    'pinch-bolts':
      'Never ride without the fixing bolts at their torque, however well the arm sits: the cap holds nothing.',
    'centre-bolt-or-nut': `Never ride without the fixing ${bolt}, however tight the arm feels.`,
    cotters: 'Never ride without the fixing nut of the cotter, and never trust the nut alone: the wedge holds the arm.',
    none: 'Never ride without the fixing of the bearings: cone and lock nut keep the crank in its shell.',
  };
  return standingCautions(
    fixing[by],
    'A crank with a crack, a worn joint or play is not to be ridden, whatever the figures say.',
  );
}
