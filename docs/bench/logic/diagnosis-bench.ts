import {
  type CheckDescription,
  diagnose,
  type EvidenceWeight,
  type JointId,
  listChecks,
  listJoints,
  type Measurements,
  type Observations,
  outlook,
} from '@spindlewright/diagnosis';
import { getInterface } from '@spindlewright/interfaces';
import { type Finding, formatFinding, type Messages } from '@spindlewright/quantity';
import { jointWords } from '../../../packages/spindlewright/src/joint-words.ts';
import { recordWords } from '../../../packages/spindlewright/src/seat-words.ts';
import { type Bench, type BenchContext, type Block, type Group, option, type State, sorted } from './bench.ts';
import { type Fault, faultsOf, quoted, refused } from './faults.ts';
import { show, type UnitSystem } from './units.ts';

/**
 * Readings that a bench page takes; each with the uncertainty of the tool that a shop has, and from where to where the
 * library takes it.
 */
const READINGS = [
  { key: 'endGapMm', label: 'End gap, arm as found', quantity: 'length', u: 0.1, min: -20, max: 40 },
  { key: 'shoulderGapMm', label: 'Shoulder gap, arm as found', quantity: 'length', u: 0.1, min: -5, max: 40 },
  { key: 'playAngleDeg', label: 'Free rotation of the arm', quantity: 'angle', u: 0.2, min: 0, max: 45 },
  { key: 'runoutMm', label: 'Run-out of the spindle end, total', quantity: 'length', u: 0.05, min: 0, max: 30 },
] as const;

const checks = listChecks();
const joints = listJoints().filter(({ modelled }) => modelled);

const defaults: State = {
  joint: 'square-taper-jis',
  side: 'non-drive',
  ...Object.fromEntries(checks.map(({ id }) => [id, ''])),
  ...Object.fromEntries(READINGS.map(({ key }) => [key, ''])),
};

const jointOf = (state: State): JointId =>
  (joints.find(({ id }) => id === state.joint)?.id ?? 'square-taper-jis') as JointId;

const jointName = (id: string): string =>
  id === 'square-taper' ? 'Square taper, its standard not known' : (recordWords[id] ?? getInterface(id as never).title);

/** When a check can be made; the others by the words of the joint, since a cotter is no bolt. */
const ACCESS: Readonly<Record<CheckDescription['access'], string | undefined>> = {
  any: 'at any time',
  assembled: 'before anything is loosened',
  tightening: undefined,
  'bolt-out': undefined,
  'arm-off': undefined,
};

/** What was answered; an answer that the joint does not know is left out. */
function observationsOf(state: State): Observations {
  const known = listChecks(jointOf(state));
  return Object.fromEntries(
    known.flatMap(({ id, outcomes, several }) => {
      const answer = state[id];
      if (!answer || !outcomes.some((outcome) => outcome.id === answer)) return [];
      return [[id, several ? [answer] : answer]];
    }),
  ) as Observations;
}

/** What was measured; a number that cannot be is left out here and named in the answer. */
function measurementsOf(state: State): Measurements {
  return Object.fromEntries(
    READINGS.flatMap(({ key, u, min, max }) => {
      const value = state[key] ? Number(state[key]) : Number.NaN;
      return value >= min && value <= max ? [[key, { value, standardUncertainty: u }]] : [];
    }),
  );
}

const inputOf = (state: State) => ({
  joint: jointOf(state),
  side: state.side === 'drive' ? ('drive' as const) : ('non-drive' as const),
  observations: observationsOf(state),
  measurements: measurementsOf(state),
});

function groups({ state }: BenchContext): readonly Group[] {
  const joint = jointOf(state);
  const asked = diagnose(inputOf(state)).nextChecks[0]?.check;
  const known = listChecks(joint);
  const say = wordsOf(joint);
  return [
    {
      title: 'The joint',
      fields: [
        {
          key: 'joint',
          label: 'Interface',
          type: 'choice',
          options: joints.map(({ id }) => option(id, jointName(id))),
        },
        {
          key: 'side',
          label: 'Side',
          type: 'radios',
          options: [option('non-drive', 'left, without chainrings'), option('drive', 'right, with chainrings')],
        },
      ],
    },
    ...(Object.keys(ACCESS) as (keyof typeof ACCESS)[]).flatMap((access): Group[] => {
      const here = known.filter((check) => check.access === access);
      if (here.length === 0) return [];
      return [
        {
          title: sentence(ACCESS[access] ?? say(`access-${access}`)),
          fields: here.map(({ id, outcomes }) => ({
            key: id,
            label: say(`check-${id}`),
            type: 'choice' as const,
            options: [
              option('', 'not looked yet'),
              ...outcomes.map((outcome) => option(outcome.id, say(`outcome-${id}-${outcome.id}`))),
            ],
            next: id === asked,
          })),
        },
      ];
    }),
    {
      title: 'Measured',
      note: 'Each counts with the uncertainty of a depth rod or a dial gauge; empty = not measured.',
      folded: READINGS.every(({ key }) => !state[key]),
      fields: READINGS.map(({ key, label, quantity, min, max }) => ({
        key,
        label,
        type: 'number' as const,
        quantity,
        min,
        max,
      })),
    },
  ];
}

