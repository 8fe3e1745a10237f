import type { ActionId, Diagnosis } from '@spindlewright/diagnosis';
import type { JudgedCandidate } from './candidates.ts';
import { candidatesDecision } from './decide-candidates.ts';
import type { SeatDecision } from './decide-seat.ts';
import { jobDefaults } from './defaults.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job } from './job.ts';
import { jointProblem } from './joint-problem.ts';
import { jointWords } from './joint-words.ts';
import type { Problem } from './problem.ts';
import type { FitState } from './sheet.ts';
import { STATE_WORDS } from './sheet.ts';
import { type FixingFacts, tighteningProblems, torqueIsDoubted } from './tightening-problems.ts';

/** The answer of a whole job. */
export interface JobDecision {
  state: FitState;
  missingFact?: string;
  doNotRide: boolean;
  answer: string;
  headline: string;
  forOwner: readonly string[];
}

/** What a job knows when it is decided. */
interface Known {
  job: Job;
  diagnosis: DiagnosisPart | undefined;
  seat: SeatDecision | undefined;
  tightening: FixingFacts;
  candidates: readonly JudgedCandidate[];
}

/** Actions after which the arm or spindle at hand is not used again. */
const CONDEMNING: readonly ActionId[] = ['replace-arm', 'replace-spindle', 'replace-both', 'fit-matching-part'];

/** Stops that say nothing against the parts: a stronger bolt, a catch let in, an arm drawn home, a cotter turned round. */
const MENDED_WITHOUT_PARTS: readonly string[] = [
  'bolt-class-too-weak',
  'safety-catch-open',
  'arm-not-home',
  'cotters-same-way-round',
  'cotters-one-way-round',
  'face-teeth-open',
];

/** Actions on what both ends have in common. */
const SHARED_ACTIONS: readonly ActionId[] = ['service-bearing', 'look-elsewhere'];

/** Joins diagnosis, both sides, seat, bolt and candidates into one answer: the gravest leads, none is left out. @internal */
export function decideJob(known: Known): JobDecision {
  const { diagnosis, seat, tightening } = known;
  const state = stateOf(known);
  const joint = diagnosis === undefined ? undefined : jointProblem(diagnosis.result);
  const otherSide = otherSideProblems(known);
  const own = joint?.grave ? [joint.problem] : [];
  const otherFirst = diagnosis?.comparison !== undefined && diagnosis.comparison.firstSide !== known.job.side;
  const problems = [
    ...(otherFirst ? [...otherSide, ...own] : [...own, ...otherSide]),
    ...tighteningProblems(tightening),
    ...(seat === undefined || seat.state === 'fits' ? [] : [seat.problem]),
  ];
  const doNotRide =
    diagnosis?.result.doNotRide === true ||
    diagnosis?.comparison?.doNotRide === true ||
    problems.length > 0 ||
    (diagnosis === undefined && seat === undefined);
  const missing = state === 'cannot-tell' ? missingOf(known) : undefined;
  const rideAnyway = diagnosis?.result.action === 'ride';
  const calm = joint === undefined || joint.grave || (doNotRide && rideAnyway) ? [] : [joint.problem.headline];
  const fallback = seat === undefined ? candidatesDecision(known.candidates) : undefined;
  const said = [...problems.map(({ headline }) => headline), ...calm];
  if (said.length === 0) said.push(fallback?.headline ?? seat?.headline ?? '');
  if (doNotRide && !said.some((line) => /not ride|not to be ridden/i.test(line))) {
    said.push(
      diagnosis === undefined && seat === undefined
        ? 'Not to be ridden until an arm is pressed on and checked.'
        : 'Not to be ridden until this is done and checked.',
    );
  }
  if (!doNotRide && diagnosis !== undefined) said.push('Nothing that was told speaks against riding.');
  return {
    state,
    ...(missing === undefined ? {} : { missingFact: missing }),
    doNotRide,
    answer: answerOf(known, state, doNotRide),
    headline: said.join(' '),
    forOwner: ownerWords(known, problems, joint?.problem, doNotRide) ?? fallback?.forOwner ?? seat?.forOwner ?? [],
  };
}

function stateOf({ diagnosis, seat, tightening, candidates }: Known): FitState {
  const action = diagnosis?.result.action;
  const boltStop = tightening.findings.some(
    ({ severity, code }) => severity === 'stop' && !MENDED_WITHOUT_PARTS.includes(code),
  );
  if (boltStop || seat?.state === 'does-not-fit') return 'does-not-fit';
  if (action !== undefined && CONDEMNING.includes(action)) return 'does-not-fit';
  if (seat === undefined) return diagnosis === undefined ? candidatesState(candidates) : 'cannot-tell';
  const open = action === 'remove-and-inspect' || torqueIsDoubted(tightening);
  return open || seat.state === 'cannot-tell' || tightening.fixing?.state === 'cannot-tell' ? 'cannot-tell' : 'fits';
}

