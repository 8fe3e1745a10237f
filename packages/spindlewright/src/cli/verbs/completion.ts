import type { Verb } from './verb.ts';

/** Shells that a completion is written for. @internal */
export const SHELLS = ['bash', 'zsh', 'fish'] as const;

/** The verb `completion`. @internal */
export const completionVerb: Verb = {
  name: 'completion',
  about: 'print what makes a shell complete verbs and flags',
  usage: ['SHELL'],
  operands: [{ name: 'SHELL', choices: SHELLS, about: 'the shell' }],
  flags: [],
  notes: [
    'bash: put  source <(spindlewright completion bash)  into ~/.bashrc. zsh: write it to a file _spindlewright in a folder of $fpath. fish: write it to ~/.config/fish/completions/spindlewright.fish.',
  ],
  examples: [
    { about: 'for this bash and the next ones', command: 'completion bash' },
    { about: 'for fish', command: 'completion fish' },
  ],
};
