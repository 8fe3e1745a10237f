// What a page says that a bench answers is asked of the bench: every link that carries answers in its address.
import { describe, expect, it } from 'vitest';
import { answerOf, type Bench, type Block, readState } from '../../docs/bench/logic/bench.ts';
import { diagnosisBench } from '../../docs/bench/logic/diagnosis-bench.ts';
import { identifyBench } from '../../docs/bench/logic/identify-bench.ts';
import { jobBench } from '../../docs/bench/logic/job-bench.ts';
import { seatBench } from '../../docs/bench/logic/seat-bench.ts';
import { torqueBench } from '../../docs/bench/logic/torque-bench.ts';
import { filesOf, readText } from '../workspace.ts';

const BENCHES: Record<string, Bench> = {
  seat: seatBench,
  torque: torqueBench,
  diagnosis: diagnosisBench,
  identify: identifyBench,
  job: jobBench,
};

interface BenchLink {
  place: string;
  name: string;
  search: string;
  /** The sentence in bold that the page gives as the answer; none when it gives none. */
  said?: string;
}

/** Links to a bench with a query, and what stands behind "says:". */
function linksOf(path: string, text: string): BenchLink[] {
  const pattern = /\]\([./]*bench\/(\w+)(?:\.md|\.html)?(\?[^)\s]*)\)(?:\s+says:\s+\*\*([^*]+)\*\*)?/g;
  return [...text.matchAll(pattern)].map(([, name = '', search = '', said], index) => ({
    place: `${path}, link ${index + 1}`,
    name,
    search,
    ...(said === undefined ? {} : { said: said.replaceAll(/\s+/g, ' ') }),
  }));
}

function answered({ name, search }: BenchLink): readonly Block[] {
  const bench = BENCHES[name];
  if (bench === undefined) throw new Error(`no bench is called ${name}`);
  const unknown = [...new URLSearchParams(search).keys()].filter((key) => key !== 'units' && !(key in bench.defaults));
  if (unknown.length > 0) throw new Error(`the ${name} bench knows no ${unknown.join(', ')}`);
  return answerOf(bench, { state: readState(search, bench.defaults), units: 'metric' });
}

const headline = (blocks: readonly Block[]): string | undefined =>
  blocks.flatMap((block) => (block.kind === 'headline' ? [block.text] : []))[0];

const links = filesOf('docs/**/*.md')
  .filter((path) => !/^docs\/(api|atlas|codes|data|validation)\//.test(path))
  .flatMap((path) => linksOf(path, readText(path)));

describe('what pages say of the benches', () => {
  it('is said often enough to be worth asking', () => {
    expect(links.filter(({ said }) => said !== undefined).length).toBeGreaterThanOrEqual(6);
  });

  it.each(links.map((link): [string, BenchLink] => [link.place, link]))('%s', (_place, link) => {
    const blocks = answered(link);
    expect(headline(blocks)).not.toBe('This does not go together yet');
    if (link.said !== undefined) expect(headline(blocks)).toBe(link.said);
    else expect(blocks.length).toBeGreaterThan(0);
  });

  it('is held against a wrong sentence and an unknown key', () => {
    const [link] = linksOf('x', '[a](../bench/seat.md?endGap=0.9&shoulderGap=4) says: **It seats**');
    expect(headline(answered(link as BenchLink))).not.toBe(link?.said);
    const [odd] = linksOf('x', '[a](../bench/seat.md?endgap=0.9)');
    expect(() => answered(odd as BenchLink)).toThrow('knows no endgap');
  });
});
