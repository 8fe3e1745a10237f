/** Text on one line without control characters, which a terminal or a Markdown reader would obey. @internal */
export const plainText = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  text.replace(/[\u0000-\u001f\u007f-\u009f]+/g, ' ');
