import { checkJoint } from './check-case.ts';
import { CHECK_OUTCOMES } from './ids.ts';
import { words } from './messages/words.ts';
import { modelFor } from './model.ts';
import type { Access, CheckId, JointId, OutcomeId } from './types.ts';
import { WORKSHOP } from './workshop-data.ts';

/** An outcome of a check, in plain words. */
export interface OutcomeDescription {
  /** Id of the outcome. */
  id: OutcomeId;
  /** Key of its words in a table of messages. */
  code: string;
  /** English words. */
  text: string;
}

/** A tool that a check needs, in plain words. */
export interface ToolDescription {
  /** Id of the tool. */
  id: string;
  /** Key of its words in a table of messages. */
  code: string;
  /** English words. */
  text: string;
}

/** A check: what to look at, what it takes and what it spoils. */
export interface CheckDescription {
  /** Id of the check. */
  id: CheckId;
  /** Key of its question in a table of messages. */
  code: string;
  /** The question in plain English. */
  question: string;
  /** What can come of it. */
  outcomes: readonly OutcomeDescription[];
  /** True when more than one outcome may be given. */
  several: boolean;
  /** What the check itself takes, in minutes, above 0. */
  minutes: number;
  /** How far the joint has to be opened for it. */
  access: Access;
  /** The same in English words; their key in a table of messages is `access-` and the id. */
  accessText: string;
  /** What getting at the place takes on top, in minutes, at least 0, when it is not open already. */
  accessMinutes: number;
  /** What getting at the place wears off the joint, as minutes of workshop time, at least 0. */
  wearMinutes: number;
  /** Tools. */
  tools: readonly ToolDescription[];
  /** Checks whose evidence it destroys: make them first. */
  destroys: readonly CheckId[];
  /** Checks that destroy the evidence for this one: make it before them. */
  before: readonly CheckId[];
}

/**
 * Lists the checks with their questions, answers, effort and what each spoils for others.
 *
 * @remarks
 * Formula: none. What a check destroys follows from how far it opens the joint: tightening hides the torque on arrival,
 * taking the arm off costs the seat and wipes away powder.
 *
 * Validity: every check of the package with the effort at a square taper, or those that apply to one joint with the effort
 * there: a clamp opens by hand, a cotter has to be pressed out.
 *
 * Accuracy: minutes are judgement for a practised hand.
 *
 * @param joint - Id of a joint that can be diagnosed; all checks when left out.
 * @returns The checks in the order of the data; `minutes`, `accessMinutes` and `wearMinutes` in minutes.
 * @throws {@link DomainError} for a joint that is unknown or not modelled.
 * @example
 * ```ts
 * import { listChecks } from '@spindlewright/diagnosis';
 * const feel = listChecks('square-taper-jis').find((check) => check.id === 'tightening-feel');
 * feel?.destroys; // => ['bolt-on-arrival', 'play-at-arm']
 * feel?.outcomes[1]?.text; // => 'The bolt goes solid before half a turn'
 * ```
 * @see The data files `checks.json` and `families/*.json` of this package.
 */
export function listChecks(joint?: JointId): CheckDescription[] {
  if (joint !== undefined) checkJoint('listChecks', joint);
  const { effort, checks } = modelFor(joint ?? 'square-taper', undefined);
  const known = effort.filter(({ id }) => joint === undefined || checks.includes(id));
  return known.map(({ id, minutes, access, opening: accessMinutes, wear: wearMinutes, destroys }) => {
    return {
      id,
      code: `check-${id}`,
      question: words[`check-${id}`] ?? id,
      outcomes: CHECK_OUTCOMES[id].map((outcome) => {
        const code = `outcome-${id}-${outcome}`;
        return { id: outcome, code, text: words[code] ?? outcome };
      }),
      several: id === 'history',
      minutes,
      access,
      accessText: words[`access-${access}`] ?? access,
      accessMinutes,
      wearMinutes,
      tools: WORKSHOP.tools[id].map((tool) => ({
        id: tool,
        code: `tool-${tool}`,
        text: words[`tool-${tool}`] ?? tool,
      })),
      destroys: destroys.filter((other) => other !== id && known.some((check) => check.id === other)),
      before: known.filter((other) => other.id !== id && other.destroys.includes(id)).map((other) => other.id),
    };
  });
}
