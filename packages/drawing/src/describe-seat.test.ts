import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, test } from 'vitest';
import { bottoming, good, stoppedAtWall, trialFit } from '../test/sample-seats.ts';
import { describeSeat } from './describe-seat.ts';

describe('describeSeat', () => {
  test('says both places with their limits, and the verdict', () => {
    const words = describeSeat(good);
    expect(words).toContain('Verdict: Seats.');
    expect(words).toContain(
      'Pushed on by hand: end gap 2.4 mm (limits 1.8 to 3.0), shoulder gap 2.9 mm (limits 2.3 to 3.5)',
    );
    expect(words).toContain('Pressed: end gap 1.4 mm (limits 0.7 to 2.1), shoulder gap 1.9 mm (limits 1.2 to 2.6)');
  });

  test('says what is stopped, by how much it falls short, and that it is not to be ridden', () => {
    expect(describeSeat(bottoming)).toContain('no longer presses the arm (0.4 mm short). Do not ride.');
    expect(describeSeat(stoppedAtWall)).toContain('(0.20 mm short). Do not ride.');
    expect(describeSeat(good)).not.toContain('Do not ride.');
  });

  test('a gap of exactly nothing is contact', () => {
    const flush = { ...good, pressed: { ...good.pressed, endGapMm: 0 } };
    expect(describeSeat(flush)).toContain('Do not ride.');
  });

  test('says what is not known and what is no measure', () => {
    expect(describeSeat(trialFit)).toContain('engaged length not known');
    expect(describeSeat(trialFit)).toContain('not to measure');
    expect(describeSeat({ handFit: {}, pressed: {} })).toContain('Shoulder gap not known: drawn at a guess.');
  });

  test('a verdict in own words stands as it is', () => {
    expect(describeSeat({ ...good, verdict: 'ask the maker' })).toContain('Verdict: ask the maker.');
  });

  test('refuses by its own name', () => {
    try {
      describeSeat({ ...good, pressed: { endGapMm: 1e9 } });
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error) && error.message).toMatch(/^describeSeat: pressed.endGapMm/);
    }
  });
});
