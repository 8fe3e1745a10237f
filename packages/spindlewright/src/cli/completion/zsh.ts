import type { Verb } from '../verbs/index.ts';

/** The completion for zsh. @internal */
export function zshCompletion(verbs: readonly Verb[]): string {
  const described = verbs.map(({ name, about }) => `    ${quoted(`${name}:${about}`)}`);
  const cases = verbs.map(({ name, flags, operands }) => {
    const specs = flags.map((flag) => {
      const values = flag.value === undefined ? '' : `:${flag.value}:${action(flag)}`;
      return quoted(`${flag.repeats === true ? '*' : ''}--${flag.name}[${escaped(flag.about)}]${values}`);
    });
    const behind = operands.map((operand) =>
      quoted(`${operand.repeats === true ? '*' : ''}:${operand.name}:${action(operand)}`),
    );
    const all = [...specs, quoted('--help[help of the verb]'), ...behind];
    return `    ${name}) _arguments \\\n      ${all.join(' \\\n      ')} ;;`;
  });
  return `#compdef spindlewright
# zsh completion of spindlewright; made by: spindlewright completion zsh
_spindlewright() {
  local -a verbs
  verbs=(
${described.join('\n')}
    'help:the flags, examples and exit codes of a verb'
  )
  if (( CURRENT == 2 )); then
    _describe verb verbs
    return
  fi
  shift words
  (( CURRENT-- ))
  case $words[1] in
${cases.join('\n')}
    help) _describe verb verbs ;;
  esac
}
if [ "$funcstack[1]" = _spindlewright ]; then _spindlewright "$@"; else compdef _spindlewright spindlewright; fi
`;
}

/** What zsh offers for a value. */
function action({ choices, file }: { choices?: readonly string[]; file?: true }): string {
  if (choices !== undefined) return `(${choices.join(' ')})`;
  return file === true ? '_files' : ' ';
}

const escaped = (text: string): string => text.replace(/[[\]:\\]/g, '\\$&');
const quoted = (text: string): string => `'${text.replace(/'/g, "'\\''")}'`;
