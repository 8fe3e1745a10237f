// In TeX `\~` and `\^` put an accent on the next letter, so these two and the backslash need their names.
const TEX_NAMES: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '~': '\\textasciitilde{}',
  '^': '\\textasciicircum{}',
};

/** Escapes the characters that are special to TeX. @internal */
export const escapeTex = (text: string): string => text.replace(/[\\{}%&$#_~^]/g, (c) => TEX_NAMES[c] ?? `\\${c}`);