/** Never none and never certain. */
const percent = (share: number): string =>
  share < 0.005 ? 'under 1 %' : share >= 0.995 ? 'over 99 %' : `${Math.round(100 * share)} %`;
const sentence = (phrase: string): string => phrase.charAt(0).toUpperCase() + phrase.slice(1);

const wordsOf = (joint: JointId): ((code: string) => string) => {
  const table = jointWords(joint);
  return (code) => table[code] ?? code;
};

/** Values of a finding that are ids or shares, in words. */
function inWords(values: Finding['values'], table: Messages): Finding['values'] {
  const text = (...codes: string[]): string | undefined => codes.map((code) => table[code]).find(Boolean);
  const { check, otherCheck } = values;
  const about: Record<string, unknown> = { outcome: check, nearest: check, otherOutcome: otherCheck };
  return Object.fromEntries(
    Object.entries(values).map(([key, value]) => {
      if (typeof value === 'number') return [key, /probability$/i.test(key) ? percent(value) : value];
      const reading = READINGS.find((entry) => entry.key === value)?.label;
      const said = text(
        `outcome-${String(about[key])}-${value}`,
        `check-${value}`,
        `action-${value}`,
        `condition-${value}`,
      );
      return [key, reading ?? said ?? value];
    }),
  );
}

/** Findings as a reader takes them: ids in words, shares in per cent. */
const worded = (findings: readonly Finding[], table: Messages): Finding[] =>
  findings.map((finding) => ({
    ...finding,
    // A question that an answer follows needs no colon of its own.
    message: sentence(formatFinding({ ...finding, values: inWords(finding.values, table) }, table)).replaceAll(
      '?: ',
      '? ',
    ),
  }));

const WEIGHTS: Readonly<Record<EvidenceWeight, string>> = {
  'strongly-for': 'strongly for it',
  for: 'for it',
  hardly: 'hardly either way',
  against: 'against it',
  'strongly-against': 'strongly against it',
};

/** What each answer to a check would do, and what is then to be done: also where that is what is to be done now. */
function outlookOf(state: State, check: CheckDescription, say: (code: string) => string): Block {
  const answers = outlook(inputOf(state)).find((entry) => entry.check === check.id)?.answers ?? [];
  const rows = answers.map(({ outcome, condition, probability, action, changesAction, doNotRide }) => {
    const todo = action === 'ride' ? 'it may be ridden' : say(`action-${action}`);
    return [
      say(`outcome-${check.id}-${outcome}`),
      `${sentence(`${changesAction ? '' : 'still: '}${todo}${doNotRide ? '; do not ride' : ''}`)}. Most likely then: ${say(`condition-${condition}`)}, ${percent(probability)}`,
    ];
  });
  return {
    kind: 'table',
    title: `What each answer would do: ${say(`check-${check.id}`)}`,
    ...(answers.some(({ changesAction }) => changesAction)
      ? {}
      : { note: 'No answer changes at once what to do; this look brings the decision nearer.' }),
    head: ['answer', 'what to do then'],
    rows,
  };
}

/** Minutes saved for each minute spent: as many figures as tell one row from the next. */
const rate = (minutes: number): string =>
  minutes < 0.01 ? 'under 0.01 min' : `${minutes.toFixed(minutes < 1 ? 2 : minutes < 10 ? 1 : 0)} min`;

/** What was measured, as it reads in a list of what was seen. */
function readingWords(state: State, measurement: string | undefined, units: UnitSystem): string | undefined {
  const reading = READINGS.find(({ key }) => key === measurement);
  return reading && `${reading.label}: ${show(Number(state[reading.key]), reading.quantity, units)}`;
}

/** Answers kept from another joint, which has what this one has not. */
function leftOut(state: State, joint: JointId): Block[] {
  const here = listChecks(joint);
  const say = wordsOf('square-taper-jis');
  const foreign = checks.filter(({ id }) => state[id] && !here.some((check) => check.id === id));
  if (foreign.length === 0) return [];
  const named = foreign.map(({ id }) => say(`check-${id}`)).join(' ');
  return [{ kind: 'text', text: `Left out, since this joint has nothing to look at there: ${named}` }];
}

/** Checks of other joints hold nothing that this page offers, but an address may. */
function unknownAnswers(state: State, joint: JointId): Fault[] {
  const here = listChecks(joint);
  const say = wordsOf(joint);
  return checks
    .filter(({ id, outcomes }) => {
      const answer = state[id];
      return answer && !here.some((check) => check.id === id) && !outcomes.some((outcome) => outcome.id === answer);
    })
    .map(({ id }) => ({ label: say(`check-${id}`), value: `${quoted(state[id] ?? '')} is none of its answers` }));
}

