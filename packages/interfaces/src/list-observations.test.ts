import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { getInterface } from './get-interface.ts';
import { listInterfaces } from './list-interfaces.ts';
import { listObservations } from './list-observations.ts';

const readingOf = (id: string, check: string, outcome: string): string | undefined =>
  listObservations(getInterface(id)).find((one) => one.check === check && one.outcome === outcome)?.reading;

describe('listObservations', () => {
  // What the families are known for: the same sight is right at one and a fault at the other.
  it.each([
    ['spline-10', 'shoulder-gap', 'touching', 'right'],
    ['spline-10', 'shoulder-gap', 'clear', 'wrong'],
    ['spline-10', 'end-gap', 'flush', 'wrong'],
    ['square-taper-iso', 'shoulder-gap', 'touching', 'wrong'],
    ['square-taper-iso', 'shoulder-gap', 'clear', 'right'],
    ['square-taper-iso', 'witness-mark', 'whole-flat', 'wrong'],
    ['square-taper-iso', 'clamp-slot', 'closed', undefined],
    ['through-spindle-24', 'arm-release', 'comes-off-by-hand', 'right'],
    ['through-spindle-24', 'end-gap', 'flush', 'depends'],
    ['through-spindle-24', 'clamp-slot', 'closed', 'wrong'],
    ['through-spindle-24', 'play-at-arm', 'both-arms-together', 'depends'],
    ['cottered-metric', 'arm-alignment', 'one-step-off', 'wrong'],
    ['cottered-metric', 'cotter', 'deformed', 'wrong'],
    ['one-piece', 'arm-release', 'needs-puller', undefined],
    ['one-piece', 'arm-straightness', 'bent', 'wrong'],
    ['spline-48', 'arm-release', 'comes-off-by-hand', 'right'],
    ['spline-8-long', 'arm-release', 'comes-off-by-hand', 'depends'],
  ])('%s: %s %s is %s', (id, check, outcome, reading) => {
    expect(readingOf(id, check, outcome)).toBe(reading);
  });

  it('says each outcome once, every joint in the same order', () => {
    const orders = listInterfaces().map((record) => {
      const keys = listObservations(record).map(({ check, outcome }) => `${check}/${outcome}`);
      expect(new Set(keys).size).toBe(keys.length);
      return keys;
    });
    const [square] = orders.filter((keys) => keys.includes('witness-mark/one-edge'));
    for (const keys of orders) {
      const shared = keys.filter((key) => square?.includes(key));
      expect(shared).toEqual(square?.filter((key) => keys.includes(key)));
    }
  });

  it('refuses an id', () => {
    try {
      listObservations('spline-10' as never);
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error)).toBe(true);
    }
  });
});
