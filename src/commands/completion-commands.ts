/** The words of `completion`. */

import { type CommandSpec, jsonOption } from './command.ts';

export const completionCommands: readonly CommandSpec[] = [
  {
    name: 'completion',
    summary: 'the script with which Tab completes words, for bash, zsh or fish',
    about:
      'The script says in its first lines where to put it. Then Tab knows commands, options, ingredients, your own ones too, trials by number, series, formulas, batches, stages, samples, looks and files; inside quotes, as in "2 g sweet or, the name goes on.',
    group: 'Look up',
    words: [{ name: 'SHELL', help: 'bash, zsh or fish', required: true, choices: ['bash', 'zsh', 'fish'] }],
    options: [jsonOption],
    examples: [
      {
        line: 'completion bash',
        says: 'the script for bash; into ~/.bashrc goes: eval "$(neckring completion bash)"',
      },
      { line: 'completion fish', says: 'the script for fish, to keep as a file' },
    ],
    load: async () => (await import('./completion.ts')).runCompletion,
  },
];
