import { expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { tradeTorques } from './data.ts';
import { listTradeTorques } from './list-trade-torques.ts';

it('lists by joint, by interface, or everything', () => {
  expect(listTradeTorques()).toEqual(tradeTorques);
  expect(listTradeTorques('square-taper-jis')).toEqual(listTradeTorques('square-taper-bolt'));
  expect(listTradeTorques('square-taper-bolt')).toHaveLength(7);
  expect(listTradeTorques('spline-10').map((row) => row.joint)).toContain('splined-bolt-m15');
});

it('refuses an unknown id with the nearest', () => {
  expect(refusal(() => listTradeTorques('pinchbolts')).nearest).toBe('pinch-bolts');
  expect(refusal(() => listTradeTorques(7 as never)).path).toBe('id');
});
