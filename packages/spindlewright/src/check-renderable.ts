import { DomainError } from '@spindlewright/quantity';
import type { Block, JobSheet } from './sheet.ts';

/** Refuses what is no job sheet before a renderer walks into it. @internal */
export function checkRenderable(where: string, sheet: JobSheet): void {
  const candidate: unknown = sheet;
  const format =
    typeof candidate === 'object' && candidate !== null ? (candidate as { format?: unknown }).format : undefined;
  if (format === 'spindlewright-sheet-1') checkBlocks(where, sheet);
  else {
    throw new DomainError(where, [
      {
        path: 'format',
        received: format === undefined ? 'nothing' : String(format),
        allowed: 'a job sheet with format "spindlewright-sheet-1"',
      },
    ]);
  }
}

/** A sheet may come back from a file: what a renderer walks into has to have the form that it was written in. */
function checkBlocks(where: string, sheet: JobSheet): void {
  const refuse = (path: string, allowed: string): DomainError =>
    new DomainError(where, [{ path, received: 'something else', allowed }]);
  const isText = (value: unknown): boolean => typeof value === 'string';
  for (const key of ['title', 'date', 'bike', 'side', 'answer', 'headline'] as const) {
    if (!isText(sheet[key])) throw refuse(key, 'a text');
  }
  const { versions, dataEdition, sources } = sheet.provenance ?? {};
  if (!isText(dataEdition) || !Array.isArray(sources) || typeof versions !== 'object' || versions === null) {
    throw refuse('provenance', 'versions, data edition and sources');
  }
  if (!Array.isArray(sheet.sections)) throw refuse('sections', 'a list of sections');
  for (const [index, section] of sheet.sections.entries()) {
    const at = `sections[${index}]`;
    if (!isText(section?.id) || !isText(section.title) || !Array.isArray(section.blocks)) {
      throw refuse(at, 'a section with id, title and blocks');
    }
    if (section.detail !== undefined && typeof section.detail !== 'boolean') {
      throw refuse(`${at}.detail`, 'true or false');
    }
    for (const [place, block] of section.blocks.entries()) {
      if (!isBlock(block)) throw refuse(`${at}.blocks[${place}]`, 'a paragraph, list, table, findings or drawing');
    }
  }
}

const SEVERITIES = ['stop', 'caution', 'note'];

function isBlock(block: Block): boolean {
  const texts = (list: unknown): boolean => Array.isArray(list) && list.every((item) => typeof item === 'string');
  switch (block?.kind) {
    case 'paragraph':
      return typeof block.text === 'string';
    case 'list':
      return texts(block.items);
    case 'table':
      return (
        typeof block.caption === 'string' && texts(block.head) && Array.isArray(block.rows) && block.rows.every(texts)
      );
    case 'findings':
      return (
        Array.isArray(block.findings) &&
        block.findings.every(({ severity, message }) => SEVERITIES.includes(severity) && typeof message === 'string')
      );
    case 'drawing':
      return (
        [block.narrowSvg, block.wideSvg].every(isPlainSvg) &&
        typeof block.description === 'string' &&
        ['boolean', 'undefined'].includes(typeof block.told)
      );
    default:
      return false;
  }
}

/** The drawings of this project hold no script, no event handler and no outside reference. */
const isPlainSvg = (svg: unknown): boolean =>
  typeof svg === 'string' &&
  svg.startsWith('<svg') &&
  !/<script|<foreignObject|\son\w+\s*=|(?:href|src)\s*=/i.test(svg);
