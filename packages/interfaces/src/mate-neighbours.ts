import { makeFinding } from './make-finding.ts';
import { type Decision, decisionOfRule, sourcesIn, worstOf } from './mate-decision.ts';
import { mateAnyThread, mateThreads } from './mate-threads.ts';
import { matingData } from './mating.generated.ts';
import type {
  BoltCircleRecord,
  FixingRecord,
  NeighbourRecord,
  PullerThreadRecord,
  ShellBoreRecord,
  SidedThreads,
} from './neighbour.ts';
import type { InterfaceRecord, ThreadRecord } from './record.ts';

/** Side of the bicycle. @internal */
export type Side = 'left' | 'right';

/** Whether two parts beside the joint go together. @internal */
export function mateNeighbours(
  male: NeighbourRecord,
  female: NeighbourRecord,
  sides: { male: Side; female: Side } | undefined,
): Decision {
  const rule = [...male.mating, ...female.mating].find((one) => one.male === male.id && one.female === female.id);
  if (rule !== undefined) return decisionOfRule(rule);
  if (male.kind === 'shell-thread' && female.kind === 'shell-thread') {
    const decision = mateSides(male.threads, female.threads, sides);
    return decision.verdict === 'mates' ? withNote(decision, makeFinding('width-decides', 'caution')) : decision;
  }
  if (male.kind === 'pedal-thread' && female.kind === 'pedal-thread') {
    return mateSides(male.threads, female.threads, sides);
  }
  if (male.kind === 'shell-bore' && female.kind === 'shell-bore') return mateBores(male, female);
  if (male.kind === 'bolt-circle' && female.kind === 'bolt-circle') return mateCircles(male, female);
  if (male.kind === 'puller-thread' && female.kind === 'puller-thread') return mateThreads(male.thread, female.thread);
  if (male.kind === 'fixing' && female.kind === 'fixing') return mateFixings(male, female);
  const values = { male: male.kind, female: female.kind };
  return { verdict: 'does-not-mate', findings: [makeFinding('kinds-differ', 'stop', values)] };
}

/** Whether a part beside the joint goes into the spindle or the arm of a joint. @internal */
export function mateWithJoint(male: NeighbourRecord, joint: InterfaceRecord): Decision {
  if (male.kind === 'fixing') return mateFixing(male, joint, 'internal');
  if (male.kind === 'puller-thread') return matePuller(male, joint);
  return doesNotTell(male, joint);
}

/** Whether a nut goes on the stud of a spindle; nothing else takes a spindle in. @internal */
export function mateOnStud(joint: InterfaceRecord, female: NeighbourRecord): Decision {
  return female.kind === 'fixing' ? mateFixing(female, joint, 'external') : doesNotTell(female, joint);
}

const withNote = (decision: Decision, note: Decision['findings'][0]): Decision => ({
  ...decision,
  findings: [...decision.findings, note],
});

function doesNotTell({ kind }: NeighbourRecord, { id }: InterfaceRecord): Decision {
  return { verdict: 'unknown', findings: [makeFinding('interface-does-not-tell', 'caution', { kind, joint: id })] };
}

/** Both sides with their own, or one thread with one other when the sides are named. */
function mateSides(
  male: SidedThreads,
  female: SidedThreads,
  sides: { male: Side; female: Side } | undefined,
): Decision {
  if (sides !== undefined) return mateThreads(male[sides.male], female[sides.female]);
  const [left, right] = [mateThreads(male.left, female.left), mateThreads(male.right, female.right)];
  const named = (side: Side, decision: Decision): Decision =>
    left.verdict === right.verdict
      ? decision
      : { ...decision, findings: [decision.findings[0], makeFinding('of-one-side', 'note', { side })] };
  return worstOf(named('left', left), named('right', right));
}

