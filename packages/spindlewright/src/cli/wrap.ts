/** What fits beside the edge of a usual terminal. @internal */
export const WIDTH = 80;

/** Lines of a text, none longer than the width unless one word is; the first may begin otherwise than the rest. @internal */
export function wrapped(text: string, width = WIDTH, first = '', rest = ' '.repeat(first.length)): string[] {
  const lines: string[] = [];
  let line = '';
  let lead = first;
  for (const word of text.split(' ')) {
    if (line !== '' && lead.length + line.length + 1 + word.length > width) {
      lines.push(lead + line);
      lead = rest;
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, lead + line];
}
