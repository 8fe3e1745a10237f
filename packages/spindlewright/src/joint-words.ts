import { type JointId, listJoints } from '@spindlewright/diagnosis';
import { messages as english } from '@spindlewright/diagnosis/messages/en';
import { getInterface, listInterfaces } from '@spindlewright/interfaces';
import type { Messages } from '@spindlewright/quantity';
import { FAMILY_WORDS, PINCHED_WORDS, SPLINE_WORDS } from './joint-word-tables.ts';

/** The words of the diagnosis as they read at one joint: a cotter is no bolt, a spline has no flats. @internal */
export function jointWords(joint: JointId): Messages {
  const family = listJoints().find(({ id }) => id === joint)?.family ?? 'square-taper';
  const pinched =
    family === 'through-spindle' &&
    listInterfaces().some(({ id }) => id === joint) &&
    getInterface(joint).drawnTight.by === 'pinch-bolts';
  const splined = family.startsWith('spline-') || family === 'through-spindle';
  return { ...english, ...(splined ? SPLINE_WORDS : {}), ...FAMILY_WORDS[family], ...(pinched ? PINCHED_WORDS : {}) };
}

/** The short name of a check at a joint, as a table or an undo has it. @internal */
export const checkName = (words: Messages, check: string): string =>
  words[`name-${check}`] ?? check.replaceAll('-', ' ');
