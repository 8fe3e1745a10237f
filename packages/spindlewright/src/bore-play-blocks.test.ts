import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../test/demo-job.ts';
import { borePlayBlocks } from './bore-play-blocks.ts';
import type { Job } from './job.ts';
import { readJob } from './read-job.ts';
import { renderHtml } from './render-html.ts';
import { renderMarkdown } from './render-markdown.ts';
import { renderText } from './render-text.ts';
import { workJob } from './work-job.ts';

const job: Job = {
  ...demoJob,
  observations: { 'play-at-arm': 'arm-moves-on-spindle' },
  measurements: { playAngleDeg: 2 },
};
const load = (name: string): Job =>
  readJob(JSON.parse(readFileSync(new URL(`../../../examples/jobs/${name}.json`, import.meta.url), 'utf8')));

describe('the play of the bore', () => {
  // By hand: 2 deg from stop to stop are f = 1 deg either way. Square 12.65 mm at the end and 0.489 mm wider 7 mm in, so
  // h = 6.57 mm, and with corners on 16.5 mm b/2 = sqrt(8.25^2 - 6.57^2) = 4.99 mm. c = 4.99 sin f - 2 * 6.57 sin^2(f/2)
  // = 0.0871 - 0.0010 = 0.086 mm; advance c/tan 2 deg = 2.5 mm; arc 170 mm * 0.0349 = 5.9 mm.
  it('is a clearance, an arc at the pedal and an advance', () => {
    const [text, drawing] = borePlayBlocks(job);
    const said = text?.kind === 'paragraph' ? text.text : '';
    expect(said).toContain('some 0.09 mm on each side of the square, 5.9 mm at the pedal');
    expect(said).toContain('sit 2.5 mm farther in');
    expect(drawing?.kind === 'drawing' && drawing.description).toContain('not to be ridden');
  });

  it.each<[string, Partial<Job>]>([
    ['no play was read', { measurements: {} }],
    ['there is none', { measurements: { playAngleDeg: 0 } }],
    ['it is that of the bearing', { observations: { 'play-at-arm': 'both-arms-together' } }],
    ['the joint has no square', { interface: { spindle: 'spline-10', arm: 'spline-10' } }],
    ['nothing stops it', { measurements: { playAngleDeg: 90 } }],
  ])('is left out where %s', (_, change) => {
    expect(borePlayBlocks({ ...job, ...change })).toEqual([]);
  });
});

describe('the drawings of a sheet', () => {
  const sheet = workJob(load('bore-gone'));
  const drawings = [sheet, workJob(load('good-arm'))].flatMap(({ sections }) =>
    sections.flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'drawing' ? [block] : []))),
  );

  it('are seat, chances, both sides, preload, probabilities and bore play, each with its words', () => {
    const kinds = drawings.map(({ narrowSvg }) => /data-picture="([^"]+)"/.exec(narrowSvg)?.[1] ?? '');
    for (const kind of ['seat', 'seat-distribution', 'sides', 'preload-range', 'diagnosis', 'bore-play']) {
      expect(kinds).toContain(kind);
    }
    for (const { narrowSvg, wideSvg, description } of drawings) {
      expect(description.length).toBeGreaterThan(30);
      for (const svg of [narrowSvg, wideSvg]) {
        expect(svg).toMatch(/<title[^>]*>[^<]+<\/title>/);
        expect(svg).toMatch(/<desc[^>]*>[^<]{20,}<\/desc>/);
      }
    }
  });

  it('of probabilities is drawn on the page, and left out where the table before it says the same', () => {
    expect(renderHtml(sheet)).toContain('<figure class="told">');
    expect(renderText(sheet)).not.toContain('[drawing] The hole of the arm is deformed');
    expect(renderText(sheet).match(/\[drawing\]/g)?.length).toBe(renderMarkdown(sheet).match(/\*Drawing:\*/g)?.length);
  });
});
