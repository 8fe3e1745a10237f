import type { Flag, Verb } from './verbs/index.ts';
import { WIDTH, wrapped } from './wrap.ts';

/** Exit codes that every verb has. */
const EXITS: readonly (readonly [number, string])[] = [
  [0, 'done'],
  [1, 'a file cannot be read or written'],
  [2, 'refused: a flag, a value or a file is not what it has to be; nothing was written'],
];

/** The help of the command itself: every verb. @internal */
export function commandHelp(verbs: readonly Verb[]): string {
  return [
    'spindlewright: the joint between crank arm and spindle',
    '',
    'usage',
    '  spindlewright VERB ...',
    '',
    'verbs',
    ...columns([
      ...verbs.map(({ name, about }): [string, string] => [name, about]),
      ['help [VERB]', 'this text, or the flags, examples and exit codes of a verb'],
    ]),
    '',
    'flags',
    ...columns([
      ['--help', 'this text; behind a verb that of the verb'],
      ['--version', 'version of the command'],
    ]),
    '',
    'examples',
    ...verbs.flatMap(({ examples: [first] }) => (first === undefined ? [] : [`  spindlewright ${first.command}`])),
    '',
    ...exitLines([]),
    '  (behind a verb, --help names more of them)',
    '',
    ...wrapped(
      "The part maker's instructions and a qualified mechanic come before every answer; it has not seen the parts.",
    ),
    '',
  ].join('\n');
}

/** The help of a verb: usage, flags, examples, exit codes. @internal */
export function verbHelp({ name, about, usage, operands, flags, notes, examples, exits = [] }: Verb): string {
  return [
    `spindlewright ${name}: ${about}`,
    '',
    'usage',
    ...usage.map((way) => `  spindlewright ${name} ${way}`.trimEnd()),
    '',
    ...(operands.length === 0 ? [] : columns(operands.map((operand) => [operand.name, withChoices(operand)]))),
    ...(operands.length === 0 ? [] : ['']),
    ...groupsOf(flags).flatMap(([group, own]) => [
      group === undefined ? 'flags' : `flags: ${group}`,
      ...columns([...own.map(flagLine), ...(group === undefined ? [['--help', 'this text'] as const] : [])]),
      '',
    ]),
    ...notes.flatMap((note) => [...wrapped(note), '']),
    'examples',
    ...examples.flatMap((example) => [`  # ${example.about}`, `  spindlewright ${example.command}`]),
    '',
    ...exitLines(exits),
    '',
  ].join('\n');
}

const flagLine = (flag: Flag): [string, string] => [
  `--${flag.name}${flag.value === undefined ? '' : ` ${flag.value}`}`,
  `${withChoices(flag)}${flag.repeats === true ? '; may be given again' : ''}`,
];

/** Flags by their headings, in the order of the table; those without one come last, with `--help`. */
function groupsOf(flags: readonly Flag[]): [string | undefined, readonly Flag[]][] {
  const named = [...new Set(flags.flatMap(({ group }) => (group === undefined ? [] : [group])))];
  return [...named, undefined].map((group) => [group, flags.filter((flag) => flag.group === group)]);
}

const withChoices = ({ about, choices }: { about: string; choices?: readonly string[] }): string =>
  choices === undefined ? about : `${about}: ${choices.join(', ')}`;

function exitLines(more: readonly (readonly [number, string])[]): string[] {
  const own = new Map([...EXITS, ...more]);
  return ['exit codes', ...columns([...own].map(([code, why]): [string, string] => [String(code), why]))];
}

/** Two columns; the left one is as wide as most of its entries need, a longer entry has a line of its own. */
function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.min(26, Math.max(...rows.map(([left]) => left.length)));
  return rows.flatMap(([left, right]) => {
    const [first = '', ...rest] = wrapped(right, WIDTH - width - 4);
    const indent = ' '.repeat(width + 4);
    const lines = rest.map((line) => indent + line);
    if (left.length > width) return [`  ${left}`, indent + first, ...lines];
    return [`  ${left.padEnd(width)}  ${first}`, ...lines];
  });
}
