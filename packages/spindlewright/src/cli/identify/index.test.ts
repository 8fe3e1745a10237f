import { identifyBore, identifySpindle, identifyThread } from '@spindlewright/interfaces';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../../test/run-command.ts';

const file = JSON.stringify({
  format: 'spindlewright-readings-1',
  part: 'spindle',
  readings: [{ acrossFlatsMm: 12.65, atMm: '0 mm' }],
  flatLengthMm: { value: 16.5, standardUncertainty: 0.2 },
});

const run = (args: readonly string[], files: Record<string, string> = { 'readings.json': file }) =>
  runCommand(['identify', ...args], files);
const data = (args: readonly string[], files?: Record<string, string>) => {
  const { code, out } = run([...args, '--json'], files);
  expect(code).toBe(0);
  return JSON.parse(out);
};
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('identify', () => {
  it('asks the function of the part, with what the flags say', () => {
    expect(data(['spindle', '--flats', '12.65 mm @ 0 mm', '--flats', '13.2mm@8mm'])).toMatchObject(
      plain(
        identifySpindle({
          readings: [
            { acrossFlatsMm: 12.65, atMm: 0 },
            { acrossFlatsMm: 13.2, atMm: 8 },
          ],
        }),
      ) as object,
    );
    expect(data(['bore', '--diameter', '24 +- 0.05 mm', '--teeth', 'yes'])).toMatchObject(
      plain(identifyBore({ diameterMm: { lower: 23.95, nominal: 24, upper: 24.05 }, toothed: true })) as object,
    );
    const bolt = { diameterMm: 14.2, atMm: 6, pitchMm: 1.27, hand: 'left', kind: 'external' } as const;
    const flags = [
      '--diameter',
      '14.2 mm',
      '--at',
      '6 mm',
      '--pitch',
      '1.27 mm',
      '--hand',
      'left',
      '--kind',
      'external',
    ];
    expect(data(['thread', ...flags])).toMatchObject(plain(identifyThread(bolt)) as object);
  });

  it('puts the readings of a file and of flags together', () => {
    const found = data(['--readings', 'readings.json', '--flats', '13.2 mm @ 8 mm']);
    expect(found).toMatchObject({
      format: 'spindlewright-identification-1',
      part: 'spindle',
      input: {
        readings: [
          { acrossFlatsMm: 12.65, atMm: 0 },
          { acrossFlatsMm: 13.2, atMm: 8 },
        ],
        flatLengthMm: { value: 16.5, standardUncertainty: 0.2 },
      },
    });
    expect(data(['--readings', 'readings.json', '--length', '19 mm']).input.flatLengthMm).toBe(19);
  });

  it('prints candidates with chances that are never 0 or 100, the next reading and the cautions', () => {
    const { out } = run(['thread', '--diameter', '7.9 mm', '--pitch', '1 mm', '--kind', 'external']);
    expect(out).toMatch(/\d+ % {2}M8x1: Bolt in a tapped spindle end \(m8x1\)/);
    expect(out).not.toMatch(/\b(0|100) %/);
    for (const part of ['the next reading', 'qualified mechanic', 'diameter 7.9 mm', 'sources:']) {
      expect(out).toContain(part);
    }
    const bore = run(['bore', '--flats', '13.58 mm @ 0 mm']).out;
    expect(bore).toContain('0 mm from the mouth');
    expect(bore).toContain('square-taper-iso');
    expect(run(['bore', '--diameter', '38 mm', '--teeth', 'no']).out).toMatch(
      /likeliest first\n +\d\d % {2}none that is listed/,
    );
  });

  it.each<[string, readonly string[], string]>([
    ['no part', ['--flats', '12 mm @ 0 mm'], 'what was measured? spindle, bore, thread'],
    ['an unknown part', ['spindel'], 'nearest: spindle'],
    ['no reading', ['spindle'], 'no reading of the spindle: give --flats, --length or --readings FILE'],
    [
      'a reading of another part',
      ['spindle', '--pitch', '1 mm'],
      '--pitch is no reading of a spindle; those are --flats',
    ],
    ['a size without its plane', ['spindle', '--flats', '12.65 mm'], 'a size and its plane'],
    ['a size without its unit', ['spindle', '--flats', '12.65@2mm'], '--flats "12.65": a number with its unit'],
    ['a size out of range', ['spindle', '--flats', '0.5 mm @ 0 mm'], '--flats'],
    ['a plane out of range', ['spindle', '--flats', '12 mm @ 99 mm'], '--flats'],
    ['a pitch beside a count', ['thread', '--pitch', '1 mm', '--tpi', '20'], '--tpi'],
    ['a file of another part', ['bore', '--readings', 'readings.json'], 'holds readings of a spindle'],
    ['a file of another form', ['--readings', 'job.json'], 'spindlewright-readings-1'],
    ['a file of no part', ['--readings', 'part.json'], 'nearest: thread'],
    ['a misspelt field', ['--readings', 'slip.json'], 'nearest: flatLengthMm'],
    ['a field with a wrong unit', ['--readings', 'unit.json'], 'readings[0].atMm "2 Nm"'],
  ])('refuses %s', (_name, args, complaint) => {
    const { code, out, err } = run(args, {
      'readings.json': file,
      'job.json': '{"format":"spindlewright-job-1"}',
      'part.json': '{"format":"spindlewright-readings-1","part":"thred"}',
      'slip.json': '{"format":"spindlewright-readings-1","part":"spindle","flatLenghtMm":16}',
      'unit.json':
        '{"format":"spindlewright-readings-1","part":"spindle","readings":[{"acrossFlatsMm":12,"atMm":"2 Nm"}]}',
    });
    expect(code).toBe(2);
    expect(err).toContain(complaint);
    expect(out).toBe('');
  });

  it('tells a file that is not there', () => {
    expect(run(['--readings', 'none.json']).code).toBe(1);
  });
});
