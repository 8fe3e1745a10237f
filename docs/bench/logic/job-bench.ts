import { listChecks, listJoints } from '@spindlewright/diagnosis';
import { readJob, renderHtml, workJob } from 'spindlewright';
import boltBottoms from '../../../examples/jobs/bolt-bottoms.json' with { type: 'json' };
import boreGone from '../../../examples/jobs/bore-gone.json' with { type: 'json' };
import goodArm from '../../../examples/jobs/good-arm.json' with { type: 'json' };
import mixedStandard from '../../../examples/jobs/mixed-standard.json' with { type: 'json' };
import { type Bench, type BenchContext, type Block, type Group, option, type State } from './bench.ts';
import { jobReadings, noReadings, readingFields, readingGroups, unreadBolt } from './readings.ts';

const EXAMPLES: Record<string, { title: string; job: object }> = {
  'bore-gone': { title: 'Moves though its bolt is tight', job: boreGone },
  'good-arm': { title: 'A sound arm', job: goodArm },
  'mixed-standard': { title: 'A mix of two squares', job: mixedStandard },
  'bolt-bottoms': { title: 'A bolt that bottoms', job: boltBottoms },
};

const checks = listChecks();

const defaults: State = {
  from: 'bore-gone',
  title: '',
  bike: '',
  date: '',
  side: '',
  joint: '',
  armJoint: '',
  ...noReadings,
  ...Object.fromEntries(checks.map(({ id }) => [id, ''])),
};

const interfaces = listJoints()
  .filter(({ modelled }) => modelled)
  .map(({ id }) => option(id, id.replaceAll('-', ' ')));

function groups({ state, file }: BenchContext): readonly Group[] {
  const { gaps, sizes, arm, bolt } = readingGroups(state);
  return [
    {
      title: 'Begin with',
      note: 'A job file stays on this device: nothing is sent anywhere.',
      fields: [
        {
          key: 'from',
          label: 'An invented example, or an empty sheet',
          type: 'choice',
          options: [
            option('empty', 'an empty sheet'),
            ...Object.entries(EXAMPLES).map(([id, { title }]) => option(id, title)),
            ...(file === undefined ? [] : [option('file', 'the file that was opened')]),
          ],
        },
        { key: 'from', label: 'or open a job file', type: 'file' },
      ],
    },
    {
      title: 'The bicycle',
      note: 'What is filled in here goes over what the example or the file says.',
      fields: [
        { key: 'title', label: 'Heading of the sheet', type: 'text' },
        { key: 'bike', label: 'Bicycle', type: 'text' },
        { key: 'date', label: 'Date', type: 'text', hint: 'as 2026-11-27' },
        {
          key: 'side',
          label: 'Side',
          type: 'choice',
          options: [
            option('', 'as the example or file says; on an empty sheet left'),
            option('non-drive', 'left'),
            option('drive', 'right'),
          ],
        },
        {
          key: 'joint',
          label: 'Interface',
          type: 'choice',
          options: [option('', 'as the example or file says; on an empty sheet a square taper'), ...interfaces],
        },
        {
          key: 'armJoint',
          label: 'Interface of the arm',
          type: 'choice',
          options: [option('', 'the same'), ...interfaces],
        },
      ],
    },
    {
      title: 'What was found',
      folded: state.from !== 'empty',
      fields: checks.map(({ id, question, outcomes }) => ({
        key: id,
        label: question,
        type: 'choice' as const,
        options: [
          option('', 'as the example or file says'),
          ...outcomes.map((outcome) => option(outcome.id, outcome.text)),
        ],
      })),
    },
    gaps,
    sizes,
    { title: 'Bolt and flats', fields: [...bolt, ...arm] },
  ];
}

type Bag = Record<string, unknown>;

/** The example or file, with what was filled in laid over it. */
function jobOf({ state, file }: BenchContext): Bag {
  const base: Bag =
    state.from === 'file' && file !== undefined
      ? parsed(file)
      : structuredClone((EXAMPLES[state.from ?? '']?.job as Bag | undefined) ?? emptyJob());
  const observations = Object.fromEntries(
    checks.flatMap(({ id, several }) => (state[id] ? [[id, several ? [state[id]] : state[id]]] : [])),
  );
  const { trialFit, spindle, arm, fixing, ...rest } = jobReadings(state);
  const joint = state.joint || state.armJoint;
  return {
    ...base,
    ...(state.title ? { title: state.title } : {}),
    ...(state.bike ? { bike: state.bike } : {}),
    ...(state.date ? { date: state.date } : {}),
    ...(state.side ? { side: state.side } : {}),
    ...(joint
      ? { interface: { spindle: interfaceOf(state.joint || joint), arm: interfaceOf(state.armJoint || joint) } }
      : {}),
    ...(Object.keys(observations).length > 0
      ? { observations: { ...(base.observations as Bag | undefined), ...observations } }
      : {}),
    ...rest,
    ...laidOver(base, { trialFit, spindle, arm }),
    ...(fixing === undefined ? {} : { fixing: { ...unreadBolt, ...(base.fixing as Bag | undefined), ...fixing } }),
  };
}

/** A square taper whose standard nobody knows is a joint for the diagnosis, but no record. */
const interfaceOf = (joint: string): string => (joint === 'square-taper' ? 'unknown' : joint);

/** Readings go field by field over those that are there. */
const laidOver = (base: Bag, readings: Bag): Bag =>
  Object.fromEntries(
    Object.entries(readings).flatMap(([key, read]) =>
      read === undefined ? [] : [[key, { ...(base[key] as Bag | undefined), ...(read as Bag) }]],
    ),
  );

const emptyJob = (): Bag => ({
  format: 'spindlewright-job-1',
  title: 'Crank arm',
  date: new Date().toISOString().slice(0, 10),
  bike: 'not named',
  side: 'non-drive',
  interface: { spindle: 'unknown', arm: 'unknown' },
});

function parsed(file: string): Bag {
  try {
    const value: unknown = JSON.parse(file);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Bag) : {};
  } catch {
    return {};
  }
}

function answer(context: BenchContext): readonly Block[] {
  const bag = jobOf(context);
  const sheet = workJob(readJob(bag));
  const name = sheet.title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40);
  return [{ kind: 'sheet', html: renderHtml(sheet), name, save: `${JSON.stringify(bag, null, 2)}\n` }];
}

export const jobBench: Bench = { defaults, fieldOf: readingFields, groups, answer };
