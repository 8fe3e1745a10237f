import type { Block } from '../../docs/bench/logic/bench.ts';

/** Everything that a reader of an answer reads. */
export const textsOf = (blocks: readonly Block[]): string[] => blocks.flatMap(textOf);

function textOf(block: Block): string[] {
  switch (block.kind) {
    case 'headline':
      return [block.text, block.detail ?? ''];
    case 'figure':
      return [block.caption];
    case 'values':
      return [block.title ?? '', ...block.rows.flatMap(({ label, value, note }) => [label, value, note ?? ''])];
    case 'bars':
    case 'ranges':
      return [block.title, block.note ?? '', ...block.rows.flatMap(({ label, text }) => [label, text])];
    case 'table':
      return [block.title, block.note ?? '', ...block.head, ...block.rows.flat()];
    case 'findings':
      return block.findings.map(({ message }) => message);
    case 'actions':
      return [block.title ?? '', ...block.actions.map(({ label }) => label)];
    case 'links':
      return [block.title, ...block.links.map(({ text }) => text)];
    case 'text':
      return [block.text];
    default:
      return [];
  }
}

/** Ids that stand in texts: joined by a hyphen or with a capital inside, as no word of these pages is written. */
export const idsIn = (texts: readonly string[], ids: ReadonlySet<string>): string[] =>
  texts
    .flatMap((text) => text.match(/[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*/g) ?? [])
    .filter((word) => /[a-z](-|[A-Z])/.test(word) && ids.has(word));
