/** Makes text safe for a table cell of a page that is also a template. */
export const cellText = (text: string): string =>
  text.replace(/[&<>{}|]/g, (c) => `&#${c.charCodeAt(0)};`).replaceAll('\n', ' ');
