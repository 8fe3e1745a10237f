const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes text for element content and quoted attributes. @internal */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? '');
