/** Help, made from the same data as the commands. */

import type { Example } from '../calc/calculator.ts';
import type { Block, Page } from '../output/view.ts';
import { wrapped } from '../output/wrap.ts';
import { type CommandSpec, commandGroups, type OptionSpec } from './command.ts';
import type { ListedCommand } from './kept-list.ts';

export const versionText = 'neckring 0.1.0\n';

/** What `neckring` alone shows: what to type first, then every command in a line. */
export function overview(commands: readonly ListedCommand[]): Page {
  const groups = commandGroups.flatMap((group): readonly Block[] => {
    const members = commands.filter((one) => one.group === group);
    if (members.length === 0) return [];
    return [
      { kind: 'heading', text: group },
      { kind: 'pairs', pairs: members.map((one) => [`  ${one.name}`, one.summary]) },
    ];
  });
  return [
    {
      kind: 'text',
      text: 'neckring: a formulation calculator and trial ledger for clear flavoured drinks',
      tone: 'strong',
    },
    { kind: 'heading', text: 'What to type first' },
    {
      kind: 'pairs',
      pairs: [
        ['  neckring init', 'begin a ledger in this folder'],
        ['  neckring new --title "…"', 'write the next trial'],
        ['  neckring emulsifier --batch 50 g --oil 4% --ratio 1:2', 'or just calculate'],
        ['  neckring days', 'what to type on day 0, day 1 and day 7'],
        ['  neckring COMMAND --help', 'a command with two examples'],
      ],
    },
    ...groups,
    { kind: 'heading', text: 'With every command' },
    {
      kind: 'pairs',
      pairs: [
        ['  --json', 'one JSON object instead of text'],
        ['  --page', 'the answer in your pager (NECKRING_PAGER or PAGER)'],
        ['  --no-color', 'no colour; NO_COLOR does the same'],
      ],
    },
  ];
}

export function commandHelp(spec: CommandSpec, width = 80): Page {
  const words = spec.words.map((word) => {
    const name = word.many ? `${word.name} …` : word.name;
    return word.required ? name : `[${name}]`;
  });
  const usage = ['neckring', spec.name, ...words, spec.options.length > 0 ? '[options]' : '']
    .filter(Boolean)
    .join(' ');
  return [
    { kind: 'text', text: `${usage}`, tone: 'strong' },
    { kind: 'text', text: `${spec.summary}. ${spec.about ?? ''}`.trim() },
    ...(spec.words.length > 0 ? [pairsOf(spec.words.map((word) => [`  ${word.name}`, word.help]))] : []),
    ...(spec.options.length > 0
      ? [pairsOf(spec.options.map((option) => [`  ${optionText(option)}`, optionHelp(option)]))]
      : []),
    { kind: 'heading', text: 'For example' },
    ...exampleBlocks(spec.examples, width),
  ];
}

/** Lines as they are typed, with what each does under it. */
export const exampleBlocks = (examples: readonly Example[], width: number): Page => [
  {
    kind: 'lines',
    lines: examples.flatMap((one) => [
      ...exampleLines(one.line, width),
      ...wrapped(`      ${one.says}`, width),
    ]),
  },
];

/** An example as it is typed; a long one goes on in lines of its own, as a shell takes it. */
function exampleLines(line: string, width: number): readonly string[] {
  const lines: string[] = [];
  let written = '  neckring';
  // An option and its value stay together.
  for (const words of line.match(/(?:--\S+ (?!--))?(?:"[^"]*"|[^\s"])+/g) ?? []) {
    if (written.length + 1 + words.length > width - 2) {
      lines.push(`${written} \\`);
      written = '     ';
    }
    written += ` ${words}`;
  }
  return [...lines, written];
}

const pairsOf = (pairs: readonly (readonly [string, string])[]): Block => ({ kind: 'pairs', pairs });

const optionText = (option: OptionSpec): string =>
  option.placeholder === undefined ? `--${option.name}` : `--${option.name} ${option.placeholder}`;

const optionHelp = (option: OptionSpec): string =>
  option.many ? `${option.help} (may be given several times)` : option.help;
