import type { Finding, Limits } from '@spindlewright/quantity';
import type { FitState } from '../sheet.ts';
import type { Need } from './need.ts';
import type { Facts, PartField, PartKind, WordField } from './part.ts';

/** Codes of the reasons that screening gives itself; those of the records come beside them. @internal */
export type StepCode =
  | 'another-kind'
  | 'fact-missing'
  | 'value-suspicious'
  | 'value-out-of-range'
  | 'word-not-mapped'
  | 'facts-contradict'
  | 'several-values'
  | 'another-side'
  | 'another-arm-length'
  | 'another-bolt-circle'
  | 'same-bolt-circle'
  | 'ring-too-small';

/** What two records come to. @internal */
export interface MateEntry {
  state: FitState;
  /** The fact that decides, when the state is `cannot-tell`. */
  missingFact?: string;
  /** Codes of its reasons, the deciding one first. */
  codes: readonly string[];
  /** The same in words, where they are at hand. */
  findings?: readonly Finding[];
  /** How far the arm sits from where its own spindle would hold it, mm, positive toward the frame. */
  shiftMm?: Limits;
}

/** What is asked of the records. @internal */
export type MateQuestion = 'joint' | 'thread' | 'fixing' | 'puller' | 'shell' | 'left-thread' | 'right-thread';

/** Says what two records come to; undefined for a pair that is not known. @internal */
export type MateLookup = (question: MateQuestion, part: string, need: string) => MateEntry | undefined;

/** A bolt circle in numbers. @internal */
export interface Circle {
  boltCircleMm: number;
  boltCount: number;
  smallestRing: number;
}

/** One step of a decision. @internal */
export type Step =
  | { state: FitState; mate: MateEntry; missingFact?: string }
  | { state: FitState; code: StepCode; missingFact?: string; values: Readonly<Record<string, number | string>> };

/** A decision with its steps; the first step of the deciding state is the reason. @internal */
export interface Decided {
  state: FitState;
  steps: readonly Step[];
  missingFact?: string;
  shiftMm?: Limits;
}

/** Arm lengths and bolt circles closer than this, in mm, are one size in print; judgement. */
const SAME_LENGTH_MM = 0.6;

/**
 * Decides by facts alone, in the order in which a shop would ask; one fact that rules the part out outweighs any that is
 * missing. @internal
 */
export function decideFacts(need: Need, facts: Facts, lookup: MateLookup, circle: Circle | undefined): Decided {
  const kind = single(facts, 'kind');
  if (typeof kind !== 'string') return settle([kind]);
  if (kind !== need.for) {
    return settle([{ state: 'does-not-fit', code: 'another-kind', values: { kind, wanted: need.for } }]);
  }
  return settle(STEPS[need.for](need, facts, lookup, circle));
}

const STEPS: Readonly<
  Record<PartKind, (need: Need, facts: Facts, lookup: MateLookup, circle: Circle | undefined) => Step[]>
> = {
  arm: (need, facts, lookup) => [
    mateStep(facts, 'interface', 'joint', need.interface, lookup),
    ...sideStep(need, facts),
    ...lengthStep(need, facts),
  ],
  spindle: (need, facts, lookup) => [
    mateStep(facts, 'interface', 'joint', need.interface, lookup),
    ...(need.shell === undefined ? [] : [mateStep(facts, 'shell', 'shell', need.shell, lookup)]),
  ],
  bolt: (need, facts, lookup) => [
    need.thread === undefined
      ? mateStep(facts, 'thread', 'fixing', need.interface, lookup)
      : mateStep(facts, 'thread', 'thread', need.thread, lookup),
  ],
  puller: (need, facts, lookup) => [
    need.thread === undefined
      ? mateStep(facts, 'thread', 'puller', need.interface, lookup)
      : mateStep(facts, 'thread', 'thread', need.thread, lookup),
  ],
  pedals: (need, facts, lookup) => [
    mateStep(facts, 'thread', need.side === undefined ? 'thread' : SIDED[need.side], need.thread, lookup),
    ...sideStep(need, facts),
  ],
  chainring: (_need, facts, _lookup, circle) =>
    circle === undefined
      ? [{ state: 'cannot-tell', code: 'fact-missing', missingFact: 'need', values: { fact: 'boltCircle' } }]
      : circleSteps(facts, circle),
};

const SIDED = { drive: 'right-thread', 'non-drive': 'left-thread' } as const;

