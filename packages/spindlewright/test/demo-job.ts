import type { Job } from '../src/job.ts';

/** The shortest job, invented. */
export const demoJob = {
  format: 'spindlewright-job-1',
  title: 'Demo',
  date: '2026-11-25',
  bike: 'an invented bike',
  side: 'drive',
  interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
} as const satisfies Job;
