// The moving figures of the theory pages: complete, inside their frame, and true to the formulas beside them.
import { describe, expect, it } from 'vitest';
import { figures, type TheoryFigure } from '../../docs/theory/figures.ts';
import { filesOf, readText } from '../workspace.ts';

const all = Object.entries(figures);
const stations = ({ x: { min, max } }: TheoryFigure): number[] =>
  [0, 1, 2, 3, 4].map((k) => min + ((max - min) * k) / 4);

describe.each(all)('%s', (name, figure) => {
  it('stands on one page', () => {
    const pages = filesOf('docs/theory/*.md').filter((path) =>
      readText(path).includes(`<TheoryFigure name="${name}" />`),
    );
    expect(pages).toHaveLength(1);
  });

  it.each(figure.choice.options)('stays in its frame and says something of every place, %s', (choice) => {
    const told = stations(figure).map((x) => figure.tell(x, choice));
    expect(new Set(told).size).toBe(told.length);
    for (const { at, to } of figure.curves(choice)) {
      const values = stations(figure).flatMap((x) => [at(x), ...(to === undefined ? [] : [to(x)])]);
      for (const value of values) {
        expect(value).toBeGreaterThanOrEqual(figure.y.min);
        expect(value).toBeLessThanOrEqual(figure.y.max);
      }
    }
  });

  it('names a choice and a place to begin with that it has', () => {
    expect(figure.choice.options).toContain(figure.choice.start);
    expect(figure.x.start).toBeGreaterThan(figure.x.min);
    expect(figure.x.start).toBeLessThan(figure.x.max);
  });
});

describe('the formulas beside the figures', () => {
  const tan = (deg: number): number => Math.tan((deg * Math.PI) / 180);
  const value = (name: string, x: number, choice: string, curve = 0): number =>
    figures[name]?.curves(choice)[curve]?.at(x) ?? Number.NaN;

  it('hand fit is (A - S)/(2 tan a)', () => {
    expect(value('hand-fit', 13.6, '2°')).toBeCloseTo(1 / (2 * tan(2)), 9);
    expect(value('hand-fit', 13.3, '1.8°')).toBeCloseTo(0.7 / (2 * tan(1.8)), 9);
  });

  it('off over on is (mu - tan a)/(mu + tan a)', () => {
    expect(value('self-holding', 2, '0.10')).toBeCloseTo((100 * (0.1 - tan(2))) / (0.1 + tan(2)), 9);
    expect(value('self-holding', 9, '0.05')).toBeCloseTo((100 * (0.05 - tan(9))) / (0.05 + tan(9)), 9);
  });

  it('a cotter comes out with B (tan(phi - a) + tan phi), the force on the flat kept', () => {
    const phi = (Math.atan(0.12) * 180) / Math.PI;
    const across = 10 / (tan(5 + phi) + 0.12);
    // N is kept when the direction turns; B = N (cos a - m sin a) on the way in is N (cos a + m sin a) on the way out.
    const kept = (across * (1 + 0.12 * tan(5))) / (1 - 0.12 * tan(5));
    expect(value('cotter', 5, '0.12')).toBeCloseTo(kept * (tan(phi - 5) + 0.12), 9);
  });

  it('what is left to the stop falls evenly from the gap by hand to nothing at 15 kN', () => {
    expect(value('spline', 0, '0.5 mm')).toBe(0.5);
    expect(value('spline', 7.5, '0.5 mm')).toBeCloseTo(0.25, 9);
    expect(value('spline', 20, '0.5 mm')).toBe(0);
  });

  it('a clamp slips at 4/pi mu N d by the cosine, 8000 N twice over levers of 30 and 15 mm', () => {
    expect(value('pinch', 8, '0.15', 1)).toBeCloseTo(((4 / Math.PI) * 0.15 * 2 * 8000 * 2 * 24) / 1000, 6);
  });
});
