import { parseArgs } from 'node:util';
import { nearestName } from '@spindlewright/quantity';
import { Refusal } from './refusal.ts';
import type { Verb } from './verbs/index.ts';

/** Arguments of a verb, checked against its table. @internal */
export interface Parsed {
  /** What stands behind the verb without a flag. */
  operands: readonly string[];
  /** Whether help is asked for; nothing else is checked then. */
  help: boolean;
  /** Value of a flag, if it was given. */
  text(name: string): string | undefined;
  /** Values of a flag that may be given again. */
  texts(name: string): readonly string[];
  /** Whether a switch was given. */
  on(name: string): boolean;
}

/** Reads the arguments of a verb; refuses what its table does not name, with the nearest name. @internal */
export function parseVerb(verb: Verb, args: readonly string[]): Parsed {
  const see = `see "spindlewright ${verb.name} --help"`;
  const values = new Map<string, string[]>();
  const operands: string[] = [];
  // Flags of one letter are not bundled here; taken apart, a long word becomes as many flags. A reading below 0 may follow a
  // flag, and none has so many digits.
  const end = args.indexOf('--');
  const bundle = args.slice(0, end < 0 ? args.length : end).find((word) => /^-([^-\d.,].|[\d.,].{40})/.test(word));
  if (bundle !== undefined) throw new Refusal(`unknown flag ${bundle.slice(0, 40)} (${see})`);
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    allowPositionals: true,
    options: {
      help: { type: 'boolean', short: 'h' },
      ...Object.fromEntries(
        verb.flags.map(({ name, value }) => [name, { type: value === undefined ? 'boolean' : 'string' } as const]),
      ),
    },
  });
  if (tokens.some((token) => token.kind === 'option' && token.name === 'help')) return parsedOf([], true, values);
  for (const token of tokens) {
    if (token.kind === 'positional') operands.push(token.value);
    if (token.kind !== 'option') continue;
    const flag = verb.flags.find(({ name }) => name === token.name);
    if (flag === undefined) {
      const nearest = nearestName({ name: token.name, known: [...verb.flags.map(({ name }) => name), 'help'] });
      const like = nearest === undefined ? '' : `; nearest: --${nearest}`;
      throw new Refusal(`unknown flag ${token.rawName}${like} (${see})`);
    }
    const given = values.get(flag.name) ?? [];
    if (given.length > 0 && flag.repeats !== true) throw new Refusal(`--${flag.name} came twice (${see})`);
    if (flag.value === undefined) {
      if (token.value !== undefined) throw new Refusal(`--${flag.name} is a switch and takes no value (${see})`);
      values.set(flag.name, ['']);
      continue;
    }
    // A number may begin with a minus, a flag does not begin with a digit.
    if (token.value === undefined || (!token.inlineValue && /^-+[a-z]/i.test(token.value))) {
      const came = token.value === undefined ? '' : `, and ${token.value} is a flag`;
      throw new Refusal(`--${flag.name} takes ${flag.value}${came} (${see})`);
    }
    if (flag.choices !== undefined) checkChoice(`--${flag.name}`, token.value, flag.choices);
    values.set(flag.name, [...given, token.value]);
  }
  checkOperands(verb, operands, see);
  return parsedOf(operands, false, values);
}

function parsedOf(operands: readonly string[], help: boolean, values: ReadonlyMap<string, string[]>): Parsed {
  return {
    operands,
    help,
    text: (name) => values.get(name)?.[0],
    texts: (name) => values.get(name) ?? [],
    on: (name) => values.has(name),
  };
}

function checkOperands(verb: Verb, operands: readonly string[], see: string): void {
  for (const [index, { name, optional, choices }] of verb.operands.entries()) {
    const given = operands[index];
    if (given === undefined) {
      if (optional !== true) throw new Refusal(`${name} is missing (${see})`);
    } else if (choices !== undefined) checkChoice(name, given, choices);
  }
  const tooMany = operands[verb.operands.length];
  if (tooMany !== undefined && verb.operands.at(-1)?.repeats !== true) {
    const wanted = verb.operands.map(({ name }) => name).join(' ') || 'only flags';
    throw new Refusal(`${JSON.stringify(tooMany)} is one too many: ${wanted}, please (${see})`);
  }
}

/** Refuses a value that is none of those allowed, with the nearest. */
function checkChoice(name: string, given: string, allowed: readonly string[]): void {
  if (allowed.includes(given)) return;
  const nearest = nearestName({ name: given, known: allowed });
  const like = nearest === undefined ? '' : `; nearest: ${nearest}`;
  throw new Refusal(`${name} ${given}: allowed ${allowed.join(', ')}${like}`);
}
