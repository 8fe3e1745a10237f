import { readdirSync, readFileSync } from 'node:fs';
import { listChecks } from '@spindlewright/diagnosis';
import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { readJob, renderHtml, renderMarkdown, renderText, workJob } from 'spindlewright';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../../examples/jobs/', import.meta.url);
const jobs = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8'));

type Path = readonly (string | number)[];

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, item]) => pathsOf(item, [...path, key]))];
}

function changed(value: unknown, path: Path, replacement: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return replacement;
  if (Array.isArray(value))
    return value.map((item, i) => (String(i) === key ? changed(item, rest, replacement) : item));
  const record = value as Record<string, unknown>;
  return { ...record, [key]: changed(record[key as string], rest, replacement) };
}

const odd = fc.oneof(
  fc.double({ min: -1e4, max: 1e4, noNaN: true }),
  fc.constantFrom(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    -1,
    0,
    1e308,
    null,
    undefined,
    '',
    '3 N',
    '0.1 in',
    [],
    {},
    true,
  ),
  fc.string(),
  fc.record({ lower: fc.double(), nominal: fc.double(), upper: fc.double() }),
);

const at = (value: unknown, path: Path): unknown =>
  path.reduce((inner, key) => (inner as Record<string | number, unknown>)[key], value);

/** Every number of a job scaled by its own factor: geometry that is odd but possible. */
const scaled = fc
  .integer({ min: 0, max: jobs.length - 1 })
  .map((index): unknown => JSON.parse(jobs[index] ?? '{}'))
  .chain((job) => {
    const numbers = pathsOf(job).filter((path) => typeof at(job, path) === 'number');
    return fc
      .array(fc.double({ min: 0.7, max: 1.4, noNaN: true }), { minLength: numbers.length, maxLength: numbers.length })
      .map((factors) =>
        numbers.reduce((result, path, i) => changed(result, path, (at(job, path) as number) * (factors[i] ?? 1)), job),
      );
  });

/** Anything that may be seen at a joint, in any combination, at either end. */
const seen = fc.record(
  Object.fromEntries(
    listChecks('square-taper').map(({ id, outcomes, several }) => {
      const outcome = fc.constantFrom<string>(...outcomes.map((entry) => entry.id), 'unclear');
      const answer: fc.Arbitrary<string | string[]> = several ? fc.array(outcome, { maxLength: 2 }) : outcome;
      return [id, fc.option(answer, { nil: undefined })];
    }),
  ),
);

const looked = fc
  .tuple(fc.constantFrom(...jobs.map((text): Record<string, unknown> => JSON.parse(text))), seen, seen)
  .map(([job, observations, there]) =>
    JSON.parse(JSON.stringify({ ...job, observations, otherSide: { observations: there } })),
  );

const oneOddField = fc
  .integer({ min: 0, max: jobs.length - 1 })
  .map((index): unknown => JSON.parse(jobs[index] ?? '{}'))
  .chain((job) => fc.tuple(fc.constant(job), fc.constantFrom(...pathsOf(job)), odd))
  .map(([job, path, replacement]) => changed(job, path, replacement));

describe('a job with one field changed to anything at all, or with every number scaled', () => {
  it('is either refused with a path or worked into a sheet without a number that JSON cannot hold', () => {
    let refused = 0;
    let worked = 0;
    fc.assert(
      fc.property(fc.oneof(oneOddField, scaled, looked), (input) => {
        try {
          const sheet = workJob(readJob(input));
          worked++;
          expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
          const stops = sheet.findings.filter(({ severity }) => severity === 'stop').map(({ code }) => code);
          if (!sheet.doNotRide) expect(stops).toEqual([]);
          if (sheet.answer === 'Fits' || sheet.answer === 'May be ridden') expect(sheet.doNotRide).toBe(false);
          if (sheet.doNotRide) expect(sheet.headline).toMatch(/not ride|not to be ridden|not press/i);
          for (const render of [renderText, renderMarkdown, renderHtml]) {
            expect(render(sheet)).not.toMatch(/\bNaN\b|\bInfinity\b|\bundefined\b/);
          }
        } catch (error) {
          if (!isDomainError(error)) throw error;
          refused++;
          expect(error.issues.length).toBeGreaterThan(0);
          for (const issue of error.issues) expect(issue.allowed).not.toBe('');
        }
      }),
      { numRuns: 200 },
    );
    // Both ends have to be met, or the property says nothing.
    expect(refused).toBeGreaterThan(10);
    expect(worked).toBeGreaterThan(10);
  }, 120_000);
});