function mateBores(male: ShellBoreRecord, female: ShellBoreRecord): Decision {
  const sources = sourcesIn([...male.bores, ...female.bores].map(({ boreMm }) => boreMm));
  const sizes = ({ bores }: ShellBoreRecord): string => bores.map(({ boreMm }) => boreMm.value).join(', ');
  const shared = male.bores.some((one) =>
    female.bores.some((other) => Math.abs(one.boreMm.value - other.boreMm.value) <= matingData.sameBoreMm.value),
  );
  const values = { maleSizes: sizes(male), femaleSizes: sizes(female) };
  if (!shared) {
    return { verdict: 'does-not-mate', findings: [makeFinding('bores-differ', 'stop', values, sources)] };
  }
  if (male.seat !== female.seat) {
    const seats = { maleSeat: male.seat, femaleSeat: female.seat };
    return { verdict: 'does-not-mate', findings: [makeFinding('seats-differ', 'stop', seats, sources)] };
  }
  return male.id === female.id
    ? {
        verdict: 'mates',
        findings: [makeFinding('bore-agrees', 'note', values, sources), makeFinding('width-decides', 'caution')],
      }
    : { verdict: 'unknown', findings: [makeFinding('bore-agrees-only', 'caution', values, sources)] };
}

function mateCircles(male: BoltCircleRecord, female: BoltCircleRecord): Decision {
  const data = [male, female].flatMap(({ armCount, boltCircleDiameterMm }) => [armCount, boltCircleDiameterMm]);
  const values = {
    ringMm: male.boltCircleDiameterMm.value,
    ringArms: male.armCount.value,
    armMm: female.boltCircleDiameterMm.value,
    armArms: female.armCount.value,
  };
  const same = values.ringMm === values.armMm && values.ringArms === values.armArms;
  if (!same) {
    return {
      verdict: 'does-not-mate',
      findings: [makeFinding('bolt-circles-differ', 'stop', values, sourcesIn(data))],
    };
  }
  const { smallestRing } = female;
  return {
    verdict: 'mates',
    findings: [
      makeFinding(
        'bolt-circles-agree',
        'note',
        { ...values, teeth: smallestRing.value },
        sourcesIn([...data, smallestRing]),
      ),
    ],
  };
}

function mateFixings(male: FixingRecord, female: FixingRecord): Decision {
  if (male.form === female.form) return mateThreads(male.thread, female.thread);
  const values = { male: male.form, female: female.form };
  return { verdict: 'does-not-mate', findings: [makeFinding('forms-differ', 'stop', values)] };
}

/** A fixing of a joint: a bolt into the spindle or into a clamp, a nut on a stud. */
function mateFixing(fixing: FixingRecord, joint: InterfaceRecord, member: 'internal' | 'external'): Decision {
  if (fixing.form === 'chainring-bolt') return doesNotTell(fixing, joint);
  if (fixing.form === formOf(joint, member)) {
    const rated = joint.fixingThreads
      .filter((thread) => thread.member === member)
      .map((thread) => ({
        thread,
        decision: member === 'internal' ? mateThreads(fixing.thread, thread) : mateThreads(thread, fixing.thread),
      }));
    const decision = mateAnyThread(rated);
    if (decision !== undefined) return decision;
    if (joint.fixingThreads.length === 0) {
      return { verdict: 'unknown', findings: [makeFinding('fixing-thread-not-known', 'caution', { joint: joint.id })] };
    }
  }
  const values = { form: fixing.form, joint: joint.id };
  const sources = sourcesIn(joint.drawnTight.claims);
  return { verdict: 'does-not-mate', findings: [makeFinding('no-such-fixing', 'stop', values, sources)] };
}

/** The form of fixing that a joint takes in, or on its stud. */
function formOf({ drawnTight }: InterfaceRecord, member: 'internal' | 'external'): FixingRecord['form'] | undefined {
  if (drawnTight.by === 'centre-bolt-or-nut') return member === 'internal' ? 'spindle-bolt' : 'spindle-nut';
  return drawnTight.by === 'pinch-bolts' && member === 'internal' ? 'pinch-bolt' : undefined;
}

function matePuller(puller: PullerThreadRecord, joint: InterfaceRecord): Decision {
  const rated = (thread: ThreadRecord) => ({ thread, decision: mateThreads(puller.thread, thread) });
  const decision = mateAnyThread(joint.puller.threads.map(rated));
  if (decision === undefined) {
    const sources = sourcesIn(joint.puller.practice);
    const said = joint.puller.practice[0]?.statement ?? '';
    const values = { joint: joint.id, statement: said };
    return { verdict: 'does-not-mate', findings: [makeFinding('no-puller-thread', 'stop', values, sources)] };
  }
  const tips = joint.puller.tip.map(({ statement, sources }) =>
    makeFinding('puller-tip', 'note', { statement }, sources),
  );
  return { ...decision, findings: [...decision.findings, ...tips] };
}
