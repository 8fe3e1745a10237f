/** Makes text safe for a table cell of a page that is also a template. */
export const cellText = (text: string): string =>
  text.replace(/[&<>{}|]/g, (c) => `&#${c.charCodeAt(0)};`).replaceAll('\n', ' ');

/** A number as a reader is shown it: a minus sign is no hyphen, which is narrow and may end a line. */
export const numberText = (value: number): string => String(value).replaceAll('-', '−');
