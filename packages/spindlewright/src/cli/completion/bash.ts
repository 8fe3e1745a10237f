import type { Verb } from '../verbs/index.ts';

/** The completion for bash. @internal */
export function bashCompletion(verbs: readonly Verb[]): string {
  const names = verbs.map(({ name }) => name).join(' ');
  const values = verbs.flatMap(({ name, flags }) =>
    flags.flatMap((flag) => {
      if (flag.value === undefined) return [];
      const what =
        flag.choices === undefined ? (flag.file === true ? '_spindlewright_files' : ':') : words(flag.choices);
      return [`    '${name} --${flag.name}') ${what}; return ;;`];
    }),
  );
  const rest = verbs.map(({ name, flags, operands }) => {
    const [operand] = operands;
    const behind =
      operand === undefined ? ':' : operand.choices === undefined ? '_spindlewright_files' : words(operand.choices);
    const all = [...flags.map((flag) => `--${flag.name}`), '--help'];
    return `    ${name}) case "$cur" in -*) ${words(all)} ;; *) ${behind} ;; esac ;;`;
  });
  return `# bash completion of spindlewright; made by: spindlewright completion bash
_spindlewright_words() {
  local word
  while IFS= read -r word; do COMPREPLY+=("$word"); done < <(compgen -W "$1" -- "$cur")
}
_spindlewright_files() {
  local file
  compopt -o filenames 2>/dev/null
  while IFS= read -r file; do COMPREPLY+=("$file"); done < <(compgen -f -- "$cur")
}
_spindlewright() {
  local cur="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}" verb="\${COMP_WORDS[1]}"
  COMPREPLY=()
  if [ "$COMP_CWORD" -eq 1 ]; then
    _spindlewright_words '${names} help --help --version'
    return
  fi
  case "$verb $before" in
${values.join('\n')}
  esac
  case "$verb" in
${rest.join('\n')}
    help) _spindlewright_words '${names}' ;;
  esac
}
complete -F _spindlewright spindlewright
`;
}

const words = (list: readonly string[]): string => `_spindlewright_words '${list.join(' ')}'`;
