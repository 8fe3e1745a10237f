import type { CheckDescription, Diagnosis } from '@spindlewright/diagnosis';
import { messages as words } from '@spindlewright/diagnosis/messages/en';
import type { Asker, Choice } from './asker.ts';
import { type Reply, replied, type Step, stepOf, type Walk } from './machine.ts';

// An outcome cannot be called so: ids of outcomes have no such mark.
const UNCLEAR = '?unclear';
const PUT_OFF = '?put-off';
const UNDO = '?undo';
const STOP = '?stop';
const MARKED = '?marked';

/** Asks until nothing is left or it is stopped; every answer is saved as it comes. Broken off: the walk as it is. @internal */
export async function converse(
  begun: Walk,
  asker: Asker,
  save: (walk: Walk) => void,
): Promise<{ walk: Walk; brokenOff: boolean }> {
  let walk = begun;
  for (;;) {
    const step = stepOf(walk);
    if (step.over === 'stopped') return { walk, brokenOff: false };
    asker.say(standing(step.diagnosis));
    const reply = step.check === undefined ? await lastWord(step, asker) : await replyTo(step, step.check, asker);
    if (reply === undefined) return { walk, brokenOff: true };
    if (reply === 'end') return { walk, brokenOff: false };
    walk = replied(walk, reply);
    if (reply.kind !== 'stop') save(walk);
  }
}

async function replyTo(step: Step, check: CheckDescription, asker: Asker): Promise<Reply | undefined> {
  const tools = check.tools.map(({ text }) => text).join(', ');
  const question = `${check.question}\n${check.accessText}${tools === '' ? '' : `; with ${tools}`}`;
  const outcomes: Choice[] = check.outcomes.map(({ id, text }) => ({ value: id, label: text }));
  const given = await asker.one(question, [
    ...(check.several ? [{ value: MARKED, label: 'Mark what applies' }] : outcomes),
    { value: UNCLEAR, label: 'Cannot tell', hint: check.several ? 'nobody knows' : 'looked, and it could be either' },
    { value: PUT_OFF, label: 'Not now', hint: 'ask something else' },
    ...undoChoice(step),
    { value: STOP, label: 'Save and stop', hint: 'the same command goes on from here' },
  ]);
  switch (given) {
    case undefined:
      return undefined;
    case UNCLEAR:
      return { kind: 'unclear' };
    case PUT_OFF:
      return { kind: 'put-off' };
    case UNDO:
      return { kind: 'undo' };
    case STOP:
      return { kind: 'stop' };
    case MARKED: {
      const marked = await asker.some(question, outcomes);
      return marked === undefined ? undefined : { kind: 'found', outcomes: marked };
    }
    default:
      return { kind: 'found', outcomes: [given] };
  }
}

/** The last answer may have been a slip, so that it can still be taken back. */
async function lastWord(step: Step, asker: Asker): Promise<Reply | 'end' | undefined> {
  const why =
    step.over === 'decided'
      ? 'No further look would change what to do.'
      : 'What is left to look at was put off; the same command asks it again.';
  const given = await asker.one(why, [{ value: STOP, label: 'End' }, ...undoChoice(step)]);
  if (given === undefined) return undefined;
  return given === UNDO ? { kind: 'undo' } : 'end';
}

const undoChoice = ({ last }: Step): Choice[] =>
  last === undefined ? [] : [{ value: UNDO, label: `Undo: take back ${last.replaceAll('-', ' ')}` }];

/** What is thought of the joint so far, in three lines. @internal */
export function standing({ conditions, action, doNotRide }: Diagnosis): string {
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
