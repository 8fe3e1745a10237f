import type { FieldSpecs } from '@spindlewright/quantity';
import { type Labels, labelFields } from './labels.ts';

/** What every picture can be told besides its content. */
export interface PictureFrame {
  /** Title of the picture; a general one when left out. */
  title?: string;
  /** Prefix of all ids; derived from the content when left out. */
  idPrefix?: string;
  /** Natural width, px, 320 to 2000; 360 when left out. */
  widthPx?: number;
  /** Words that replace the English ones. */
  labels?: Labels;
}

/** Natural width when none is asked for, px: a phone held upright. @internal */
export const DEFAULT_WIDTH_PX = 360;

/** Room round the content of every picture, px. @internal */
export const MARGIN_PX = 12;

/** Field descriptions of a frame for checkInput. @internal */
export const frameFields = (): FieldSpecs => ({
  title: { type: 'text', optional: true },
  idPrefix: { type: 'text', optional: true },
  widthPx: { type: 'number', optional: true, unit: 'px', min: 320, max: 2000 },
  labels: labelFields(),
});
