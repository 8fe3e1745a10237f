import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import type { Observations, SpindleVerdict } from './types.ts';

const dead: Observations = { 'bore-flats': 'rounded', 'play-at-arm': 'arm-moves-on-spindle', history: 'ridden-loose' };
const verdict = (observations: Observations): SpindleVerdict =>
  diagnose({ joint: 'square-taper-jis', observations }).spindleStillGood;

describe('is the spindle still good after the arm died', () => {
  it('cannot be told until its flats were looked at', () => {
    expect(verdict(dead)).toMatchObject({ state: 'cannot-tell', check: 'spindle-flats' });
  });

  it('is good with sound flats, not good with worn or cracked ones', () => {
    const good = verdict({ ...dead, 'spindle-flats': 'sound' });
    expect(good.state).toBe('good');
    expect(good.check).toBeUndefined();
    expect(verdict({ ...dead, 'spindle-flats': 'scored-or-rounded', 'spindle-runout': 'true' }).state).toBe('not-good');
    expect(verdict({ 'spindle-flats': 'cracked' }).state).toBe('not-good');
  });

  it('is not called good because it runs true, or because damage is rare', () => {
    expect(verdict({ ...dead, 'spindle-runout': 'true' })).toMatchObject({
      state: 'cannot-tell',
      check: 'spindle-flats',
    });
    expect(verdict({ 'shoulder-gap': 'touching', 'bore-flats': 'straight' })).toMatchObject({
      state: 'cannot-tell',
      check: 'spindle-flats',
    });
  });

  it('is not called good while answers contradict each other', () => {
    const odd = verdict({
      ...dead,
      'spindle-flats': 'sound',
      'play-at-arm': 'none',
      'play-after-tightening': 'remains',
    });
    expect(odd).toMatchObject({ state: 'cannot-tell', check: 'spindle-runout' });
  });
});
