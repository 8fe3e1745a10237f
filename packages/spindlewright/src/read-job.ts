import {
  checkInput,
  convert,
  DomainError,
  type DomainIssue,
  isDomainError,
  parseQuantity,
} from '@spindlewright/quantity';
import { contradictions } from './contradictions.ts';
import type { Job } from './job.ts';
import { jobFields } from './job-fields.ts';
import { misplacedReadings } from './joint-kind.ts';
import { unknownNames } from './unknown-names.ts';
import { changedJob } from './what-if.ts';

/**
 * Reads a job from plain data, such as a parsed JSON file, and refuses it with every fault found.
 *
 * @remarks
 * Formula: none. A text in a field whose name ends in a unit (`endGapMm`, `partMakerTorqueNm`) is read as a number with a
 * unit and converted; then names, types, ranges and contradictions between fields are checked.
 *
 * Validity: any value. Ranges are those of bicycle cranks: across flats 8 to 25 mm, face angle 0.5 to 5 deg, torque up to
 * 120 Nm.
 *
 * Accuracy: conversions by exact factors.
 *
 * @param input - The data.
 * @returns The job, with numbers in the units of the names.
 * @throws {@link DomainError} naming the path of each fault, what came, what is allowed and the nearest name.
 * @example
 * ```ts
 * import { readJob } from 'spindlewright';
 * const job = readJob({
 *   format: 'spindlewright-job-1',
 *   title: 'Demo',
 *   date: '2026-11-25',
 *   bike: 'an invented bike',
 *   side: 'drive',
 *   interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *   trialFit: { endGapMm: '0.1 in' },
 * });
 * job.trialFit; // => { endGapMm: 2.54 }
 * ```
 * @see The project's own job form.
 */
export function readJob(input: unknown): Job {
  const issues: DomainIssue[] = [];
  const resolved = withHistoryLists(resolveUnits(input, '', issues));
  const unreadable = new Set(issues.map((issue) => issue.path));
  issues.push(...fieldIssues(resolved).filter((issue) => !unreadable.has(issue.path)));
  refuse(issues);
  const job = resolved as Job;
  refuse([...faultsOf(job), ...changeFaults(job), ...rateFaults(job)]);
  return job;
}

const faultsOf = (job: Job): DomainIssue[] => [...unknownNames(job), ...misplacedReadings(job), ...contradictions(job)];

/** What a change makes wrong that was right before, under the path of the change. */
function changeFaults(job: Job): DomainIssue[] {
  return (job.whatIf ?? []).flatMap(({ name, change }, index) => {
    const at = `whatIf[${index}]`;
    const unnamed = name.trim() === '' ? [{ path: `${at}.name`, received: '""', allowed: 'some words' }] : [];
    const empty =
      Object.keys(change).length === 0
        ? [{ path: `${at}.change`, received: 'nothing', allowed: 'a field of the job' }]
        : [];
    const faults = faultsOf(changedJob(job, change)).map((issue) => ({ ...issue, path: `${at}.change.${issue.path}` }));
    return [...unnamed, ...empty, ...faults];
  });
}

/** Amounts of two currencies are not added up. */
const rateFaults = ({ rates }: Job): DomainIssue[] =>
  (rates?.parts ?? []).flatMap(({ unit }, index) =>
    unit === rates?.unit
      ? []
      : [
          {
            path: `rates.parts[${index}].unit`,
            received: JSON.stringify(unit),
            allowed: `the currency of the rates, ${rates?.unit}`,
          },
        ],
  );

/** One answer on the history may come without a list around it. */
function withHistoryLists(input: unknown): unknown {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return input;
  const { observations, otherSide } = input as Partial<Job>;
  const listed = <T extends { history?: unknown } | undefined>(given: T): T =>
    typeof given?.history === 'string' ? { ...given, history: [given.history] } : given;
  return {
    ...input,
    ...(observations === undefined ? {} : { observations: listed(observations) }),
    ...(otherSide?.observations === undefined
      ? {}
      : { otherSide: { ...otherSide, observations: listed(otherSide.observations) } }),
  };
}

function fieldIssues(resolved: unknown): readonly DomainIssue[] {
  try {
    checkInput({ where: 'readJob', value: resolved, fields: jobFields() });
    return [];
  } catch (error) {
    if (!isDomainError(error)) throw error;
    return error.issues;
  }
}

function refuse(issues: readonly DomainIssue[]): void {
  const [first, ...rest] = issues;
  if (first !== undefined) throw new DomainError('readJob', [first, ...rest]);
}

const UNIT_OF_SUFFIX = [
  ['Mm', 'mm'],
  ['Nm', 'Nm'],
  ['Deg', 'deg'],
  ['MPa', 'MPa'],
  ['ForceN', 'N'],
  ['ToStopN', 'N'],
] as const;

/** Deeper than any job; a file nested without end would exhaust the stack. */
const DEEPEST = 20;

function resolveUnits(value: unknown, path: string, issues: DomainIssue[], depth = 0): unknown {
  if (depth > DEEPEST) {
    issues.push({ path: path.slice(0, 60), received: 'something nested too deeply', allowed: 'the fields of a job' });
    return null;
  }
  if (Array.isArray(value))
    return value.map((item, index) => resolveUnits(item, `${path}[${index}]`, issues, depth + 1));
  if (typeof value !== 'object' || value === null) return value;
  // fromEntries defines own properties, so that a key such as __proto__ stays data and is refused as unknown.
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => {
      const at = path === '' ? key : `${path}.${key}`;
      const unit = UNIT_OF_SUFFIX.find(([suffix]) => key.endsWith(suffix))?.[1];
      if (unit === undefined || typeof item !== 'string') return [key, resolveUnits(item, at, issues, depth + 1)];
      return [key, readText(item, unit, at, issues)];
    }),
  );
}

function readText(text: string, unit: 'mm' | 'Nm' | 'deg' | 'MPa' | 'N', path: string, issues: DomainIssue[]): unknown {
  try {
    const quantity = parseQuantity(text);
    return convert(quantity.value, quantity.unit as typeof unit, unit);
  } catch (error) {
    if (!isDomainError(error)) throw error;
    issues.push({
      path,
      received: JSON.stringify(text.slice(0, 60)),
      allowed: `a number in ${unit}, or a text with a unit that converts to ${unit}`,
      ...(error.nearest === undefined ? {} : { nearest: error.nearest }),
    });
    return text;
  }
}
