import type { Asker, Choice } from './asker.ts';

/** Asks a person at the terminal. The prompts are loaded here alone: nothing else needs them. @internal */
export async function clackAsker(): Promise<Asker> {
  const { isCancel, log, multiselect, S_BAR, select, selectKey, text } = await import('@clack/prompts');
  /** The library draws its bar before the first line of these questions alone. */
  const barred = (message: string): string => message.replaceAll('\n', `\n${S_BAR}  `);
  return {
    async one(message, choices) {
      const options = keyed(choices);
      if (options === undefined) {
        const given = await select({ message, options: [...choices], maxItems: 12, showInstructions: false });
        return isCancel(given) ? undefined : given;
      }
      for (;;) {
        const key = await selectKey({ message: barred(message), options });
        if (isCancel(key)) return undefined;
        const at = options.findIndex(({ value }) => value === key);
        if (at >= 0) return choices[at]?.value;
        log.warn('Enter alone answers nothing: press the key in front of a line.');
      }
    },
    async some(message, choices) {
      const given = await multiselect({ message: `${message} (space marks, enter ends)`, options: [...choices] });
      return isCancel(given) ? undefined : given;
    },
    async text(message, placeholder, fault) {
      const validate = (value: string | undefined): string | undefined => {
        const line = (value ?? '').trim();
        if (fault !== undefined) return fault(line);
        return line === '' ? 'a few words, please' : undefined;
      };
      const given = await text({ message: barred(message), placeholder, validate });
      return isCancel(given) ? undefined : given.trim();
    },
    say: (line) => log.message(line),
  };
}

/** Each choice with its key; undefined where the digits do not go round. */
function keyed(choices: readonly Choice[]): { value: string; label: string; hint?: string }[] | undefined {
  let digit = 0;
  const options = choices.map(({ label, hint, key }) => ({
    value: key ?? String(++digit),
    label,
    ...(hint === undefined ? {} : { hint }),
  }));
  return digit > 9 ? undefined : options;
}
