// The seat page, the torque page and the sheet reckon with the same: what one link hands on is answered alike on the other.
import { hardLimits } from '@spindlewright/quantity';
import { renderText, workJob } from 'spindlewright';
import { describe, expect, it } from 'vitest';
import { answerOf, type Block, readState } from '../../docs/bench/logic/bench.ts';
import { jobBench } from '../../docs/bench/logic/job-bench.ts';
import { seatBench } from '../../docs/bench/logic/seat-bench.ts';
import { torqueBench } from '../../docs/bench/logic/torque-bench.ts';
import { showLimits } from '../../docs/bench/logic/units.ts';

const asked = (bench: typeof seatBench, search: string): readonly Block[] =>
  answerOf(bench, { state: readState(search, bench.defaults), units: 'metric' });

const hrefs = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) => (block.kind === 'links' ? block.links.map(({ href }) => href) : []));

function searchTo(page: string, blocks: readonly Block[]): string {
  const href = hrefs(blocks).find((link) => link.startsWith(`./${page}.html`));
  if (href === undefined) throw new Error(`no link to ${page}`);
  return href.slice(`./${page}.html`.length);
}

/** The job that the sheet's page works, as it saves it. */
function jobOf(search: string): Parameters<typeof workJob>[0] {
  const [sheet] = asked(jobBench, search);
  if (sheet?.kind !== 'sheet') throw new Error(`no sheet: ${JSON.stringify(sheet)}`);
  return JSON.parse(sheet.save) as Parameters<typeof workJob>[0];
}

const toldAs = (blocks: readonly Block[], label: string): string | undefined =>
  blocks.flatMap((block) => (block.kind === 'values' ? block.rows : [])).find((row) => row.label === label)?.value;

const headline = (blocks: readonly Block[]): string =>
  blocks.flatMap((block) => (block.kind === 'headline' ? [`${block.text} ${block.detail ?? ''}`] : []))[0] ?? '';

const seats: [string, string][] = [
  ['two gaps', 'endGap=3.5&shoulderGap=3.4'],
  ['gaps with a bound of their own', 'endGap=3.5&shoulderGap=3.4&reading=0.3'],
  [
    'gaps, and all that is known of the press',
    'endGap=3.2&shoulderGap=3&torque=34&lubrication=lubricated&flats=dry&yield=400&boss=40',
  ],
  ['a bolt that bottoms', 'endGap=0.9&shoulderGap=4&strength=10.9'],
  ['names', 'spindle=square-taper-jis&arm=square-taper-iso'],
  ['sizes of both', 'sEnd=12.6&sFlats=20&aMouth=13.2&aBore=16&thread=M10x1'],
  ['an arm alone', 'aMouth=13.5&aBore=15.5&size=0.01'],
  ['gaps and sizes', 'endGap=3.1&shoulderGap=2.9&sEnd=12.65&sFlats=15&sShoulder=15.5&aMouth=13.55&aBore=15.5'],
];

describe('the seat page and the sheet', () => {
  it.each(seats)('say the same of %s', (_name, search) => {
    const blocks = asked(seatBench, search);
    const { seat, headline: said, state } = workJob(jobOf(searchTo('job', blocks)));
    if (seat === undefined) throw new Error('the sheet has no seat');
    const { endGapMm, shoulderGapMm } = seat.lead.prediction.pressed;
    expect(toldAs(blocks, 'End gap, pressed')).toBe(showLimits(endGapMm, 'gap', 'metric'));
    expect(toldAs(blocks, 'Shoulder gap, pressed')).toBe(showLimits(shoulderGapMm, 'gap', 'metric'));
    expect(headline(blocks)).toContain(said.replace(/ The bolt .*$/, '').split('. ')[0]);
    expect(headline(blocks).startsWith('It seats')).toBe(state === 'fits');
  });
});

