import { type ActionId, diagnose } from '@spindlewright/diagnosis';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../test/demo-job.ts';
import { costOf, costSection } from './cost-section.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job, Rates } from './job.ts';
import { jobSheetSchema } from './schema.ts';
import { workJob } from './work-job.ts';

// All figures are invented and summed by hand.
const rates: Rates = {
  unit: 'EUR',
  chargePerMinute: 1.2,
  work: [
    { action: 'replace-arm', minutes: 20 },
    { action: 'replace-both', minutes: 45 },
    { action: 'replace-fixing', minutes: 10 },
    { action: 'replace-spindle', minutes: 40 },
    { action: 'service-bearing', minutes: 30 },
  ],
  parts: [
    { part: 'arm', value: 38, unit: 'EUR' },
    { part: 'spindle', value: 25, unit: 'EUR' },
    { part: 'fixing', value: 3.5, unit: 'EUR' },
    { part: 'bearing', value: 16, unit: 'EUR' },
  ],
};
const job: Job = { ...demoJob, side: 'non-drive', rates };
const blank = diagnose({ joint: 'square-taper-jis', side: 'drive', observations: {} });
/** Both sides with the actions given, no check left; whether the diagnosis leads to them is its own matter. */
const sides = (here: ActionId, there: ActionId, joint = blank.joint): DiagnosisPart => {
  const at = (action: ActionId) => ({ ...blank, joint, action, nextChecks: [] });
  return {
    result: at(here),
    comparison: {
      drive: at(there),
      nonDrive: at(here),
      firstSide: 'drive',
      action: there,
      doNotRide: true,
      differences: [],
      readings: [],
      findings: [],
    },
  };
};
const totals = (part: DiagnosisPart, given: Job = job) => {
  const cost = costOf(given, part);
  return cost === undefined
    ? undefined
    : [cost.sides.map(({ side, total }) => [side, total.value]), cost.totalMinutes, cost.total.value];
};

describe('costs of both sides', () => {
  it.each<[string, ActionId, ActionId, unknown]>([
    // 20 min at 1.20 are 24, and an arm of 38: 62. 10 min are 12, and a bolt of 3.50: 15.50.
    [
      'an arm here, a bolt there',
      'replace-arm',
      'replace-fixing',
      [
        [
          ['non-drive', 62],
          ['drive', 15.5],
        ],
        30,
        77.5,
      ],
    ],
    // Two arms, each with its work.
    [
      'an arm on either side',
      'replace-arm',
      'replace-arm',
      [
        [
          ['non-drive', 62],
          ['drive', 62],
        ],
        40,
        124,
      ],
    ],
    // 45 min are 54, arm and spindle 63: 117. There 20 min are 24, and the arm.
    [
      'both parts here, an arm there',
      'replace-both',
      'replace-arm',
      [
        [
          ['non-drive', 117],
          ['drive', 62],
        ],
        65,
        179,
      ],
    ],
    // The one spindle is bought once: 54 + 38 + 25, then 54 + 38.
    [
      'both parts on either side',
      'replace-both',
      'replace-both',
      [
        [
          ['non-drive', 117],
          ['drive', 92],
        ],
        90,
        209,
      ],
    ],
    // 40 min are 48, and 25.
    ['the spindle, by either side', 'replace-spindle', 'replace-spindle', [[['both', 73]], 40, 73]],
    // 30 min are 36, and 16.
    ['the bearing, by either side', 'service-bearing', 'service-bearing', [[['both', 52]], 30, 52]],
    ['an arm here, nothing there', 'replace-arm', 'ride', [[['non-drive', 62]], 20, 62]],
    ['nothing here, a bolt there', 'ride', 'replace-fixing', [[['drive', 15.5]], 10, 15.5]],
    ['nothing at all', 'ride', 'ride', undefined],
  ])('%s', (_, here, there, expected) => {
    expect(totals(sides(here, there))).toEqual(expected);
  });

  it('a crank of one piece is bought once, whatever its sides need', () => {
    expect(totals(sides('replace-arm', 'replace-both', 'one-piece'))).toEqual([
      [
        ['non-drive', 62],
        ['drive', 54],
      ],
      65,
      116,
    ]);
  });

  it('the checks that the sheet names are charged, those of the other side named as left out', () => {
    const part = sides('replace-arm', 'replace-fixing');
    const open = blank.nextChecks.slice(0, 3);
    const minutes = open.reduce((sum, check) => sum + check.minutes, 0);
    expect(minutes).toBeGreaterThan(0);
    const asked = { ...part, result: { ...part.result, nextChecks: open } };
    const cost = costOf(job, asked);
    expect(cost?.checkMinutes).toBe(minutes);
    expect(cost?.checks.value).toBeCloseTo(minutes * 1.2, 2);
    expect(cost?.total.value).toBeCloseTo(77.5 + minutes * 1.2, 2);
    const comparison = part.comparison && { ...part.comparison, drive: { ...part.comparison.drive, nextChecks: open } };
    expect(costOf(job, { ...part, ...(comparison && { comparison }) })?.missing).toEqual(['checks on the drive side']);
  });

  it('what the shop states no figure for is named by its side', () => {
    const bare = { ...job, rates: { unit: 'EUR', chargePerMinute: 1.2 } };
    expect(costOf(bare, sides('replace-arm', 'service-bearing'))?.missing).toEqual([
      'minutes of the work, non-drive side',
      'price of the arm, non-drive side',
      'minutes of the work, drive side',
      'price of the bearing, drive side',
    ]);
  });

  it('the table shows either side, its parts and its sum, and the paragraph the whole', () => {
    const part = sides('replace-arm', 'replace-fixing');
    const [section] = costSection(costOf(job, part), part);
    const [table, text] = section?.blocks ?? [];
    expect(table?.kind === 'table' && table.rows.map(([side, , minutes, amount]) => [side, minutes, amount])).toEqual([
      ['non-drive', '20', '24.00 EUR'],
      ['non-drive', '', '38.00 EUR'],
      ['non-drive', '', '62.00 EUR'],
      ['drive', '10', '12.00 EUR'],
      ['drive', '', '3.50 EUR'],
      ['drive', '', '15.50 EUR'],
    ]);
    expect(text?.kind === 'paragraph' && text.text).toBe(
      'Together: 77.50 EUR, 30 minutes. What serves both sides is counted once.',
    );
  });

  it('a job that is worked with both sides has them on its sheet', () => {
    const worn = { 'play-at-arm': 'arm-moves-on-spindle', 'bore-flats': 'rounded', 'spindle-flats': 'sound' } as const;
    const both = { ...job, observations: worn, otherSide: { observations: worn } };
    const sheet = workJob(both);
    expect(jobSheetSchema.safeParse(sheet).success).toBe(true);
    expect(sheet.cost?.sides.map(({ side, action }) => [side, action])).toEqual([
      ['non-drive', 'replace-arm'],
      ['drive', 'replace-arm'],
    ]);
  });
});
