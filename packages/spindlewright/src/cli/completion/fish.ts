import type { Verb } from '../verbs/index.ts';

/** The completion for fish. @internal */
export function fishCompletion(verbs: readonly Verb[]): string {
  const line = (...parts: string[]): string =>
    `complete -c spindlewright ${parts.filter((part) => part !== '').join(' ')}`;
  const lines = verbs.flatMap(({ name, about, flags, operands: [operand] }) => {
    const here = `-n '__fish_seen_subcommand_from ${name}'`;
    return [
      line('-n __fish_use_subcommand', `-a ${name}`, described(about)),
      ...flags.map((flag) => line(here, `-l ${flag.name}`, takes(flag), described(flag.about))),
      ...(operand === undefined
        ? []
        : [line(here, operand.choices === undefined ? '-F' : `-a '${operand.choices.join(' ')}'`)]),
      line(here, '-l help', described('help of the verb')),
    ];
  });
  return [
    '# fish completion of spindlewright; made by: spindlewright completion fish',
    line('-f'),
    ...lines,
    line('-n __fish_use_subcommand', '-a help', described('the flags, examples and exit codes of a verb')),
    line("-n '__fish_seen_subcommand_from help'", `-a '${verbs.map(({ name }) => name).join(' ')}'`),
    '',
  ].join('\n');
}

function takes({ value, choices, file }: Verb['flags'][number]): string {
  if (value === undefined) return '';
  if (choices !== undefined) return `-x -a '${choices.join(' ')}'`;
  return file === true ? '-r -F' : '-x';
}

const described = (text: string): string => `-d '${text.replace(/[\\']/g, '\\$&')}'`;
