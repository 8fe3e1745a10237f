import { readdirSync, readFileSync } from 'node:fs';
import { checkMate } from '@spindlewright/interfaces';
import { squareTaperIso, squareTaperJis } from '@spindlewright/interfaces/records';
import { type JobSheet, readJob, renderHtml, renderMarkdown, renderText, workJob } from 'spindlewright';
import { jobJsonSchema, jobSchema, jobSheetJsonSchema, jobSheetSchema } from 'spindlewright/schema';
import { describe, expect, it } from 'vitest';
import { z } from 'zod/v4';

const folder = new URL('./jobs/', import.meta.url);
const load = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
const work = (name: string): JobSheet => workJob(readJob(load(name)));

// Read back from the JSON Schema alone, as another program would, and not from the schema that it was derived from.
const published = {
  job: z.fromJSONSchema(JSON.parse(JSON.stringify(jobJsonSchema()))),
  sheet: z.fromJSONSchema(JSON.parse(JSON.stringify(jobSheetJsonSchema()))),
};

it('publishes both schemas by name, and they refuse what is wrong', () => {
  expect(jobJsonSchema().$id).toBe('urn:spindlewright:schema:job');
  expect(jobSheetJsonSchema().$id).toBe('urn:spindlewright:schema:job-sheet');
  const sheet = work('good-arm.json');
  expect(published.sheet.safeParse({ ...sheet, state: 'perhaps' }).success).toBe(false);
  expect(published.sheet.safeParse({ ...sheet, extra: 1 }).success).toBe(false);
  expect(published.job.safeParse({ ...(load('good-arm.json') as object), side: 'left' }).success).toBe(false);
});

