import { type Separator, separators } from '../ledger/csv/csv-read.ts';
import { fail } from '../problem.ts';
import { type Call, optionValue } from './command.ts';

/** What stands between the cells, where it is told: the sign, or its name. */
export function separatorOption(call: Call): Separator | undefined {
  const typed = optionValue(call, 'separator');
  if (typed === undefined) return undefined;
  const named = Object.entries(separators).find(([name, sign]) => name === typed || sign === typed)?.[1];
  return (
    named ??
    fail(
      'unknown-word',
      `--separator: "${typed}" is no separator`,
      `say ${Object.keys(separators).join(', ')}`,
    )
  );
}
