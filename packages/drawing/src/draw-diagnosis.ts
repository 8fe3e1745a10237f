import { checkDiagnosis, type DiagnosisPicture, describeDiagnosis, percentWords } from './describe-diagnosis.ts';
import { svgDocument } from './document.ts';
import { DEFAULT_WIDTH_PX, MARGIN_PX } from './frame.ts';
import { idPrefixOf } from './id-prefix.ts';
import { wordingOf } from './labels.ts';
import { element, line } from './svg.ts';
import { textBlock, textLine, textWidth } from './text-layout.ts';
import { declare } from './theme.ts';

const BAR_PX = 12;

/**
 * Draws how probable each condition of a joint is, as bars on a scale from impossible to certain.
 *
 * @remarks
 * Formula: width = probability times the width of the scale, which is stated in `data-px-per-unit`.
 *
 * Validity: probabilities from 0 to 1, in the order given; they need not add up to 1, since a list may be cut short.
 *
 * Accuracy: coordinates are rounded to 0.001 px; words give whole per cent and never claim certainty.
 *
 * @param picture - `conditions` as label and probability, at least one, `title`, `idPrefix`, `widthPx` (320 to 2000) and
 * `labels` as wanted.
 * @returns An SVG document as text, with `title` and `desc`, no script and no reference to anything outside.
 * @throws {@link DomainError} for unknown keys, numbers outside their range or an `idPrefix` that is no XML name.
 * @example
 * ```ts
 * import { drawDiagnosis } from '@spindlewright/drawing';
 * const svg = drawDiagnosis({ conditions: [{ label: 'Bore deformed', probability: 0.83 }], idPrefix: 'joint' });
 * svg.includes('83 %'); // => true
 * ```
 * @see ISO 128 (general principles of representation: lines).
 */
export function drawDiagnosis(picture: DiagnosisPicture): string {
  checkDiagnosis('drawDiagnosis', picture);
  const id = idPrefixOf({ where: 'drawDiagnosis', kind: 'diagnosis', picture });
  const wording = wordingOf(picture.labels);
  const widthPx = Math.round(picture.widthPx ?? DEFAULT_WIDTH_PX);
  const inner = widthPx - 2 * MARGIN_PX;
  const title = picture.title ?? wording.say('diagnosis-title');
  const head = textBlock({ text: title, x: MARGIN_PX, y: 24, widthPx: inner, fontSize: 15, className: 'title' });
  const values = picture.conditions.map(({ probability }) => percentWords(probability, wording));
  const scalePx = inner - Math.max(...values.map((value) => textWidth(value, 12, true))) - 10;
  let y = head.nextY + 4;
  const rows = picture.conditions.map(({ label, probability }, index) => {
    const name = textBlock({ text: label, x: MARGIN_PX, y, widthPx: inner, fontSize: 12, className: 'label' });
    const top = name.nextY - 9;
    y = top + BAR_PX + 22;
    const scale = { x: MARGIN_PX, y: top, height: BAR_PX };
    return (
      name.svg +
      element('rect', { ...scale, width: scalePx, class: 'scale' }) +
      element('rect', { ...scale, width: scalePx * probability, class: 'share', 'data-mark': `condition-${index}` }) +
      line(MARGIN_PX + scalePx / 2, top - 2, MARGIN_PX + scalePx / 2, top + BAR_PX + 2, { class: 'rule' }) +
      textLine(values[index] ?? '', MARGIN_PX + scalePx + 10, top + BAR_PX - 2, { class: 'strong' })
    );
  });
  return svgDocument({
    id,
    kind: 'diagnosis',
    language: wording.say('language'),
    title,
    description: describeDiagnosis(picture),
    widthPx,
    heightPx: Math.ceil(y - 8),
    rules: {
      '.scale': declare.stroke('rule', 1),
      '.share': `${declare.paint('fill', 'pressed')};${declare.paint('stroke', 'ink')};stroke-width:1`,
    },
    body: head.svg + element('g', { 'data-view': 'probabilities', 'data-px-per-unit': String(scalePx) }, ...rows),
  });
}
