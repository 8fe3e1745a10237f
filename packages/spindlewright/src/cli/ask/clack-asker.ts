import type { Asker } from './asker.ts';

/** Asks a person at the terminal. The prompts are loaded here alone: nothing else needs them. @internal */
export async function clackAsker(): Promise<Asker> {
  const { isCancel, log, multiselect, select, text } = await import('@clack/prompts');
  return {
    async one(message, choices) {
      const given = await select({ message, options: [...choices], maxItems: 12, showInstructions: false });
      return isCancel(given) ? undefined : given;
    },
    async some(message, choices) {
      const given = await multiselect({ message: `${message} (space marks, enter ends)`, options: [...choices] });
      return isCancel(given) ? undefined : given;
    },
    async text(message, placeholder) {
      const validate = (value: string | undefined): string | undefined =>
        (value ?? '').trim() === '' ? 'a few words, please' : undefined;
      const given = await text({ message, placeholder, validate });
      return isCancel(given) ? undefined : given.trim();
    },
    say: (line) => log.message(line),
  };
}
