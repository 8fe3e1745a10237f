import { createFinding, DomainError, type Finding, type Messages } from '@spindlewright/quantity';
import { owner } from './messages/owner.ts';
import { words } from './messages/words.ts';
import type { CauseId, Diagnosis } from './types.ts';

/** A diagnosis in the words of the counter. */
export interface OwnerWords {
  /** Three sentences: what was found, whether to ride and what is to be done, how to keep it from coming back. */
  sentences: readonly [found: Finding, doing: Finding, keeping: Finding];
  /** What to keep for a warranty claim; empty when no part is replaced. */
  keep: readonly Finding[];
  /** Why a qualified workshop should see it; empty when nothing asks for that. */
  workshop: readonly Finding[];
}

// Judgement: from here on a finding is said as one, below it as a suspicion; and a cause is named or left open.
const SAID_AS_FOUND = 0.8;
const CAUSE_NAMED = 0.4;
const CHANCE_OF_A_CRACK = 0.02;

/**
 * Says a diagnosis to the owner in three sentences, with what to keep for a warranty claim and when to send it on.
 *
 * @remarks
 * Formula: none; the sentences follow from the first condition, the action and the first need of the repair. Parts and
 * papers are to be kept when a part is replaced. A qualified workshop is named for a crack or a chance of one above 2 in
 * 100, a spindle that may be damaged, a damaged thread, a fall, and where no condition has an even chance.
 *
 * Validity: any result of `diagnose`. A code that the table lacks is worded in English, so that nothing is lost.
 *
 * Accuracy: a finding is said as one from 80 in 100 on, below that as a suspicion with its chance; a cause is named from
 * 40 in 100 on (judgement).
 *
 * @param input - `result`: what `diagnose` gave; `messages`: templates and words by code, English when left out.
 * @returns `sentences` (three), `keep` and `workshop`, each a finding with code, values and sentence.
 * @throws {@link DomainError} when `result` is not a result of `diagnose`.
 * @example
 * ```ts
 * import { diagnose, ownerWords } from '@spindlewright/diagnosis';
 * const result = diagnose({
 *   joint: 'square-taper-jis',
 *   observations: { 'bolt-on-arrival': 'tight', 'play-after-tightening': 'remains', 'bore-flats': 'rounded' },
 * });
 * ownerWords({ result }).sentences.map((sentence) => sentence.message)[1];
 * // => 'Please do not ride it until this is done: replace the arm.'
 * ```
 * @see The table `@spindlewright/diagnosis/messages/en`.
 */
export function ownerWords(input: { result: Diagnosis; messages?: Messages }): OwnerWords {
  const result = input?.result;
  const [condition] = Array.isArray(result?.conditions) ? result.conditions : [];
  const [cause] = Array.isArray(result?.causes) ? result.causes : [];
  if (condition === undefined || cause === undefined || !Array.isArray(result.repairNeeds)) {
    const allowed = 'a result of diagnose()';
    throw new DomainError('ownerWords', [{ path: 'result', received: typeof result, allowed }]);
  }
  const table = input.messages ?? {};
  const text = (code: string): string =>
    (Object.hasOwn(table, code) ? table[code] : (owner[code] ?? words[code])) ?? code;
  const line = (code: string, values: Record<string, string | number> = {}, severity: Finding['severity'] = 'note') =>
    createFinding({ code, severity, template: text(code), values });

  const { action, doNotRide } = result;
  const what = { text: text(`condition-${condition.id}`), percent: 100 * condition.probability };
  const found =
    condition.id === 'sound'
      ? line('owner-sound', what)
      : line(condition.probability >= SAID_AS_FOUND ? 'owner-found' : 'owner-suspected', what);
  const doing =
    action === 'ride'
      ? line('owner-ride')
      : line(
          doNotRide ? 'owner-do-not-ride' : 'owner-do-soon',
          { text: text(`action-${action}`) },
          doNotRide ? 'stop' : 'caution',
        );
  const keeping = keepingOf(result, cause, text);
  const replaced = /^(replace|fit)-/.test(action);
  return {
    sentences: [found, doing, line(keeping.code, keeping.values)],
    keep: replaced ? KEEP.map((code) => line(code)) : [],
    workshop: reasonsFor(result).map((code) => line(code, {}, 'caution')),
  };
}

const KEEP = ['keep-old-parts', 'keep-pictures', 'keep-readings', 'keep-papers', 'keep-no-promise'] as const;

/** How it came about and what keeps it from coming back: the need that the cause asks for, else the first one. */
function keepingOf(
  result: Diagnosis,
  cause: { id: CauseId; probability: number },
  text: (code: string) => string,
): { code: 'owner-keep-well' | 'owner-cause-open' | 'owner-cause'; values: Record<string, string> } {
  const asked = result.repairNeeds.find((need) => need.cause === cause.id) ?? result.repairNeeds[0];
  const need = text(`need-${asked?.id ?? 'stop-when-loose'}`);
  if (result.action === 'ride') return { code: 'owner-keep-well', values: { need } };
  if (cause.id === 'none' || cause.probability < CAUSE_NAMED) return { code: 'owner-cause-open', values: { need } };
  return { code: 'owner-cause', values: { cause: text(`cause-${cause.id}`), need } };
}

type WorkshopCode =
  | 'workshop-cracked'
  | 'workshop-spindle'
  | 'workshop-thread'
  | 'workshop-impact'
  | 'workshop-unclear';

function reasonsFor({ conditions, causes, spindleStillGood, action }: Diagnosis): WorkshopCode[] {
  const of = (id: string): number => conditions.find((entry) => entry.id === id)?.probability ?? 0;
  const [first] = conditions;
  const reasons: [boolean, WorkshopCode][] = [
    [of('arm-cracked') >= CHANCE_OF_A_CRACK && action !== 'ride', 'workshop-cracked'],
    [spindleStillGood.state === 'not-good', 'workshop-spindle'],
    [of('fixing-thread-damaged') >= 0.5, 'workshop-thread'],
    [(causes.find(({ id }) => id === 'impact')?.probability ?? 0) >= 0.5, 'workshop-impact'],
    [action !== 'ride' && (first?.probability ?? 0) < 0.5, 'workshop-unclear'],
  ];
  return reasons.flatMap(([holds, code]) => (holds ? [code] : []));
}
