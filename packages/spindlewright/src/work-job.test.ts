import { readFileSync } from 'node:fs';
import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import type { Job } from './job.ts';
import { readJob } from './read-job.ts';
import { renderHtml } from './render-html.ts';
import { renderMarkdown } from './render-markdown.ts';
import { renderText } from './render-text.ts';
import type { JobSheet } from './sheet.ts';
import { workJob } from './work-job.ts';

const load = (name: string): Job =>
  readJob(JSON.parse(readFileSync(new URL(`../../../examples/jobs/${name}.json`, import.meta.url), 'utf8')));
const good = load('good-arm');
const noise = load('noise-elsewhere');
const settled = load('recheck-after-settling');
const codes = (sheet: JobSheet): string[] => sheet.findings.map(({ code }) => code);
const told = (sheet: JobSheet): string => [sheet.headline, ...sheet.forOwner].join(' ');

// What each case has to come to is common practice (no source): nothing that is unsafe may hide behind something that is not.
describe('the gravest of what a job knows leads its answer', () => {
  it('a bolt whose class was read and is too weak keeps the bike at the stand', () => {
    const sheet = workJob({ ...good, fixing: { thread: 'M8x1', lubrication: 'lubricated', propertyClass: '8.8' } });
    expect(codes(sheet)).toContain('bolt-class-too-weak');
    expect(sheet.doNotRide).toBe(true);
    expect(told(sheet)).toMatch(/too weak/);
    expect(sheet.sections.some(({ id }) => id === 'buy')).toBe(true);
    expect(renderText(sheet)).not.toContain('How to tighten it\n');
  });

  it('a class that was not read is only ever a caution that asks for the head mark', () => {
    const finding = workJob(good).findings.find(({ code }) => code === 'head-mark-needed');
    expect(finding?.severity).toBe('caution');
  });

  it('the other side leads when it is the worse one', () => {
    const sheet = workJob({
      ...noise,
      otherSide: { observations: { 'bore-flats': 'cracked', 'bolt-on-arrival': 'turns-before-torque' } },
    });
    expect(sheet.doNotRide).toBe(true);
    expect(sheet.headline).toMatch(/^On the non-drive side.*cracked/);
    expect(sheet.forOwner[0]).toMatch(/other \(non-drive\) side.*cracked/);
  });

  it('an arm that is condemned does not fit, however well it seats, and is not tightened', () => {
    const sheet = workJob({ ...good, observations: { 'bore-flats': 'cracked' } });
    expect(sheet.seat?.lead.prediction.verdict).toBe('seats');
    expect(sheet.state).toBe('does-not-fit');
    expect(sheet.diagnosis?.result.action).toBe('replace-arm');
    expect(renderText(sheet)).not.toContain('How to tighten it\n');
  });

  it('a seat that fails is told beside a diagnosis that would let it ride', () => {
    const sheet = workJob({ ...noise, trialFit: { endGapMm: 0.1, shoulderGapMm: 5 } });
    expect(sheet.doNotRide).toBe(true);
    expect(told(sheet)).toMatch(/spindle end|cannot press it tight/);
  });

  it('a seat that is open is not hidden by a diagnosis that would let it ride', () => {
    const sheet = workJob({ ...noise, arm: { bossDiameterMm: 38 } });
    expect(sheet.state).toBe('cannot-tell');
    expect(sheet.answer).not.toBe('May be ridden');
    expect(renderHtml(sheet)).not.toContain('class="answer yes"');
  });
});