function missingOf({ seat, tightening, candidates }: Known): string | undefined {
  if (torqueIsDoubted(tightening)) return 'partMakerTorqueNm';
  if (seat?.missingFact !== undefined) return seat.missingFact;
  const { fixing } = tightening;
  if (fixing?.state === 'cannot-tell' && fixing.missing !== null) return `fixing.${fixing.missing}`;
  if (seat !== undefined) return undefined;
  const open = candidates.findIndex(({ missingFact }) => missingFact !== undefined);
  return open < 0 ? 'trialFit.endGapMm' : `candidates[${open}].${candidates[open]?.missingFact}`;
}

/** What the candidates come to together: one that fits is enough. */
function candidatesState(candidates: readonly JudgedCandidate[]): FitState {
  if (candidates.some(({ state }) => state === 'fits')) return 'fits';
  return candidates.length > 0 && candidates.every(({ state }) => state === 'does-not-fit')
    ? 'does-not-fit'
    : 'cannot-tell';
}

function answerOf({ diagnosis, seat, tightening }: Known, state: FitState, doNotRide: boolean): string {
  const partsFail = seat?.state === 'does-not-fit' || tightening.fixing?.state === 'does-not-fit';
  if (partsFail) return STATE_WORDS['does-not-fit'];
  if (diagnosis?.result.doNotRide === true) return 'Do not ride yet';
  if (seat?.state === 'cannot-tell') return STATE_WORDS['cannot-tell'];
  if (diagnosis !== undefined) return doNotRide ? 'Do not ride yet' : 'May be ridden';
  return state === 'fits' && doNotRide && seat !== undefined ? 'Do not ride yet' : STATE_WORDS[state];
}

function otherSideProblems({ job, diagnosis }: Known): Problem[] {
  const comparison = diagnosis?.comparison;
  if (comparison === undefined) return [];
  const other = job.side === 'drive' ? 'non-drive' : 'drive';
  const result = other === 'drive' ? comparison.drive : comparison.nonDrive;
  // A bearing or a noise belongs to both ends and is told once, with this side.
  const shared = result.action === diagnosis?.result.action && SHARED_ACTIONS.includes(result.action);
  if (!result.doNotRide || shared) return [];
  const { problem } = jointProblem(result);
  return [
    {
      headline: `On the ${other} side, which was only compared: ${lowered(problem.headline)}`,
      owner: `On the other (${other}) side: ${lowered(problem.owner)}`,
      remedy: problem.remedy,
    },
  ];
}

function ownerWords(
  { diagnosis }: Known,
  problems: readonly Problem[],
  joint: Problem | undefined,
  doNotRide: boolean,
): string[] | undefined {
  const condition = diagnosis?.result.conditions[0]?.id;
  const told = problems.filter(({ sameAs }) => sameAs === undefined || sameAs !== condition);
  const [first, second] = told;
  if (first !== undefined && second !== undefined) {
    const more =
      told.length > 2
        ? ` There ${told.length === 3 ? 'is one more thing' : `are ${told.length - 2} more things`}.`
        : '';
    return [
      first.owner,
      `Beside that: ${lowered(second.owner)}${more}`,
      'All of it is put right before the bike is ridden.',
    ];
  }
  const only = first ?? joint;
  if (only === undefined) return undefined;
  const ride = doNotRide ? 'until that is done the bike is not to be ridden' : 'the bike may be ridden';
  const cause = only === joint && diagnosis !== undefined ? causeWords(diagnosis.result, doNotRide) : [];
  return [only.owner, `${only.remedy}; ${ride}.`, ...cause];
}

function causeWords(result: Diagnosis, doNotRide: boolean): string[] {
  const [cause] = result.causes;
  if (cause === undefined) return [];
  if (cause.id === 'none') {
    const sure = !doNotRide && cause.probability >= jobDefaults.plainStatement.value;
    return sure ? ['Nothing points to a fault of parts or fitting.'] : [];
  }
  return cause.probability >= jobDefaults.worthNamingCause.value
    ? [`How it came about, most likely: ${jointWords(result.joint)[`cause-${cause.id}`]}.`]
    : ['How it came about cannot be told from what was found.'];
}

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
