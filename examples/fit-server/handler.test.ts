import { fitData } from 'spindlewright';
import { describe, expect, it } from 'vitest';
import { shopMapping, shopRows } from '../screening/generate.ts';
import { fitHandler } from './handler.ts';

const invented = [
  { Artikelnummer: 'ARM-J', Warengruppe: 'Kurbelarm', Aufnahme: '4-kant JIS', Seite: 'rechts' },
  { Artikelnummer: 'ARM-I', Warengruppe: 'Kurbelarm', Aufnahme: '4-kant ISO', Seite: 'rechts' },
  { Artikelnummer: 'ARM-V', Warengruppe: 'Kurbelarm', Aufnahme: 'Vielzahn 10', Seite: 'rechts' },
  ...[...shopRows({ rows: 200, seed: 4 })].filter((row) => row !== undefined),
];
const handle = fitHandler(fitData({ parts: invented, mapping: shopMapping }), 'invented-1');
const QUERY = 'for=arm&interface=square-taper-jis&side=drive';
const ask = (path: string, init?: RequestInit): Response => handle(new Request(`https://shop.invalid${path}`, init));

describe('fitHandler', () => {
  it('answers for several parts at once, with codes and cautions', async () => {
    const response = ask(`/fit?${QUERY}&part=ARM-J&part=ARM-I&part=ARM-V&part=none`);
    const { answers } = (await response.json()) as { answers: { part: string; state: string; missingFact?: string }[] };
    expect(response.status).toBe(200);
    expect(answers.map(({ part, state, missingFact }) => [part, state, missingFact ?? ''])).toEqual([
      ['ARM-J', 'fits', ''],
      ['ARM-I', 'cannot-tell', 'trialFit.shoulderGapMm'],
      ['ARM-V', 'does-not-fit', ''],
      ['none', 'cannot-tell', 'part'],
    ]);
    expect(answers[0]).toMatchObject({ cautions: ['screen-names-first', 'screen-not-ridden-untried'] });
  });

  it('lets an answer be kept as long as data and parts stay the same', () => {
    const first = ask(`/fit?${QUERY}&part=ARM-J`);
    const etag = first.headers.get('etag') ?? '';
    expect(etag).toMatch(/^"[\w.-]+"$/);
    expect(ask(`/fit?${QUERY}&part=ARM-J`, { headers: { 'if-none-match': etag } }).status).toBe(304);
    expect(ask(`/fit?${QUERY}&part=ARM-J`, { headers: { 'if-none-match': '"other"' } }).status).toBe(200);
  });

  it.each([
    ['/other', {}, 404],
    [`/fit?${QUERY}`, {}, 400],
    ['/fit?for=saddle&part=ARM-J', {}, 400],
    [`/fit?${QUERY}&part=${'x'.repeat(200)}`, {}, 400],
    [`/fit?${QUERY}&part=ARM-J`, { method: 'DELETE' }, 405],
    [`/fit?${QUERY}&part=__proto__&part=constructor`, {}, 200],
  ])('%s %o: %i', (path, init, status) => {
    expect(ask(path, init).status).toBe(status);
  });
});