describe('the torque page and the sheet', () => {
  it('reckon alike with what a bolt is that nobody read', () => {
    const blocks = asked(torqueBench, '');
    const job = jobOf('?from=empty');
    const { tightening } = workJob(job);
    expect(headline(blocks)).toContain(showLimits(tightening?.press.preloadN, 'force', 'metric'));
    const words = renderText(workJob(job));
    const least = /One of class 8\.8 would stand (\d+) Nm \((\d+) with the least friction\)/.exec(
      words.replaceAll(/\s+/g, ' '),
    );
    expect(least).not.toBeNull();
    expect(Math.round(Number(toldAs(blocks, 'No more than, were it marked 8.8')?.split(' ')[0]))).toBe(
      Number(least?.[2]),
    );
  });

  it.each(['', 'lubrication=lubricated&strength=12.9&torque=34', 'lubrication=dry&thread=M10x1'])(
    'press with the same preload, handed on by the seat page: %s',
    (search) => {
      const seat = asked(seatBench, `endGap=3.5&shoulderGap=3.4&${search}`);
      const torque = asked(torqueBench, searchTo('torque', seat));
      expect(headline(torque)).toContain(toldAs(seat, 'Preload that presses'));
    },
  );

  it('hand the whole range on to the seat', () => {
    const search = searchTo('seat', asked(torqueBench, 'strength=12.9&torque=34'));
    const { forceLow, force, forceHigh } = readState(search, seatBench.defaults);
    const limits = hardLimits({ lower: Number(forceLow), nominal: Number(force), upper: Number(forceHigh) });
    expect(limits.upper / limits.lower).toBeGreaterThan(2);
    // As surely as the bolt pulls and no surer: what is said there is said here.
    expect(headline(asked(torqueBench, 'strength=12.9&torque=34'))).toContain(showLimits(limits, 'force', 'metric'));
    const seat = asked(seatBench, `${search.slice(1)}&endGap=3.5&shoulderGap=3.4`);
    expect(toldAs(seat, 'Preload that presses')).toBe(showLimits(limits, 'force', 'metric'));
  });
});

describe('the sheet', () => {
  const choices = jobBench
    .groups({ state: jobBench.defaults, units: 'metric' })
    .flatMap(({ fields }) => fields)
    .flatMap(({ key, options = [] }) => (key === 'joint' ? options.map(({ value }) => value) : []));

  it.each(choices)('is made for every joint that can be chosen: %s', (joint) => {
    expect(choices.length).toBeGreaterThan(5);
    expect(asked(jobBench, `from=empty&joint=${joint}&play-at-arm=arm-moves-on-spindle`)[0]?.kind).toBe('sheet');
  });
});

describe('the seat page', () => {
  it.each(['', 'endGap=3.5&shoulderGap=3.4', 'spindle=square-taper-jis'])('has its cautions at once: %s', (search) => {
    const findings = asked(seatBench, search).flatMap((block) => (block.kind === 'findings' ? block.findings : []));
    expect(findings.map(({ code }) => code)).toContain('instructions-first');
  });
});

describe('an example', () => {
  it('is asked for, never filled in, and its sheet says so', () => {
    expect(
      Object.entries(seatBench.defaults).filter(([key, value]) => /Gap|^[sa][A-Z]/.test(key) && value !== ''),
    ).toEqual([]);
    const nothing = asked(seatBench, '');
    const actions = nothing.flatMap((block) => (block.kind === 'actions' ? block.actions : []));
    const [example] = actions;
    const shown = asked(seatBench, new URLSearchParams(example?.set).toString());
    expect(headline(shown)).toContain('An invented example.');
    expect(jobOf(searchTo('job', shown)).title).toBe('Invented example');
    // The same gaps, typed by somebody, are theirs.
    const { example: _mark, ...typed } = example?.set ?? {};
    expect(headline(asked(seatBench, new URLSearchParams(typed).toString()))).not.toContain('invented');
  });
});
