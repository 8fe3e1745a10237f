import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Job } from '../job.ts';
import { readJob } from '../read-job.ts';
import { needSchema } from '../schema.ts';
import { needFromJob } from './need-from-job.ts';

const job: Job = {
  format: 'spindlewright-job-1',
  title: 'Invented',
  date: '2026-11-27',
  bike: 'an invented bike',
  side: 'non-drive',
  interface: { spindle: 'square-taper-jis', arm: 'square-taper-iso' },
  flats: 'greased',
  spindle: { flats: [{ acrossFlatsMm: 12.73, atMm: 0, pair: 'a' }] },
  arm: { boreLengthMm: 20 },
};

describe('needFromJob', () => {
  it('wants an arm for the spindle, with what was read on it', () => {
    const need = needFromJob({ job, for: 'arm' });
    expect(need).toEqual({
      format: 'spindlewright-need-1',
      for: 'arm',
      interface: 'square-taper-jis',
      side: 'non-drive',
      spindle: job.spindle,
      flats: 'greased',
    });
    expect(needSchema.parse(need)).toEqual(need);
  });

  it('wants a spindle or a puller for the arm, and a bolt for the spindle', () => {
    expect(needFromJob({ job, for: 'spindle' })).toMatchObject({ interface: 'square-taper-iso', arm: job.arm });
    expect(needFromJob({ job, for: 'puller' }).interface).toBe('square-taper-iso');
    expect(needFromJob({ job, for: 'bolt' }).interface).toBe('square-taper-jis');
    expect(needFromJob({ job }).for).toBe('arm');
  });

  it('wants what the diagnosis replaces', () => {
    // An example job whose arm is worn out: its sheet says to replace the arm.
    const path = new URL('../../../../examples/jobs/bore-gone.json', import.meta.url);
    expect(needFromJob({ job: readJob(JSON.parse(readFileSync(path, 'utf8'))) }).for).toBe('arm');
  });

  it('identifies a spindle that is not named by its readings', () => {
    const unnamed = { ...job, interface: { spindle: 'unknown', arm: 'unknown' } };
    expect(needFromJob({ job: unnamed, for: 'arm' }).interface).toMatch(/^square-taper-(jis|iso)$/);
    const { spindle: _spindle, ...unread } = unnamed;
    expect(() => needFromJob({ job: unread, for: 'arm' })).toThrow('interface.spindle');
  });

  it.each(['chainring', 'pedals'] as const)('cannot say what %s have to go with', (kind) => {
    expect(() => needFromJob({ job, for: kind })).toThrow();
  });
});