describe('what a second look found to hide', () => {
  it('a broken bolt on the other side is told, though the joint there may be sound', () => {
    const sheet = workJob({ ...noise, otherSide: { observations: { 'bolt-on-arrival': 'broken' } } });
    expect(sheet.doNotRide).toBe(true);
    expect(sheet.headline).toMatch(/On the non-drive side/);
    expect(sheet.headline).not.toMatch(/ride it\./);
  });

  it('a torque far from the trade is no fit and no plan', () => {
    const sheet = workJob({ ...good, trialFit: { endGapMm: 3, shoulderGapMm: 2.8 }, partMakerTorqueNm: 10 });
    expect(sheet.state).toBe('cannot-tell');
    expect(sheet.missingFact).toBe('partMakerTorqueNm');
    expect(renderText(sheet)).not.toContain('How to tighten it\n');
  });

  it('a condemned arm is not offered to be kept', () => {
    const sheet = workJob({
      ...good,
      observations: { 'bore-flats': 'cracked' },
      trialFit: { endGapMm: 0.85, shoulderGapMm: 0.65 },
    });
    expect(sheet.answer).not.toBe('Cannot tell yet');
    const rows = sheet.sections
      .find(({ id }) => id === 'buy')
      ?.blocks.flatMap((b) => (b.kind === 'table' ? b.rows : []));
    expect(rows?.map(([first]) => first)).toContain('arm: joint');
    expect(JSON.stringify(rows)).not.toContain('or a spindle');
  });

  it('the gap of an arm that might be fitted does not clear the bolt of the one that sits', () => {
    const fixing = {
      thread: 'M8x1',
      lubrication: 'lubricated',
      lengthUnderHeadMm: 28,
      threadDepthMm: 24,
      washerThicknessMm: 1.5,
    } as const;
    const loose = { ...settled, fixing, measurements: { endGapMm: 1 } };
    const alone = workJob(loose).tightening?.fixing?.state;
    const { arm, trialFit } = good;
    const candidates = [{ name: 'other arm', interface: 'square-taper-jis', arm: arm ?? {}, trialFit: trialFit ?? {} }];
    expect(alone).toBe('does-not-fit');
    expect(workJob({ ...loose, candidates }).tightening?.fixing?.state).toBe(alone);
  });

  it('a washer that nobody looked for is asked about, not declared missing', () => {
    const fixing = { thread: 'M8x1', lubrication: 'lubricated', lengthUnderHeadMm: 18, threadDepthMm: 24 } as const;
    const sheet = workJob({ ...good, fixing });
    expect(codes(sheet)).toContain('washer-not-read');
    expect(sheet.findings.some(({ severity }) => severity === 'stop')).toBe(false);
  });
});

describe('faults of the bolt that need no length', () => {
  const fixing = { thread: 'M8x1', lubrication: 'lubricated' } as const;
  it.each([
    ['another thread in the spindle', { ...fixing, spindleThread: 'M10x1' }, 'spindle-thread-differs'],
    ['no washer under a plain head', { ...fixing, washerThicknessMm: 0, head: 'plain' }, 'no-washer-under-plain-head'],
  ] as const)('%s is a stop', (_, given, code) => {
    const sheet = workJob({ ...good, fixing: given });
    expect(sheet.findings.find((finding) => finding.code === code)?.severity).toBe('stop');
    expect(sheet.doNotRide).toBe(true);
  });

  it('is told by a finding when the bolt itself could not be checked', () => {
    expect(codes(workJob(good))).toContain('fixing-not-checked');
  });

  it('asks about a thread that the joint does not have', () => {
    expect(codes(workJob({ ...good, fixing: { ...fixing, thread: 'M14x1.5' } }))).toContain('unusual-fixing-thread');
  });
});

describe('readings that cannot all be true', () => {
  it('lead to "measure again", not to a fit', () => {
    const sheet = workJob({ ...good, trialFit: { endGapMm: 3.7, shoulderGapMm: 9 } });
    expect(sheet.state).toBe('cannot-tell');
    expect(sheet.headline).toMatch(/Measure again/);
  });

  it('a nominal failure whose best case is a good seat is open, and still not to be ridden', () => {
    const sheet = workJob({ ...good, trialFit: { endGapMm: 0.85, shoulderGapMm: 0.65 } });
    expect(sheet.state).not.toBe('fits');
    expect(sheet.doNotRide).toBe(true);
  });
});

describe("the part maker's torque", () => {
  it('is doubted when it is far from the trade', () => {
    expect(codes(workJob({ ...good, partMakerTorqueNm: 3.4 }))).toContain('torque-far-from-trade');
    expect(codes(workJob(good))).not.toContain('torque-far-from-trade');
  });

  it('is printed as it was given', () => {
    expect(renderText(workJob({ ...good, partMakerTorqueNm: 34.5 }))).toContain('34.5 Nm');
    const range = workJob({ ...good, partMakerTorqueNm: { lower: 32, nominal: 34, upper: 36 } });
    expect(renderText(range)).toContain("within the part maker's 32 to 36 Nm");
  });
});

