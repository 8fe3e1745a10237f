import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPicture } from '../test/picture-reader.ts';
import { bottoming, good, samples, stoppedAtRunOut, stoppedAtWall, trialFit } from '../test/sample-seats.ts';
import { seatPicture } from '../test/seat-arbitrary.ts';
import { describeSeat } from './describe-seat.ts';
import { drawSeat } from './draw-seat.ts';
import type { SeatPicture } from './seat-picture.ts';

const xs = (outlines: [number, number][][]): number[] => outlines.flat().map(([x]) => x);

describe('drawSeat', () => {
  test.each(Object.entries(samples))('%s is a well-formed document with title and description', (_, picture) => {
    const { root } = readPicture(drawSeat(picture));
    const [title, desc] = root.children;
    expect(root.attributes).toMatchObject({ xmlns: 'http://www.w3.org/2000/svg', role: 'img', lang: 'en' });
    expect(title).toMatchObject({ name: 'title', attributes: { id: root.attributes['aria-labelledby'] } });
    expect(desc).toMatchObject({ name: 'desc', attributes: { id: root.attributes['aria-describedby'] } });
    expect(desc?.text).toBe(describeSeat(picture));
  });

  // Tolerance: each coordinate is rounded to a thousandth of a pixel, so a distance errs by at most one of them.
  test('dimensions in the details are as long as the gaps say', () => {
    const picture = readPicture(drawSeat(good));
    for (const [mark, view, mm] of [
      ['end-gap-hand', 'end-gap', 2.4],
      ['end-gap-pressed', 'end-gap', 1.4],
      ['shoulder-gap-hand', 'shoulder-gap', 2.9],
      ['shoulder-gap-pressed', 'shoulder-gap', 1.9],
      ['engaged-length', 'section', 13.1],
      ['scale-bar', 'section', 10],
    ] as const) {
      expect(Math.abs(picture.length(mark) - mm * picture.scale(view)), mark).toBeLessThan(0.01);
    }
  });

  test.each(['section', 'end-gap'])('parts lie to scale in the view %s', (view) => {
    const picture = readPicture(drawSeat(good));
    const scale = picture.scale(view);
    const spindleEnd = Math.min(...xs(picture.outlines(view, 'spindle')));
    const washerFace = Math.max(...xs(picture.outlines(view, 'washer')));
    const armFace = Math.max(...xs(picture.outlines(view, 'arm')));
    const handFace = Math.max(...xs(picture.outlines(view, 'arm-by-hand')));
    expect(Math.abs(spindleEnd - washerFace - 1.4 * scale)).toBeLessThan(0.01);
    expect(Math.abs(armFace - spindleEnd - 14.6 * scale)).toBeLessThan(0.01);
    expect(Math.abs(armFace - handFace - 1 * scale)).toBeLessThan(0.01);
  });

  test('flats rise at the face angle, true to scale', () => {
    const [spindle = []] = readPicture(drawSeat(good)).outlines('section', 'spindle');
    const [, [x1 = 0, y1 = 0] = [], [x2 = 0, y2 = 0] = []] = spindle;
    // 15 mm of flat between two points rounded to 0.001 px: the angle is good to some millidegrees.
    expect((Math.atan2(y1 - y2, x2 - x1) * 180) / Math.PI).toBeCloseTo(2, 2);
  });

  test('an arm stopped on the spindle end is drawn touching it, with what it falls short', () => {
    const picture = readPicture(drawSeat(bottoming));
    const spindleEnd = Math.min(...xs(picture.outlines('section', 'spindle')));
    const washerFace = Math.max(...xs(picture.outlines('section', 'washer')));
    expect(washerFace).toBeCloseTo(spindleEnd, 2);
    expect(picture.has('end-gap-pressed')).toBe(false);
    expect(picture.words).toContain('0.4\u00a0mm short');
    expect(picture.words.replaceAll('\n', ' ')).toContain('Do not ride.');
    // The shoulder gap stays 0.4 mm wider than it would be.
    expect(picture.length('shoulder-gap-pressed')).toBeCloseTo(2.3 * picture.scale('shoulder-gap'), 2);
  });

  test('an arm stopped at the wall is drawn touching it', () => {
    const picture = readPicture(drawSeat(stoppedAtWall));
    const scale = picture.scale('section');
    const spindleEnd = Math.min(...xs(picture.outlines('section', 'spindle')));
    const armFace = Math.max(...xs(picture.outlines('section', 'arm')));
    expect(Math.abs(armFace - spindleEnd - 15.4 * scale)).toBeLessThan(0.01);
    expect(picture.words).toContain('0.20\u00a0mm short');
  });

  test('an arm stopped at the run-out is drawn with the edge of its bore at the end of the flats', () => {
    const picture = readPicture(drawSeat(stoppedAtRunOut));
    const armFace = Math.max(...xs(picture.outlines('section', 'arm')));
    const spindleEnd = Math.min(...xs(picture.outlines('section', 'spindle')));
    expect(Math.abs(armFace - spindleEnd - (13.6 + 0.5) * picture.scale('section'))).toBeLessThan(0.01);
    expect(picture.words.replaceAll('\n', ' ')).toContain('Do not ride.');
  });

  test('what is known by trial fit alone is drawn with its outline marked as none to measure', () => {
    const picture = readPicture(drawSeat(trialFit));
    expect(picture.words).toContain('arm*');
    expect(picture.words).toContain('Outline not to measure');
    expect(picture.length('end-gap-hand')).toBeCloseTo(1.6 * picture.scale('end-gap'), 2);
    expect(picture.length('shoulder-gap-pressed')).toBeCloseTo(2.1 * picture.scale('shoulder-gap'), 2);
  });

  test('an unknown gap is not dimensioned but said to be unknown', () => {
    const picture = readPicture(drawSeat({ handFit: { endGapMm: 2 }, pressed: { endGapMm: 1, shoulderGapMm: null } }));
    expect(picture.has('shoulder-gap-hand')).toBe(false);
    expect(picture.words).toContain('Shoulder gap: not known');
    expect(picture.length('end-gap-pressed')).toBeCloseTo(picture.scale('end-gap'), 2);
  });

  test('sizes and gaps that contradict each other are said to, and the gaps are drawn', () => {
    const longer = { ...good, pressed: { ...good.pressed, endGapMm: 1.9 } };
    const picture = readPicture(drawSeat(longer));
    expect(picture.words.replaceAll('\n', ' ')).toContain('disagree');
    expect(picture.length('end-gap-pressed')).toBeCloseTo(1.9 * picture.scale('end-gap'), 2);
    expect(readPicture(drawSeat(good)).words).not.toContain('disagree');
  });

  test('a value without limits is said to have none', () => {
    expect(readPicture(drawSeat(stoppedAtWall)).words).toContain('no limits given');
    expect(readPicture(drawSeat(good)).words).not.toContain('no limits given');
  });

  test('ids are unique, begin with the prefix and differ between pictures on one page', () => {
    const ids = (picture: SeatPicture): string[] =>
      readPicture(drawSeat(picture)).elements.flatMap(({ attributes }) => attributes.id ?? []);
    const together = [...Object.values(samples), { ...good, idPrefix: 'left-arm' }].flatMap(ids);
    expect(new Set(together).size).toBe(together.length);
    for (const id of ids({ ...good, idPrefix: 'left-arm' })) expect(id).toMatch(/^left-arm(-|$)/);
  });

  test('every style rule is held inside the picture', () => {
    const { elements } = readPicture(drawSeat({ ...good, idPrefix: 'here' }));
    const style = elements.find(({ name }) => name === 'style')?.text ?? '';
    const selectors = [...style.matchAll(/(?:^|[}{])\s*([^{}@]+)\{/gm)].flatMap(([, list = '']) => list.split(','));
    expect(selectors.length).toBeGreaterThan(30);
    for (const selector of selectors) expect(selector.trim()).toMatch(/^(:where\()?#here/);
    expect(style).toContain('@media (prefers-color-scheme:dark)');
    expect(style).toContain('@media print');
  });

  test('nothing is fetched and nothing runs', () => {
    const { root, elements } = readPicture(drawSeat({ ...good, caption: '<script>alert(1)</script>' }));
    expect(elements.map(({ name }) => name)).not.toContain('script');
    const values = elements.flatMap(({ attributes, text }) => [...Object.entries(attributes).flat(), text]);
    expect(values.filter((value) => /https?:|^on|href|@import|@font-face/.test(value))).toEqual([
      root.attributes.xmlns,
    ]);
  });

  test('captions, verdicts and labels are escaped and come through whole', () => {
    const odd = `</title> & "quoted" 'so' <b> ]]>`;
    const { root, words } = readPicture(
      drawSeat({ ...good, caption: odd, verdict: `x ${odd}`, labels: { 'part-arm': odd, language: odd } }),
    );
    expect(root.children[0]?.text).toBe(odd);
    expect(root.attributes.lang).toBe(odd);
    expect(words).toContain(odd);
  });

  test('labels replace words and the decimal mark', () => {
    const { words } = readPicture(drawSeat({ ...good, labels: { 'part-arm': 'Kurbel', 'decimal-mark': ',' } }));
    expect(words).toContain('Kurbel');
    expect(words).toContain('1,4\u00a0mm');
  });

  test('the same input gives the same text', () => {
    expect(drawSeat(structuredClone(good))).toBe(drawSeat(good));
  });

  test.each([
    [{ ...good, verdit: 'seats' }, 'verdit', 'verdict'],
    [{ ...good, labels: { 'part-amr': 'x' } }, 'labels.part-amr', 'part-arm'],
    [{ ...good, pressed: { endGabMm: 1 } }, 'pressed.endGabMm', 'endGapMm'],
    [{ ...good, pressed: { endGapMm: Number.NaN } }, 'pressed.endGapMm', undefined],
    [{ ...good, idPrefix: '1 2' }, 'idPrefix', undefined],
    [{ ...good, widthPx: 10 }, 'widthPx', undefined],
    [{ pressed: {} }, 'handFit', undefined],
    [null, '', undefined],
  ])('refuses a wrong input, %#', (input, path, nearest) => {
    let caught: unknown;
    try {
      drawSeat(input as SeatPicture);
    } catch (error) {
      caught = error;
    }
    expect(isDomainError(caught)).toBe(true);
    expect(caught).toMatchObject({ path, nearest });
  });

  test('any accepted seat gives a well-formed picture of finite numbers', () => {
    fc.assert(
      fc.property(seatPicture, (input) => {
        const { root, elements } = readPicture(drawSeat({ ...input, idPrefix: 'p' }));
        const values = elements.flatMap(({ attributes }) => Object.values(attributes));
        expect(values.filter((value) => /NaN|Infinity|undefined|\d[eE][-+]?\d/.test(value))).toEqual([]);
        expect(Number(root.attributes.height)).toBeGreaterThan(100);
      }),
    );
  });

  test('parts are never drawn through each other', () => {
    fc.assert(
      fc.property(seatPicture, (input) => {
        const picture = readPicture(drawSeat({ ...input, widthPx: 360 }));
        const [spindle = []] = picture.outlines('section', 'spindle');
        const [arm = []] = picture.outlines('section', 'arm');
        const [washer = []] = picture.outlines('section', 'washer');
        for (const other of [arm, washer]) expect(overlapPx(spindle, other)).toBeLessThan(0.02);
      }),
    );
  });
});

/** Largest height, px, over which two outlines cover each other, probed just beside every corner of either. */
function overlapPx(a: [number, number][], b: [number, number][]): number {
  const probes = [...a, ...b].flatMap(([x]) => [x - 0.01, x + 0.01]);
  const covered = probes.flatMap((x) =>
    spans(a, x).flatMap(([low, high]) => spans(b, x).map(([from, to]) => Math.min(high, to) - Math.max(low, from))),
  );
  return Math.max(0, ...covered);
}

/** Where a vertical line lies inside an outline. */
function spans(outline: [number, number][], x: number): [number, number][] {
  const crossings = outline
    .flatMap(([x2, y2], index) => {
      const [x1, y1] = outline.at(index - 1) ?? [x2, y2];
      return x1 > x === x2 > x ? [] : [y1 + ((x - x1) / (x2 - x1)) * (y2 - y1)];
    })
    .sort((p, q) => p - q);
  return crossings.flatMap((low, index) => (index % 2 === 0 ? [[low, crossings[index + 1] ?? low]] : [])) as [
    number,
    number,
  ][];
}
