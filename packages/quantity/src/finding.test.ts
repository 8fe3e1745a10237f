import { describe, expect, it } from 'vitest';
import { createFinding } from './finding.ts';

const parts = { code: 'end-gap-small', severity: 'caution', template: 'Gap {endGapMm:1} mm of {of}.' } as const;
const refusal = (...issues: object[]): Error => expect.objectContaining({ name: 'DomainError', issues }) as Error;

describe('createFinding', () => {
  it('puts sentence, values, sources and path together', () => {
    expect(
      createFinding({ ...parts, values: { endGapMm: 0.25, of: 'two' }, sources: ['shigley-9'], path: 'arm' }),
    ).toEqual({
      code: 'end-gap-small',
      severity: 'caution',
      message: 'Gap 0.3 mm of two.',
      values: { endGapMm: 0.25, of: 'two' },
      sources: ['shigley-9'],
      path: 'arm',
    });
  });

  it('needs neither values nor sources nor a path', () => {
    const finding = createFinding({ code: 'x', severity: 'note', template: 'Look.' });
    expect(finding).toEqual({ code: 'x', severity: 'note', message: 'Look.', values: {}, sources: [] });
    expect(Object.keys(finding)).not.toContain('path');
  });

  it('shows a placeholder that has no value', () => {
    expect(createFinding({ ...parts, values: { endGapMm: 1 } }).message).toBe('Gap 1.0 mm of {of}.');
  });

  it('shares nothing with its input', () => {
    const values = { endGapMm: 1 };
    const sources = ['shigley-9'];
    const finding = createFinding({ ...parts, values, sources });
    values.endGapMm = 2;
    sources.push('nist-sp-811');
    expect(finding.values).toEqual({ endGapMm: 1 });
    expect(finding.sources).toEqual(['shigley-9']);
  });

  it('equals its JSON round trip, a negative zero included', () => {
    const finding = createFinding({ ...parts, values: { endGapMm: -0, of: '' } });
    expect(finding.values).toEqual({ endGapMm: 0, of: '' });
    expect(JSON.parse(JSON.stringify(finding))).toEqual(finding);
    expect(structuredClone(finding)).toEqual(finding);
  });

  it.each<[unknown, string]>([
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    [undefined, 'nothing'],
    [null, 'null'],
    [true, 'true'],
    [1n, 'a bigint'],
    [[1], 'a list of 1'],
  ])('refuses %o as a value, which would not survive JSON', (value, received) => {
    expect(() => createFinding({ ...parts, values: { of: 'x', endGapMm: value as number } })).toThrow(
      refusal({ path: 'values.endGapMm', received, allowed: 'a finite number or a text' }),
    );
  });

  it.each<[object, object]>([
    [{ severity: 'warning' }, { path: 'severity', received: '"warning"', allowed: 'stop, caution, note' }],
    [
      { severity: 'cauton' },
      { path: 'severity', received: '"cauton"', allowed: 'stop, caution, note', nearest: 'caution' },
    ],
    [{ template: undefined }, { path: 'template', received: 'nothing', allowed: 'a text' }],
    [{ template: '' }, { path: 'template', received: '""', allowed: 'a sentence' }],
    [{ code: '' }, { path: 'code', received: '""', allowed: 'a code such as bottoms-on-end' }],
    [{ code: 'End gap' }, { path: 'code', received: '"End gap"', allowed: 'a code such as bottoms-on-end' }],
    [{ code: 'end-' }, { path: 'code', received: '"end-"', allowed: 'a code such as bottoms-on-end' }],
    [{ code: 3 }, { path: 'code', received: '3', allowed: 'a text' }],
    [{ sources: 'shigley-9' }, { path: 'sources', received: '"shigley-9"', allowed: 'a list, each a text' }],
    [{ sources: [1] }, { path: 'sources[0]', received: '1', allowed: 'a text' }],
    [{ path: 3 }, { path: 'path', received: '3', allowed: 'a text' }],
    [{ values: null }, { path: 'values', received: 'null', allowed: 'an object of numbers and texts' }],
    [
      { source: [] },
      {
        path: 'source',
        received: 'an unknown key with a list of 0',
        allowed: 'an object with code, severity, template, sources, path',
        nearest: 'sources',
      },
    ],
  ])('refuses %o', (change, issue) => {
    expect(() => createFinding({ ...parts, ...change })).toThrow(refusal(issue));
  });

  it('refuses an input that is no object', () => {
    expect(() => createFinding(undefined as unknown as typeof parts)).toThrow(
      refusal(
        { path: 'code', received: 'nothing', allowed: 'a text' },
        { path: 'severity', received: 'nothing', allowed: 'stop, caution, note' },
        { path: 'template', received: 'nothing', allowed: 'a text' },
      ),
    );
  });
});
