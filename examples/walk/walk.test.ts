import { listChecks } from '@spindlewright/diagnosis';
import { expect, it } from 'vitest';
import { walk } from './walk.ts';

// Common practice (no source): a tight bolt and a moving arm mean that the arm has to come off, and before a new one is
// bought the spindle is looked at, since it may have to be replaced too.
it('leads from "it moves, the bolt is tight" to a new arm, with the arm off and the spindle looked at, in few checks', () => {
  const { steps, end } = walk({ 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight' });
  expect(end.action).toBe('replace-arm');
  expect(end.conditions[0]?.id).toBe('bore-deformed');
  expect(end.doNotRide).toBe(true);
  const armOff = listChecks()
    .filter(({ access }) => access === 'arm-off')
    .map(({ id }) => id);
  expect(steps.some(({ check }) => armOff.includes(check))).toBe(true);
  expect(steps.map(({ check }) => check)).toContain('spindle-flats');
  expect(steps.length).toBeLessThanOrEqual(4);
  expect(new Set(steps.map(({ check }) => check)).size).toBe(steps.length);
});
