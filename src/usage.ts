/** What was wrong with a command line, in words of ours. */

import type { CommandSpec } from './commands/command.ts';
import type { ListedCommand } from './commands/kept-list.ts';
import type { Problem } from './problem.ts';
import { nearestNames } from './reference/name.ts';

interface UsageFault {
  /** A code of the option parser, or `unknown command`. */
  readonly kind: string;
  /** The word, or the parser's message, which is only searched for the word. */
  readonly word: string;
  readonly words?: readonly string[];
}

export function usageProblem(
  fault: UsageFault,
  spec: CommandSpec | undefined,
  commands: readonly ListedCommand[],
): Problem {
  const quoted = /'([^']*)'/.exec(fault.word)?.[1] ?? fault.word;
  const optionWord = quoted.split(' ')[0] ?? quoted;
  switch (fault.kind) {
    case 'unknown command': {
      const names = commands.map((one) => one.name);
      return usage(
        `"${fault.word}" is not a command`,
        nearestHint(fault.word, [...names, ...programOptions], 'neckring --help lists them'),
      );
    }
    case 'commander.unknownOption': {
      if (/^-\.?\d/u.test(optionWord))
        return usage(`"${quoted}" begins with a minus sign`, 'amounts are 0 or more: leave the sign out');
      const options = (spec?.options ?? []).map((one) => `--${one.name}`);
      return usage(
        `${optionWord} is not an option of ${spec?.name}`,
        nearestHint(optionWord, options, `neckring ${spec?.name} --help lists them`),
      );
    }
    case 'commander.optionMissingArgument': {
      const option = spec?.options.find((one) => `--${one.name}` === optionWord);
      return usage(
        `${optionWord} needs a value`,
        `give ${optionWord} ${option?.placeholder ?? ''}: ${option?.help ?? ''}`,
      );
    }
    case 'commander.missingArgument': {
      const word = spec?.words.find((one) => one.required);
      return usage(
        `${spec?.name} needs ${word?.name ?? 'a word more'}`,
        word?.help ?? `see neckring ${spec?.name} --help`,
      );
    }
    case 'commander.excessArguments':
      return leftOver(fault.words ?? [], spec);
    default:
      return usage(
        `this can't be read: ${(fault.words ?? []).join(' ')}`,
        `see neckring ${spec?.name} --help`,
      );
  }
}

const programOptions = ['--help', '--version'];

const usage = (message: string, hint: string): Problem => ({
  code: 'usage',
  severity: 'error',
  message,
  hint,
});

function nearestHint(word: string, names: readonly string[], otherwise: string): string {
  const near = nearestNames(word, names, 2);
  return near.length > 0 ? `did you mean ${near.join(' or ')}?` : otherwise;
}

/** Words that belong to nothing: most often an amount with its name that lacks quotes. */
function leftOver(words: readonly string[], spec: CommandSpec | undefined): Problem {
  const run = firstUnquotedRun(words, spec);
  const [, bottles] = /^(\d+) (?:bottles?|cans?|kegs?|glass(?:es)?)$/iu.exec(run?.whole ?? '') ?? [];
  if (run?.option === 'to' && bottles !== undefined)
    return usage(`"${run.whole}" does not say of what size`, `write --to "${bottles} x 330 mL"`);
  if (run)
    return usage(`"${run.left}" is left over`, `put quotes around the whole: --${run.option} "${run.whole}"`);
  const extra = words.filter((word) => !word.startsWith('-')).join(' ');
  const takesItems = spec?.options.find(({ isAmount, many }) => isAmount && many);
  if (takesItems && spec?.words.length === 0 && /^\d/u.test(extra))
    return usage(`"${extra}" stands alone`, `say what it is: --${takesItems.name} "${extra}"`);
  return usage(
    `"${extra}" is more than ${spec?.name} takes`,
    `put quotes around what belongs together, and see neckring ${spec?.name} --help`,
  );
}

function firstUnquotedRun(words: readonly string[], spec: CommandSpec | undefined) {
  for (const [at, word] of words.entries()) {
    const option = spec?.options.find((one) => `--${one.name}` === word && one.placeholder !== undefined);
    if (!option) continue;
    const end = words.findIndex((other, index) => index > at + 1 && other.startsWith('--'));
    const run = words.slice(at + 1, end === -1 ? undefined : end);
    if (run.length > 1) return { option: option.name, whole: run.join(' '), left: run.slice(1).join(' ') };
  }
  return undefined;
}
