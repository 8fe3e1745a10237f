import type { CheckDescription, Diagnosis } from '@spindlewright/diagnosis';
import type { Messages } from '@spindlewright/quantity';
import { jointOf } from '../../joint-kind.ts';
import { checkName, jointWords } from '../../joint-words.ts';
import { pathWords } from '../../seat-words.ts';
import type { Asker, Choice } from './asker.ts';
import { type Reply, replied, type Step, stepOf, type Walk } from './machine.ts';
import { readingOf } from './reading-of.ts';
import type { ReadingQuestion } from './reading-questions.ts';

// An outcome cannot be called so: ids of outcomes have no such mark.
const UNCLEAR = '?unclear';
const PUT_OFF = '?put-off';
const UNDO = '?undo';
const STOP = '?stop';
const MARKED = '?marked';
const MEASURE = '?measure';

/** What a walk talks with and to. */
interface Talk {
  asker: Asker;
  save(walk: Walk): void;
  /** What is wrong with a walk as a job; nothing when it is a job. */
  faultOf(walk: Walk): string | undefined;
}

/** Asks until nothing is left or it is stopped; every answer is saved as it comes. Broken off: the walk as it is. @internal */
export async function converse(begun: Walk, talk: Talk): Promise<{ walk: Walk; brokenOff: boolean }> {
  let walk = begun;
  const words = jointWords(jointOf(walk.job));
  for (;;) {
    const step = stepOf(walk);
    if (step.over === 'stopped') return { walk, brokenOff: false };
    if (step.reading === undefined) talk.asker.say(standing(step.diagnosis, words));
    const reply = await replyOf(walk, step, words, talk);
    if (reply === undefined) return { walk, brokenOff: true };
    if (reply === 'end') return { walk, brokenOff: false };
    walk = replied(walk, reply);
    if (reply.kind !== 'stop' && reply.kind !== 'measure') talk.save(walk);
  }
}

function replyOf(walk: Walk, step: Step, words: Messages, talk: Talk): Promise<Reply | 'end' | undefined> {
  if (step.check !== undefined) return replyTo(step, step.check, words, talk.asker);
  if (step.reading !== undefined) return readingFor(walk, step, step.reading, words, talk);
  return lastWord(step, words, talk.asker);
}

async function replyTo(step: Step, check: CheckDescription, words: Messages, asker: Asker): Promise<Reply | undefined> {
  const tools = check.tools.map(({ text }) => text).join(', ');
  const asked = words[`check-${check.id}`] ?? check.question;
  const access = words[`access-${check.access}`] ?? check.accessText;
  const question = `${asked}\n${access}${tools === '' ? '' : `; with ${tools}`}`;
  const outcomes: Choice[] = check.outcomes.map(({ id, text }) => ({
    value: id,
    label: words[`outcome-${check.id}-${id}`] ?? text,
  }));
  const given = await asker.one(question, [
    ...(check.several ? [{ value: MARKED, label: 'Mark what applies' }] : outcomes),
    {
      value: UNCLEAR,
      key: 'c',
      label: 'Cannot tell',
      hint: check.several ? 'nobody knows' : 'looked, and it could be either',
    },
    ...meanwhile(step, words),
  ]);
  switch (given) {
    case UNCLEAR:
      return { kind: 'unclear' };
    case MARKED: {
      const marked = await asker.some(question, outcomes);
      return marked === undefined ? undefined : { kind: 'found', outcomes: marked };
    }
    default:
      return command(given) ?? (given === undefined ? undefined : { kind: 'found', outcomes: [given] });
  }
}

/** What may be said instead of an answer. */
const meanwhile = (step: Step, words: Messages): Choice[] => [
  { value: PUT_OFF, key: 'n', label: 'Not now', hint: 'ask something else' },
  ...undoChoice(step, words),
  { value: STOP, key: 's', label: 'Save and stop', hint: 'the same command goes on from here' },
];