describe.each(readdirSync(folder).filter((name) => name.endsWith('.json')))('%s', (name) => {
  const sheet = work(name);

  it('is marked as invented, as every example is', () => {
    expect(sheet.invented).toBe(true);
    expect(renderText(sheet)).toContain('Invented example.');
  });

  it('follows the published schemas, job and sheet', () => {
    expect(jobSchema.safeParse(readJob(load(name))).error).toBeUndefined();
    expect(jobSheetSchema.safeParse(sheet).error).toBeUndefined();
    expect(published.job.safeParse(readJob(load(name))).error).toBeUndefined();
    expect(published.sheet.safeParse(JSON.parse(JSON.stringify(sheet))).error).toBeUndefined();
  });

  it('equals its round trip through JSON and can be cloned', () => {
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
    expect(structuredClone(sheet)).toEqual(sheet);
  });

  it('says the same in every form', () => {
    const squeezed = (text: string): string => text.replace(/\\/g, '').replace(/\s+/g, ' ');
    for (const render of [renderText, renderMarkdown]) expect(squeezed(render(sheet))).toContain(sheet.headline);
    const html = renderHtml(sheet);
    for (const section of sheet.sections) expect(html).toContain(`id="${section.id}"`);
    if (sheet.seat !== undefined) expect(html).toContain('<svg');
    expect(html).not.toContain('<script');
    expect(html).not.toMatch(/(?:src|href)=/);
  });

  it('carries the standing cautions and puts part maker and mechanic first', () => {
    expect(sheet.cautions.join(' ')).toMatch(/part maker's instructions come before/i);
    expect(sheet.cautions.join(' ')).toMatch(/qualified mechanic/i);
    expect(sheet.cautions.join(' ')).toMatch(/never ride without the fixing/i);
  });
});

interface Expectation {
  condition?: string;
  causes?: string[];
  beside?: string;
  action?: string;
  doNotRide?: boolean;
  verdict?: string;
  state?: string;
  fixing?: string;
  candidates?: Record<string, string>;
}

const expectations: { jobs: Record<string, Expectation> } = JSON.parse(
  readFileSync(new URL('./expectations.json', import.meta.url), 'utf8'),
);

// What common practice says of each case (no source), written down before the jobs were first run.
describe.each(Object.entries(expectations.jobs))('%s, by common practice', (name, expected) => {
  const sheet = work(`${name}.json`);
  const result = sheet.diagnosis?.result;

  it('ends with the diagnosis, action and verdict that a mechanic would give', () => {
    const found: Expectation = {
      ...(expected.condition === undefined ? {} : { condition: result?.conditions[0]?.id ?? 'none' }),
      ...(expected.beside === undefined
        ? {}
        : { beside: result?.besides.find(({ probability }) => probability >= 0.5)?.id ?? 'none' }),
      ...(expected.action === undefined ? {} : { action: result?.action ?? 'none' }),
      ...(expected.doNotRide === undefined ? {} : { doNotRide: sheet.doNotRide }),
      ...(expected.verdict === undefined ? {} : { verdict: sheet.seat?.lead.prediction.verdict ?? 'none' }),
      ...(expected.state === undefined ? {} : { state: sheet.state }),
      ...(expected.fixing === undefined
        ? {}
        : {
            fixing: sheet.tightening?.fixing?.findings.find(({ severity }) => severity === 'stop')?.code ?? 'none',
          }),
      ...(expected.candidates === undefined
        ? {}
        : { candidates: Object.fromEntries(sheet.candidates.map((candidate) => [candidate.name, candidate.state])) }),
    };
    const { causes, ...rest } = expected;
    expect(found).toEqual(rest);
    if (causes !== undefined) expect(causes).toContain(result?.causes[0]?.id);
  });

  it('tells the owner in at most three sentences, and says not to ride where that is the answer', () => {
    expect(sheet.forOwner.length).toBeGreaterThan(0);
    expect(sheet.forOwner.length).toBeLessThanOrEqual(3);
    // The standing cautions always say it, so only headline and owner's words count.
    const told = [sheet.headline, ...sheet.forOwner].join(' ');
    if (sheet.doNotRide) expect(told).toMatch(/not to be ridden|do not ride/i);
    else expect(sheet.headline).not.toMatch(/not to be ridden|do not ride/i);
  });
});

it('has an expectation for every job and a job for every expectation', () => {
  const names = readdirSync(folder).map((name) => name.replace('.json', ''));
  expect(names.sort()).toEqual(Object.keys(expectations.jobs).sort());
});

describe('a good arm before pressing', () => {
  const sheet = work('good-arm.json');

  it('fits by its trial fit, with room left at every limit', () => {
    expect(sheet.seat?.lead.basis).toBe('trial-fit');
    expect(sheet.seat?.lead.prediction.worstVerdicts).toEqual({ lower: 'seats', upper: 'seats' });
  });

  it('states the lubrication of flats, thread and head, the torque in two units and the half-turn warning', () => {
    const text = renderText(sheet);
    for (const part of ['Flats: clean and dry', 'bolt head: lubricated', '34 Nm (301 lbf.in)', 'half a turn']) {
      expect(text).toContain(part);
    }
  });
});

describe('a JIS arm on an ISO spindle', () => {
  const { seat, headline } = work('mixed-standard.json');

  it('shows room at both ends by hand and is stopped by the wall when pressed', () => {
    expect(seat?.lead.prediction.handFit.endGapMm.lower).toBeGreaterThan(0.5);
    expect(seat?.lead.prediction.handFit.shoulderGapMm.lower).toBeGreaterThan(0.5);
    expect(seat?.lead.prediction.pressed.shoulderGapMm.nominal).toBeLessThan(0);
    expect(headline).toContain('Do not ride');
  });

  it('says beside it what the published sets alone would predict: most, that the bolt lands on the spindle end', () => {
    const published = (seat?.others ?? []).filter((way) => way.basis === 'published-set');
    const bottoming = published.filter((way) => way.prediction.verdict === 'bottoms-on-end');
    expect(published.length).toBeGreaterThan(4);
    expect(bottoming.length).toBeGreaterThan(published.length / 2);
  });

  it('sits deeper than on its own spindle by every set, and the other mix sits farther out', () => {
    const deeper = checkMate({ spindle: squareTaperIso, arm: squareTaperJis });
    const outer = checkMate({ spindle: squareTaperJis, arm: squareTaperIso });
    for (const { shiftMm } of deeper.shiftMm) expect(shiftMm.lower).toBeGreaterThan(0);
    for (const { shiftMm } of outer.shiftMm) expect(shiftMm.upper).toBeLessThan(0);
  });
});

describe('the wrench of the arm that moves, a 250 mm one that ends at 250 lbf.in', () => {
  // 34 Nm / 0.1129848290276167 Nm per lbf.in = 300.9 lbf.in; L (300.9/250 - 1) = 50.9 mm, so 55 mm in steps of 5 mm;
  // setting = 300.9 x 250/305 = 246.7 lbf.in (rule of the in-line extension: torque-adapter-rule).
  it('gets the way out in its own unit', () => {
    const wrench = work('bore-gone.json').tightening?.wrench;
    expect(wrench).toMatchObject({ unit: 'lbf.in', reach: 'with-extension', extensionLengthMm: 55 });
    expect(wrench?.setting).toBeCloseTo(246.7, 1);
  });
});
