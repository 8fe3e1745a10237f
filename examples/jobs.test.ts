import { readdirSync, readFileSync } from 'node:fs';
import { checkMate } from '@spindlewright/interfaces';
import { squareTaperIso, squareTaperJis } from '@spindlewright/interfaces/records';
import { type JobSheet, readJob, renderHtml, renderMarkdown, renderText, workJob } from 'spindlewright';
import { jobSchema, jobSheetSchema } from 'spindlewright/schema';
import { describe, expect, it } from 'vitest';

const folder = new URL('./jobs/', import.meta.url);
const load = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
const work = (name: string): JobSheet => workJob(readJob(load(name)));

describe.each(readdirSync(folder).filter((name) => name.endsWith('.json')))('%s', (name) => {
  const sheet = work(name);

  it('is marked as invented, as every example is', () => {
    expect(sheet.invented).toBe(true);
    expect(renderText(sheet)).toContain('Invented example.');
  });

  it('follows the published schemas, job and sheet', () => {
    expect(jobSchema.safeParse(readJob(load(name))).error).toBeUndefined();
    expect(jobSheetSchema.safeParse(sheet).error).toBeUndefined();
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
    expect(html).toContain('<svg');
    expect(html).not.toContain('<script');
    expect(html).not.toMatch(/(?:src|href)=/);
  });

  it('carries the standing cautions and puts part maker and mechanic first', () => {
    expect(sheet.cautions.join(' ')).toMatch(/part maker's instructions come before/i);
    expect(sheet.cautions.join(' ')).toMatch(/qualified mechanic/i);
    expect(sheet.cautions.join(' ')).toMatch(/never ride without the fixing/i);
  });
});

// Expectations below were written down from how the trade judges such a case (common practice, no source).
describe('a good arm before pressing', () => {
  const sheet = work('good-arm.json');

  it('fits by its trial fit, with room left at every limit', () => {
    expect(sheet.state).toBe('fits');
    expect(sheet.seat.lead.basis).toBe('trial-fit');
    expect(sheet.seat.lead.prediction.verdict).toBe('seats');
    expect(sheet.seat.lead.prediction.worstVerdicts).toEqual({ lower: 'seats', upper: 'seats' });
  });

  it('states the lubrication of flats, thread and head, the torque in two units and the half-turn warning', () => {
    const text = renderText(sheet);
    for (const part of ['Flats: clean and dry', 'bolt head: lubricated', '34 Nm (301 lbf.in)', 'half a turn']) {
      expect(text).toContain(part);
    }
  });
});

describe('a JIS arm on an ISO spindle', () => {
  const sheet = work('mixed-standard.json');
  const { handFit, pressed, verdict } = sheet.seat.lead.prediction;

  it('shows room at both ends by hand and is stopped by the wall when pressed', () => {
    expect(handFit.endGapMm.lower).toBeGreaterThan(0.5);
    expect(handFit.shoulderGapMm.lower).toBeGreaterThan(0.5);
    expect(pressed.shoulderGapMm.nominal).toBeLessThan(0);
    expect(verdict).toBe('hits-shoulder');
    expect(sheet.state).toBe('does-not-fit');
    expect(sheet.headline).toContain('Do not ride');
  });

  it('says beside it what the published sets alone would predict: most, that the bolt lands on the spindle end', () => {
    const published = sheet.seat.others.filter((way) => way.basis === 'published-set');
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
