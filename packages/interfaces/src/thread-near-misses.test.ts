import { describe, expect, it } from 'vitest';
import { type KnownThread, threadList } from './thread-list.ts';
import { nearMisses, startsThenStrips } from './thread-near-misses.ts';

const threads = threadList();
const at = (diameterMm: number, pitchMm: number, hand: 'right' | 'left' = 'right'): KnownThread => {
  const found = threads.find(
    (thread) =>
      thread.hand === hand &&
      thread.diametersMm.some(({ value }) => Math.abs(value - diameterMm) < 0.001) &&
      thread.pitchesMm.some((pitch) => Math.abs(pitch - pitchMm) < 0.001),
  );
  if (found === undefined) throw new Error(`no thread of ${diameterMm} x ${pitchMm}`);
  return found;
};
const INCH_20 = 1.27;
const INCH_24 = 25.4 / 24;

describe('startsThenStrips', () => {
  it.each([
    // Sources puller-threads-fr-wiki and puller-threads-odd: the 23 mm puller starts in the odd French thread and strips it.
    ['a 23 mm puller in the odd French arm', at(23, 1), at(23.35, 1), 'shallow'],
    // 0.2875 mm of the 1.375 mm flank depth is missing: 79 % is left.
    ['an old French pedal in a hole of 9/16 in', at(14, 1.25), at(14.2875, INCH_20), 'shallow'],
    // 0.058 mm a turn is half a thread after nine turns.
    ['an inch cup in a French shell', at(34.798, INCH_24), at(35, 1), 'pitch'],
  ] as const)('names %s', (_name, male, female, why) => {
    expect(startsThenStrips(male, female)).toBe(why);
  });

  it.each([
    ['the same the other way round: the male one is too large', at(23.35, 1), at(22, 1)],
    ['a puller of 22 mm that drops into 23 mm: 8 % of the flanks meet', at(22, 1), at(23, 1)],
    ['a pedal of 9/16 in before a hole of 14 mm', at(14.2875, INCH_20), at(14, 1.25)],
    ['the other hand, which does not start', at(14, 1.25, 'left'), at(14.2875, INCH_20)],
    ['its own counterpart', at(22, 1), at(22, 1)],
    ['pitches a quarter apart, which bind in the first turn', at(8, 1), at(8, 1.25)],
  ])('does not name %s', (_name, male, female) => {
    expect(startsThenStrips(male, female)).toBeUndefined();
  });
});

it('looks for the counterpart of the kind that was read', () => {
  const puller = at(23, 1);
  const odd = at(23.35, 1);
  expect(nearMisses(puller, threads, ['external']).map(({ female }) => female.id)).toContain(odd.id);
  expect(nearMisses(odd, threads, ['internal']).map(({ male }) => male.id)).toContain(puller.id);
  expect(nearMisses(odd, threads, ['external']).map(({ male }) => male.id)).not.toContain(puller.id);
});
