import type { Messages } from '../finding.ts';

/** English templates of the finding codes that this package may raise. */
export const messages: Messages = {
  'id-deprecated': 'The id "{deprecatedId}" is kept for old files; its name is now "{currentId}".',
};
