// The hand-written cases of common practice, for the tests and for the page on what they show.
import { readdirSync, readFileSync } from 'node:fs';
import {
  type ActionId,
  type BesideId,
  type CauseId,
  type ConditionId,
  type DiagnoseInput,
  diagnose,
} from '@spindlewright/diagnosis';

/** A case with what common practice says about it. */
export interface Vignette extends DiagnoseInput {
  id: string;
  story: string;
  expect: {
    /** The leading condition, one of these. */
    conditions?: ConditionId[];
    causes?: CauseId[];
    besides?: BesideId[];
    actions: ActionId[];
    doNotRide: boolean;
  };
  standing: 'common-practice';
  sources: string[];
}

const folder = new URL('./vignettes/', import.meta.url);

const read = (kind: 'tuned' | 'kept-out' | 'kept-out-second' | 'kept-out-third'): Vignette[] =>
  readdirSync(new URL(`${kind}/`, folder)).map(
    (name) => JSON.parse(readFileSync(new URL(`${kind}/${name}`, folder), 'utf8')) as Vignette,
  );

/** Cases that may have shaped the data. */
export const tuned = read('tuned');

/** Those left of the first kept-out set; the others of it have shaped the data. */
export const keptOutFirst = read('kept-out');

/** The kept-out set written after that. */
export const keptOutSecond = read('kept-out-second');

/** The set written after that, whole: run once when it was done, and no data have been changed by it. */
export const keptOutThird = read('kept-out-third');

/** Cases that have not shaped the data: counted, never named. */
export const keptOut = [...keptOutFirst, ...keptOutSecond, ...keptOutThird];

/** What `diagnose` takes of a case. */
export const inputOf = ({ joint, side, observations, measurements }: Vignette): DiagnoseInput => ({
  joint,
  ...(side === undefined ? {} : { side }),
  observations,
  ...(measurements === undefined ? {} : { measurements }),
});

/** Every departure of the answer from what common practice expects. */
export function mismatches(vignette: Vignette): string[] {
  const { expect: wanted, id } = vignette;
  const result = diagnose(inputOf(vignette));
  const [condition] = result.conditions;
  const [cause] = result.causes;
  const found: string[] = [];
  if (result.doNotRide !== wanted.doNotRide) found.push(`${id}: doNotRide ${result.doNotRide}`);
  if (!wanted.actions.includes(result.action)) found.push(`${id}: action ${result.action}`);
  if (wanted.conditions && condition && !wanted.conditions.includes(condition.id)) {
    found.push(`${id}: condition ${condition.id}`);
  }
  if (wanted.causes && cause && !wanted.causes.includes(cause.id)) found.push(`${id}: cause ${cause.id}`);
  for (const beside of wanted.besides ?? []) {
    const probability = result.besides.find((entry) => entry.id === beside)?.probability ?? 0;
    if (probability < 0.5) found.push(`${id}: ${beside} ${probability}`);
  }
  return found;
}

/** The departures of one kind in a list of cases. */
export const departures = (kind: 'action' | 'doNotRide' | 'condition' | 'cause', list: readonly Vignette[]): string[] =>
  list.flatMap(mismatches).filter((text) => text.includes(`: ${kind} `));
