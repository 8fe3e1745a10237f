import {
  type CheckDescription,
  diagnose,
  type JointId,
  listActions,
  listChecks,
  listConditions,
  listJoints,
  type Measurements,
  type Observations,
  outlook,
} from '@spindlewright/diagnosis';
import { messages as words } from '@spindlewright/diagnosis/messages/en';
import {
  type Bench,
  type BenchContext,
  type Block,
  type Group,
  numberOf,
  option,
  type State,
  sorted,
} from './bench.ts';

/** Readings that a bench page takes; each with the uncertainty of the tool that a shop has. */
const READINGS = [
  { key: 'endGapMm', label: 'End gap, arm as found', quantity: 'length', u: 0.1 },
  { key: 'shoulderGapMm', label: 'Shoulder gap, arm as found', quantity: 'length', u: 0.1 },
  { key: 'playAngleDeg', label: 'Free rotation of the arm', quantity: 'angle', u: 0.2 },
  { key: 'runoutMm', label: 'Run-out of the spindle end, total', quantity: 'length', u: 0.05 },
] as const;

const checks = listChecks();

const defaults: State = {
  joint: 'square-taper-jis',
  side: 'non-drive',
  ...Object.fromEntries(checks.map(({ id }) => [id, ''])),
  ...Object.fromEntries(READINGS.map(({ key }) => [key, ''])),
};

const jointOf = (state: State): JointId =>
  (listJoints().find(({ id, modelled }) => modelled && id === state.joint)?.id ?? 'square-taper-jis') as JointId;

const ACCESS: readonly [CheckDescription['access'], string][] = [
  ['any', 'At any time'],
  ['assembled', 'Before touching the bolt'],
  ['tightening', 'By tightening'],
  ['bolt-out', 'With the bolt out'],
  ['arm-off', 'With the arm off'],
];

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

