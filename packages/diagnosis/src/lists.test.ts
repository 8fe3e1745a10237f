import { describe, expect, it } from 'vitest';
import { ACTIONS, BESIDES, CONDITIONS, MODELLED_JOINTS, UNMODELLED_JOINTS } from './ids.ts';
import { listActions } from './list-actions.ts';
import { listConditions } from './list-conditions.ts';
import { listJoints } from './list-joints.ts';

describe('listConditions', () => {
  it('leads each condition to the action that common practice takes', () => {
    const actionOf = Object.fromEntries(listConditions().map(({ id, action }) => [id, action]));
    expect(actionOf).toEqual({
      sound: 'ride',
      'loose-but-sound': 'tighten-and-recheck',
      'seat-dirty-or-galled': 'clean-and-refit',
      'bore-deformed': 'replace-arm',
      'arm-cracked': 'replace-arm',
      'arm-bent': 'replace-arm',
      'insert-loose': 'replace-arm',
      'spindle-damaged': 'replace-spindle',
      'bottomed-on-end': 'fit-matching-part',
      'stopped-at-shoulder': 'fit-matching-part',
      'too-little-engagement': 'fit-matching-part',
      'bolt-not-clamping': 'replace-fixing',
      'fixing-thread-damaged': 'replace-fixing',
      'wrong-clocking': 'clean-and-refit',
      'bearing-worn': 'service-bearing',
      'noise-elsewhere': 'look-elsewhere',
    });
    expect(Object.keys(actionOf)).toEqual([...CONDITIONS, ...BESIDES]);
  });

  it('has words for each', () => {
    for (const { id, text } of listConditions()) expect(text).not.toBe(id);
  });
});

describe('listActions', () => {
  it('names the part of each', () => {
    expect(Object.fromEntries(listActions().map(({ id, part }) => [id, part]))).toEqual({
      ride: 'none',
      'tighten-and-recheck': 'none',
      'remove-and-inspect': 'none',
      'clean-and-refit': 'seat',
      'fit-matching-part': 'arm-or-spindle',
      'replace-arm': 'arm',
      'replace-spindle': 'spindle',
      'replace-both': 'arm-and-spindle',
      'replace-fixing': 'fixing',
      'service-bearing': 'bearing',
      'look-elsewhere': 'none',
    });
    expect(listActions().map(({ id }) => id)).toEqual(ACTIONS);
  });
});

describe('listJoints', () => {
  it('tells modelled joints from those that are only known', () => {
    expect(listJoints().filter(({ modelled }) => modelled)).toHaveLength(MODELLED_JOINTS.length);
    expect(listJoints()).toHaveLength(MODELLED_JOINTS.length + UNMODELLED_JOINTS.length);
  });
});