function settle(steps: readonly Step[]): Decided {
  let state: FitState = 'fits';
  for (const step of steps) {
    if (step.state === 'does-not-fit') {
      state = step.state;
      break;
    }
    if (step.state === 'cannot-tell') state = step.state;
  }
  let missing: string | undefined;
  let shiftMm: Limits | undefined;
  for (const step of steps) {
    if (state === 'cannot-tell' && step.state === state) missing ??= step.missingFact;
    if ('mate' in step) shiftMm ??= step.mate.shiftMm;
  }
  return {
    state,
    // What decides comes first.
    steps:
      steps.length < 2
        ? steps
        : [...steps.filter((step) => step.state === state), ...steps.filter((step) => step.state !== state)],
    ...(missing === undefined ? {} : { missingFact: missing }),
    ...(shiftMm === undefined ? {} : { shiftMm }),
  };
}

/** A step that cannot be decided because a fact is missing, was not used, or was given twice. */
function open(facts: Facts, field: PartField): Step {
  const doubt = facts.doubts[field];
  return doubt === undefined
    ? { state: 'cannot-tell', code: 'fact-missing', missingFact: field, values: { fact: field } }
    : {
        state: 'cannot-tell',
        code: doubt.code,
        missingFact: field,
        values: { fact: field, received: doubt.received },
      };
}

function single(facts: Facts, field: WordField): string | Step {
  const [first, ...rest] = facts.words[field] ?? [];
  return first === undefined || rest.length > 0 ? open(facts, field) : first;
}

function mateStep(
  facts: Facts,
  field: WordField,
  question: MateQuestion,
  need: string | undefined,
  lookup: MateLookup,
): Step {
  const given = facts.words[field] ?? [];
  const [id] = given;
  if (id === undefined) return open(facts, field);
  const ask = (one: string): MateEntry | undefined => (need === undefined ? undefined : lookup(question, one, need));
  const first = ask(id);
  if (first === undefined) {
    const values = { fact: field, received: given.join(', ') };
    return { state: 'cannot-tell', code: 'word-not-mapped', missingFact: field, values };
  }
  // Of several ids that a row leaves open, the answer stands only where it is the same for all.
  if (given.length > 1 && given.some((one) => ask(one)?.state !== first.state)) {
    const code = facts.doubts[field]?.code === 'facts-contradict' ? 'facts-contradict' : 'several-values';
    const values = { fact: field, received: given.join(', ') };
    return { state: 'cannot-tell', code, missingFact: field, values };
  }
  return {
    state: first.state,
    mate: first,
    ...(first.missingFact === undefined ? {} : { missingFact: first.missingFact }),
  };
}

function sideStep(need: Need, facts: Facts): Step[] {
  if (need.side === undefined) return [];
  const side = single(facts, 'side');
  if (typeof side !== 'string') return [side];
  if (side === need.side || side === 'pair') return [];
  return [{ state: 'does-not-fit', code: 'another-side', values: { side, wanted: need.side } }];
}

function lengthStep({ armLengthMm: wantedMm }: Need, facts: Facts): Step[] {
  if (wantedMm === undefined) return [];
  const { armLengthMm } = facts.numbers;
  if (armLengthMm === undefined) return [open(facts, 'armLengthMm')];
  if (Math.abs(armLengthMm - wantedMm) <= SAME_LENGTH_MM) return [];
  return [{ state: 'does-not-fit', code: 'another-arm-length', values: { armLengthMm, wantedMm } }];
}

function circleSteps(facts: Facts, circle: Circle): Step[] {
  const { boltCircleMm, boltCount, toothCount } = facts.numbers;
  const { boltCircleMm: wantedMm, boltCount: wantedCount, smallestRing } = circle;
  const apart =
    (boltCircleMm !== undefined && Math.abs(boltCircleMm - wantedMm) > SAME_LENGTH_MM) ||
    (boltCount !== undefined && boltCount !== wantedCount);
  if (apart) {
    const received = `${boltCircleMm ?? '?'} mm x ${boltCount ?? '?'}`;
    return [{ state: 'does-not-fit', code: 'another-bolt-circle', values: { received, wantedMm, wantedCount } }];
  }
  const steps: Step[] = [];
  if (boltCircleMm === undefined) steps.push(open(facts, 'boltCircleMm'));
  if (boltCount === undefined) steps.push(open(facts, 'boltCount'));
  if (steps.length === 0) steps.push({ state: 'fits', code: 'same-bolt-circle', values: { wantedMm, wantedCount } });
  if (toothCount !== undefined && toothCount < smallestRing) {
    steps.push({ state: 'does-not-fit', code: 'ring-too-small', values: { toothCount, smallestRing } });
  }
  return steps;
}