function measurementsOf(state: State): Measurements {
  return Object.fromEntries(
    READINGS.flatMap(({ key, u }) => {
      const value = numberOf(state, key);
      return value === undefined ? [] : [[key, { value, standardUncertainty: u }]];
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
  return [
    {
      title: 'The joint',
      fields: [
        {
          key: 'joint',
          label: 'Interface',
          type: 'choice',
          options: listJoints()
            .filter(({ modelled }) => modelled)
            .map(({ id }) => option(id, id.replaceAll('-', ' '))),
        },
        {
          key: 'side',
          label: 'Side',
          type: 'radios',
          options: [option('non-drive', 'left, without chainrings'), option('drive', 'right, with chainrings')],
        },
      ],
    },
    ...ACCESS.flatMap(([access, title]): Group[] => {
      const here = known.filter((check) => check.access === access);
      if (here.length === 0) return [];
      return [
        {
          title,
          fields: here.map((check) => ({
            key: check.id,
            label: check.question,
            type: 'choice' as const,
            options: [option('', 'not looked yet'), ...check.outcomes.map(({ id, text }) => option(id, text))],
            next: check.id === asked,
          })),
        },
      ];
    }),
    {
      title: 'Measured',
      note: 'Each counts with the uncertainty of a depth rod or a dial gauge; empty = not measured.',
      folded: true,
      fields: READINGS.map(({ key, label, quantity }) => ({ key, label, type: 'number' as const, quantity })),
    },
  ];
}

const percent = (share: number): string => (share < 0.005 ? 'under 1 %' : `${Math.round(100 * share)} %`);
const text = (code: string): string => words[code] ?? code;

/** What each answer to a check would do. */
function outlookOf(state: State, check: CheckDescription): Block {
  const answers = outlook(inputOf(state)).find((entry) => entry.check === check.id)?.answers ?? [];
  const rows = answers.map((then) => [
    check.outcomes.find(({ id }) => id === then.outcome)?.text ?? then.outcome,
    `${text(`condition-${then.condition}`)}, ${percent(then.probability)}`,
    then.changesAction ? text(`action-${then.action}`) : 'no other action',
  ]);
  return {
    kind: 'table',
    title: `What each answer would do: ${check.question}`,
    head: ['answer', 'then most likely', 'and then'],
    rows,
  };
}

function answer({ state }: BenchContext): readonly Block[] {
  const result = diagnose(inputOf(state));
  const named = new Map(listConditions().map(({ id, text: name }) => [id as string, name]));
  const action = listActions().find(({ id }) => id === result.action);
  const answered = Object.keys(inputOf(state).observations).length + Object.keys(measurementsOf(state)).length;
  const [next] = result.nextChecks;
  const check = checks.find(({ id }) => id === next?.check);
  return [
    {
      kind: 'headline',
      tone: answered === 0 ? 'plain' : result.doNotRide ? 'stop' : 'good',
      text:
        answered === 0
          ? 'Nothing answered yet'
          : `${sentence(action?.text ?? result.action)}${result.doNotRide ? '. Do not ride until then' : ''}`,
      detail:
        answered === 0
          ? 'Below is what is common before anybody has looked. Begin with the marked question.'
          : 'By what was answered so far; weights are judgement, written down in the data and open to dispute.',
    },
    {
      kind: 'bars',
      title: 'What it is',
      rows: result.conditions
        .filter(({ probability }, index) => index < 3 || probability >= 0.02)
        .map(({ id, probability }) => ({ label: named.get(id) ?? id, share: probability, text: percent(probability) })),
    },
    {
      kind: 'bars',
      title: 'What may hold beside it',
      rows: result.besides.map(({ id, probability }) => ({
        label: named.get(id) ?? id,
        share: probability,
        text: percent(probability),
      })),
    },
    ...(answered === 0
      ? []
      : [
          {
            kind: 'bars' as const,
            title: 'How it came about',
            rows: result.causes
              .filter(({ probability }, index) => index < 2 || probability >= 0.05)
              .map(({ id, probability }) => ({
                label: text(`cause-${id}`),
                share: probability,
                text: percent(probability),
              })),
          },
        ]),
    ...(check === undefined
      ? [{ kind: 'text' as const, text: 'No further check would change what to do.' }]
      : [outlookOf(state, check)]),
    ...(result.nextChecks.length > 1
      ? [
          {
            kind: 'table' as const,
            title: 'Worth looking at next',
            note: 'Gain is what the look is expected to save, in minutes of workshop time.',
            head: ['check', 'gain', 'takes'],
            rows: result.nextChecks.map(({ check: id, gain, minutes }) => [
              text(`check-${id}`),
              `${gain.toFixed(1)} min`,
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
            title: 'What speaks for and against the first',
            head: ['seen', 'weight'],
            rows: result.evidence.map(({ check: id, outcomes, weight, logOddsRatio }) => [
              outcomes.map((outcome) => text(`outcome-${id}-${outcome}`)).join('; '),
              `${weight.replaceAll('-', ' ')} (odds × ${Math.exp(logOddsRatio).toPrecision(2)})`,
            ]),
          },
        ]),
    {
      kind: 'findings',
      // Before anything was told there is nothing to warn of but what always holds.
      findings: sorted([...result.contradictions, ...result.cautions, ...result.findings]).filter(
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
    {
      kind: 'actions',
      actions: [{ label: 'clear all answers', set: { ...defaults, joint: state.joint ?? '', side: state.side ?? '' } }],
    },
  ];
}

/** What was answered goes on to the sheet. */
function jobSearch(state: State): string {
  const told = Object.entries(observationsOf(state)).map(([id, answer]) => [id, String(answer)]);
  const { joint = '', side = '' } = state;
  return `?${new URLSearchParams([['from', 'empty'], ['joint', joint], ['side', side], ...told])}`;
}

const sentence = (phrase: string): string => phrase.charAt(0).toUpperCase() + phrase.slice(1);

export const diagnosisBench: Bench = { defaults, groups, answer };
