import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPicture } from '../test/picture-reader.ts';
import { type DiagnosisPicture, describeDiagnosis } from './describe-diagnosis.ts';
import { drawDiagnosis } from './draw-diagnosis.ts';

const picture: DiagnosisPicture = {
  conditions: [
    { label: 'Bore deformed', probability: 0.83 },
    { label: 'Loose <but> sound', probability: 0.125 },
    { label: 'Arm cracked', probability: 0.004 },
  ],
};

const bars = (input: DiagnosisPicture): { scale: number; widths: number[] } => {
  const { elements } = readPicture(drawDiagnosis(input));
  const view = elements.find(({ attributes }) => attributes['data-px-per-unit'] !== undefined);
  return {
    scale: Number(view?.attributes['data-px-per-unit']),
    widths: elements
      .filter(({ attributes }) => attributes['data-mark']?.startsWith('condition-'))
      .map(({ attributes }) => Number(attributes.width)),
  };
};

describe('drawDiagnosis', () => {
  test('bars are as long as the probabilities say', () => {
    const { scale, widths } = bars(picture);
    expect(widths).toHaveLength(3);
    [0.83, 0.125, 0.004].forEach((probability, index) => {
      expect(Math.abs((widths[index] ?? 0) - probability * scale)).toBeLessThan(0.01);
    });
  });

  test('words give whole per cent and never certainty', () => {
    expect(describeDiagnosis(picture)).toBe('Bore deformed: 83 %. Loose <but> sound: 13 %. Arm cracked: under 1 %.');
    const said = (probability: number): string => describeDiagnosis({ conditions: [{ label: 'x', probability }] });
    expect([said(1), said(0.99), said(0.01), said(0)]).toEqual([
      'x: over 99 %.',
      'x: 99 %.',
      'x: 1 %.',
      'x: under 1 %.',
    ]);
    expect(readPicture(drawDiagnosis(picture)).root.children[1]?.text).toBe(describeDiagnosis(picture));
  });

  test('any accepted input gives a well-formed picture with bars inside the scale', () => {
    const condition = fc.record({
      label: fc.string({ unit: 'binary' }),
      probability: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(condition, { minLength: 1, maxLength: 20 }), (conditions) => {
        const { scale, widths } = bars({ conditions });
        expect(widths).toHaveLength(conditions.length);
        for (const width of widths) expect(width >= 0 && width <= scale + 0.001).toBe(true);
      }),
    );
  });

  test.each([
    [{ conditions: [] }, 'conditions'],
    [{ conditions: [{ label: 'x', probability: 1.01 }] }, 'conditions[0].probability'],
    [{ conditions: [{ label: 'x', probability: 0.5, id: 'x' }] }, 'conditions[0].id'],
  ])('refuses a wrong input, %#', (input, path) => {
    let caught: unknown;
    try {
      drawDiagnosis(input as DiagnosisPicture);
    } catch (error) {
      caught = error;
    }
    expect(isDomainError(caught) && caught.path).toBe(path);
  });
});
