// Fenced code blocks of a Markdown text.

/** One fence. */
interface Fence {
  language: string;
  code: string;
  /** Line of the first line of code, counted from 1 in the text that was searched. */
  line: number;
}

/** All fences of a text, in order. */
export function fencesOf(text: string): Fence[] {
  const fences: Fence[] = [];
  let open: { mark: string; language: string; lines: string[]; line: number } | undefined;
  text.split('\n').forEach((line, index) => {
    const mark = /^\s*(`{3,}|~{3,})\s*([\w-]*)/.exec(line);
    if (open === undefined) {
      if (mark) open = { mark: mark[1] ?? '', language: mark[2] ?? '', lines: [], line: index + 2 };
    } else if (mark && line.trim() === open.mark) {
      fences.push({ language: open.language, code: open.lines.join('\n'), line: open.line });
      open = undefined;
    } else open.lines.push(line);
  });
  return fences;
}