function command(given: string | undefined): Reply | undefined {
  switch (given) {
    case PUT_OFF:
      return { kind: 'put-off' };
    case UNDO:
      return { kind: 'undo' };
    case STOP:
      return { kind: 'stop' };
    default:
      return undefined;
  }
}

/** One key where there are choices, else one number; the same letters as elsewhere put it off, undo or stop. */
async function readingFor(
  walk: Walk,
  step: Step,
  asked: ReadingQuestion,
  words: Messages,
  { asker, faultOf }: Talk,
): Promise<Reply | undefined> {
  const { question, how, unit, choices } = asked;
  if (choices !== undefined) {
    const options = choices.map(({ label }, index) => ({ value: String(index), label }));
    const given = await asker.one(`${question}\n${how}`, [...options, ...meanwhile(step, words)]);
    const chosen = choices[Number(given)];
    return command(given) ?? (chosen === undefined ? undefined : { kind: 'read', value: chosen.value });
  }
  const wanted =
    unit === undefined || unit === 'N' ? 'A number with its unit.' : `A number in ${unit}, or with its unit.`;
  const undo = step.last === undefined ? '' : ', u undo';
  const line = await asker.text(`${question}\n${how}\n${wanted} Or n not now${undo}, s save and stop`, '', (text) => {
    if (LETTERS[text] !== undefined)
      return text === 'u' && step.last === undefined ? 'nothing to take back' : undefined;
    const read = readingOf(text, unit);
    if ('fault' in read) return read.fault;
    return faultOf(replied(walk, { kind: 'read', value: read.value }));
  });
  if (line === undefined) return undefined;
  const letter = LETTERS[line];
  if (letter !== undefined) return { kind: letter };
  const read = readingOf(line, unit);
  return 'fault' in read ? undefined : { kind: 'read', value: read.value };
}

const LETTERS: Readonly<Record<string, 'put-off' | 'undo' | 'stop'>> = { n: 'put-off', u: 'undo', s: 'stop' };

/** The last answer may have been a slip, so that it can still be taken back; and the sheet may still use readings. */
async function lastWord(step: Step, words: Messages, asker: Asker): Promise<Reply | 'end' | undefined> {
  const why =
    step.over === 'decided'
      ? 'No further look would change what to do.'
      : 'What is left to look at was put off; the same command asks it again.';
  const given = await asker.one(why, [
    { value: STOP, key: 'e', label: 'End' },
    ...(step.readingsLeft === 0
      ? []
      : [
          {
            value: MEASURE,
            key: 'r',
            label: `Readings: ${step.readingsLeft} that the sheet could use`,
            hint: 'one number each',
          },
        ]),
    ...undoChoice(step, words),
  ]);
  if (given === undefined) return undefined;
  if (given === MEASURE) return { kind: 'measure' };
  return given === UNDO ? { kind: 'undo' } : 'end';
}

const undoChoice = ({ last }: Step, words: Messages): Choice[] =>
  last === undefined ? [] : [{ value: UNDO, key: 'u', label: `Undo: take back ${named(last, words)}` }];

/** A check or a path of a reading in words. */
const named = (id: string, words: Messages): string => {
  const said = pathWords(id);
  return said === id ? checkName(words, id) : said;
};

/** What is thought of the joint so far, in three lines, in the words of the joint. @internal */
export function standing({ conditions, action, doNotRide }: Diagnosis, words: Messages): string {
  const likely = conditions.slice(0, 2).map(({ id, probability }) => {
    const percent = Math.round(100 * probability);
    return `${words[`condition-${id}`] ?? id} (${percent >= 100 ? 'over 99' : percent} %)`;
  });
  return [
    `So far: ${likely.join('; ')}`,
    `To do:  ${words[`action-${action}`] ?? action}`,
    ...(doNotRide ? ['DO NOT RIDE until that is done and checked'] : []),
  ].join('\n');
}