describe('a job that only asks about arms at hand', () => {
  const { trialFit: _t, arm, ...rest } = good;
  const candidate = { name: 'arm of the shelf', interface: 'square-taper-jis' };

  it('is answered by them', () => {
    const fits = workJob({
      ...rest,
      candidates: [
        { ...candidate, ...(arm === undefined ? {} : { arm }), trialFit: { endGapMm: 3.7, shoulderGapMm: 3.5 } },
      ],
    });
    expect(fits.headline).toMatch(/^Fits this spindle.*arm of the shelf/);
    const none = workJob({ ...rest, candidates: [{ ...candidate, trialFit: { endGapMm: 0.1, shoulderGapMm: 3 } }] });
    expect(none.headline).toMatch(/^None of the arms/);
    expect(none.doNotRide).toBe(true);
  });
});

describe('how sure the sheet sounds', () => {
  it('hedges a condition that is not nearly certain', () => {
    const sheet = workJob({ ...settled, observations: { 'play-at-arm': 'arm-moves-on-spindle' }, measurements: {} });
    const top = sheet.diagnosis?.result.conditions[0]?.probability ?? 1;
    expect(top).toBeLessThan(0.9);
    expect(sheet.headline).toMatch(/Most likely \(\d+ in 100\)|Not yet known/);
  });

  it('names no id of the code and no path', () => {
    for (const name of ['bore-gone', 'mixed-standard', 'bearing-not-arm', 'too-little-engagement']) {
      const text = renderText(workJob(load(name))).split('What this rests on')[0] ?? '';
      expect(text).not.toMatch(/hits-shoulder|bottoms-on-end|square-taper-|pressing\.|trialFit|Mm\b/);
    }
  });

  it('cites no source that its list does not hold', () => {
    for (const name of ['bore-gone', 'mixed-standard']) {
      const sheet = workJob(load(name));
      const cited = [...renderText(sheet).matchAll(/\[([a-z0-9-]+(?:,\s+[a-z0-9-]+)*)\]/g)].flatMap(([, ids]) =>
        (ids ?? '').split(/,\s+/).filter((id) => id.includes('-') && !/^(from-memory|common-practice)$/.test(id)),
      );
      expect(cited.length).toBeGreaterThan(5);
      expect(sheet.provenance.sources).toEqual(expect.arrayContaining(cited));
    }
  });
});

describe('refusals name the field of the job', () => {
  it.each([
    ['fixing.thread', { fixing: { thread: 'M8x', lubrication: 'dry' } }],
    ['fixing.propertyClass', { fixing: { thread: 'M8x1', lubrication: 'dry', propertyClass: '8.9' } }],
    ['candidates', { candidates: [] }],
    ['candidates[0].trialFit', { candidates: [{ name: 'a', interface: 'square-taper-jis', trialFit: {} }] }],
    ['candidates[0].interface', { candidates: [{ name: 'a', interface: 'unknown' }] }],
    ['otherSide.observations.bore-flats', { observations: {}, otherSide: { observations: { 'bore-flats': 'round' } } }],
    ['interface.arm', { interface: { spindle: 'square-taper-jis', arm: 'square-taper-jsi' } }],
  ])('%s', (path, change) => {
    try {
      workJob(readJob({ ...good, ...change }));
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
    }
  });
});

describe('renderers', () => {
  it('write Markdown with headings and tables, escaping what the job says', () => {
    const text = renderMarkdown(workJob({ ...good, title: 'a|b *c* &lt;' }));
    expect(text.startsWith('# a\\|b \\*c\\* \\&lt;')).toBe(true);
    expect(text).toMatch(/\n\| clearance \| pushed on by hand \| pressed \|\n\| --- \| --- \| --- \|\n/);
    expect(text).toContain('## How to tighten it');
  });

  it('refuse a sheet that was tampered with', () => {
    const sheet = workJob(load('mixed-standard'));
    const bad = JSON.parse(JSON.stringify(sheet).replaceAll('"severity":"stop"', '"severity":"\\"><script>"'));
    expect(() => renderHtml(bad)).toThrow(/blocks/);
    expect(() => renderHtml({ format: 'spindlewright-sheet-1' } as JobSheet)).toThrow(/title/);
  });

  it('escape what the job says', () => {
    const html = renderHtml(workJob({ ...good, title: '<img src=x onerror=1>', bike: '"&\'' }));
    expect(html).not.toContain('<img');
    expect(html).toContain('&quot;&amp;&#39;');
    expect(renderText(workJob({ ...good, title: 'a\u001b[31mb' }))).not.toContain('\u001b');
  });
});
