import { type ActionId, type Diagnosis, listActions } from '@spindlewright/diagnosis';
import type { Messages } from '@spindlewright/quantity';
import { jobDefaults } from './defaults.ts';
import { jointWords } from './joint-words.ts';
import type { Problem } from './problem.ts';

/** What the joint of one side is, hedged by its probability, and whether it keeps the bike at the stand. @internal */
export function jointProblem(result: Diagnosis): { problem: Problem; grave: boolean } {
  const words = jointWords(result.joint);
  const [condition] = result.conditions;
  const beside = result.besides
    .filter(({ probability }) => probability >= jobDefaults.evenChance.value)
    .map(({ id }) => words[`beside-${id}`] ?? id);
  const elsewhere = result.action === 'service-bearing' || result.action === 'look-elsewhere';
  const named = elsewhere && beside.length > 0;
  const what = named ? beside.join(' and ') : (words[`condition-${condition?.id}`] ?? '');
  const leastBeside = Math.min(
    1,
    ...result.besides.map(({ probability }) => probability).filter((p) => p >= jobDefaults.evenChance.value),
  );
  const probability = named ? leastBeside : (condition?.probability ?? 0);
  const action = words[`action-${result.action}`] ?? result.action;
  // "Sound" on a sheet that says not to ride would reassure where nothing is sure enough.
  const unsure = result.doNotRide && !named && condition?.id === 'sound';
  const said = unsure
    ? `No fault was found for certain, but it is not sure enough to ride (${Math.floor(probability * 100)} in 100 that the joint is sound).`
    : hedged(what, probability);
  return {
    problem: {
      headline: result.action === 'ride' ? said : `${said} What to do: ${action}.`,
      owner: said,
      remedy: remedyOf(result.action, words),
    },
    grave: result.doNotRide,
  };
}

function hedged(what: string, probability: number): string {
  const inHundred = Math.round(probability * 100);
  if (probability >= jobDefaults.plainStatement.value) return `${capital(what)}.`;
  if (probability >= jobDefaults.evenChance.value) return `Most likely (${inHundred} in 100): ${what}.`;
  return `Not yet known; the likeliest of several (${inHundred} in 100): ${what}.`;
}

function remedyOf(action: ActionId, words: Messages): string {
  if (action === 'ride') return 'Nothing needs doing on it';
  const part = listActions().find(({ id }) => id === action)?.part ?? 'none';
  if (part === 'none' || part === 'seat') return `What is done: ${words[`action-${action}`] ?? action}`;
  if (part === 'bearing') return 'What is done: the bearing is serviced';
  return `What is replaced: ${words[`part-${part}`] ?? part}`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
