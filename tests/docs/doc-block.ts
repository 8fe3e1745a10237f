// Reads a `/** ... */` block into its summary and its tags, in the order in which they stand.

/** A block tag with its text; line breaks kept. */
interface DocTag {
  name: string;
  text: string;
}

/** What stands in a block. */
export interface DocBlock {
  summary: string;
  tags: DocTag[];
}

/** Parses the text of a block, comment marks included. Tags inside a fence are code. */
export function parseDocBlock(comment: string): DocBlock {
  const lines = comment
    .replace(/^\/\*\*/, '')
    .replace(/\*\/$/, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\*? ?/, '').trimEnd());
  const block: DocBlock = { summary: '', tags: [] };
  const parts: { name: string; lines: string[] }[] = [{ name: '', lines: [] }];
  let inFence = false;
  for (const line of lines) {
    if (line.startsWith('```')) inFence = !inFence;
    const tag = inFence ? null : /^@(\w+)\s*(.*)$/.exec(line);
    if (tag) parts.push({ name: tag[1] ?? '', lines: [tag[2] ?? ''] });
    else parts.at(-1)?.lines.push(line);
  }
  for (const part of parts) {
    const text = part.lines.join('\n').trim();
    if (part.name === '') block.summary = text.replace(/\s*@(internal|packageDocumentation)\b\s*/g, '').trim();
    else block.tags.push({ name: part.name, text });
  }
  return block;
}