function answer(context: BenchContext): readonly Block[] {
  const { state, units } = context;
  const joint = jointOf(state);
  const faults = [...faultsOf(groups(context), state, units), ...unknownAnswers(state, joint)];
  if (faults.length > 0) return [...refused(faults), clear(state)];
  const table = jointWords(joint);
  const say = wordsOf(joint);
  const result = diagnose(inputOf(state));
  const answered = Object.keys(observationsOf(state)).length + Object.keys(measurementsOf(state)).length;
  const [next] = result.nextChecks;
  const check = checks.find(({ id }) => id === next?.check);
  const bar = (kind: string) => (entry: { id: string; probability: number }) => ({
    label: say(`${kind}-${entry.id}`),
    share: entry.probability,
    text: percent(entry.probability),
  });
  return [
    headlineOf(answered, result, say),
    ...leftOut(state, joint),
    {
      kind: 'bars',
      title: 'What it is',
      rows: result.conditions
        .filter(({ probability }, index) => index < 3 || probability >= 0.02)
        .map(bar('condition')),
    },
    { kind: 'bars', title: 'What may hold beside it', rows: result.besides.map(bar('beside')) },
    ...(answered === 0
      ? []
      : [
          {
            kind: 'bars' as const,
            title: 'How it came about',
            rows: result.causes.filter(({ probability }, index) => index < 2 || probability >= 0.05).map(bar('cause')),
          },
        ]),
    ...(check === undefined
      ? [{ kind: 'text' as const, text: 'No further check would change what to do.' }]
      : [outlookOf(state, check, say)]),
    ...(result.nextChecks.length > 1
      ? [
          {
            kind: 'table' as const,
            title: 'Worth looking at, best first',
            note: 'In this order: by the minutes of workshop time that a look is expected to save for each minute it takes. A look that another one would wipe out comes before it, and then the minutes of both count.',
            head: ['look at', 'saves, for each minute', 'takes'],
            rows: result.nextChecks.map(({ check: id, gainPerMinute, minutes }, index) => [
              `${index + 1}. ${say(`check-${id}`)}${index === 0 ? ' — look here next' : ''}`,
              rate(gainPerMinute),
              `${minutes} min`,
            ]),
          },
        ]
      : []),
    ...(result.evidence.length === 0
      ? []
      : [
          {
            kind: 'table' as const,
            title: `What speaks for and against the first: ${say(`condition-${result.conditions[0]?.id}`)}`,
            head: ['seen', 'speaks'],
            rows: result.evidence.map(({ check: id, outcomes, measurement, weight, logOddsRatio }) => [
              readingWords(state, measurement, units) ??
                outcomes.map((outcome) => say(`outcome-${id}-${outcome}`)).join('; '),
              `${WEIGHTS[weight]} (odds × ${Math.exp(logOddsRatio).toPrecision(2)})`,
            ]),
          },
        ]),
    {
      kind: 'findings',
      // Before anything was told there is nothing to warn of but what always holds.
      findings: worded(sorted([...result.contradictions, ...result.cautions, ...result.findings]), table).filter(
        ({ code, severity }) => answered > 0 || severity === 'note' || code === 'caution-maker-first',
      ),
    },
    ...(answered === 0
      ? []
      : [
          {
            kind: 'links' as const,
            title: 'Next',
            links: [
              { text: 'All of it on one sheet', href: `./job.html${jobSearch(state)}` },
              { text: 'Where a new arm will seat', href: './seat.html' },
            ],
          },
        ]),
    clear(state),
  ];
}

/** What to do, and before it whether to ride: an action may speak of the rides after it. */
function headlineOf(
  answered: number,
  { action, doNotRide }: ReturnType<typeof diagnose>,
  say: (code: string) => string,
): Block {
  if (answered === 0) {
    return {
      kind: 'headline',
      tone: 'plain',
      text: 'Nothing answered yet',
      detail: 'Below is what is common before anybody has looked. Begin with the marked question.',
    };
  }
  const todo = action === 'ride' ? say('explain-may-ride').replace(/\.$/, '') : sentence(say(`action-${action}`));
  return {
    kind: 'headline',
    tone: doNotRide ? 'stop' : action === 'ride' ? 'good' : 'care',
    text: `${doNotRide ? 'Do not ride. ' : ''}${todo}`,
    detail: `${doNotRide ? 'Out of use until that is done and the joint checked. ' : ''}By what was answered so far; weights are judgement, written down in the data and open to dispute.`,
  };
}

const clear = (state: State): Block => ({
  kind: 'actions',
  actions: [{ label: 'clear all answers', set: { ...defaults, joint: jointOf(state), side: inputOf(state).side } }],
});

/** What was answered goes on to the sheet. */
function jobSearch(state: State): string {
  const told = Object.entries(observationsOf(state)).map(([id, answer]) => [id, String(answer)]);
  const { joint = '', side = '' } = state;
  return `?${new URLSearchParams([['from', 'empty'], ['joint', joint], ['side', side], ...told])}`;
}

export const diagnosisBench: Bench = { defaults, groups, answer };
