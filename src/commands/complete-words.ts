/** What the completion scripts of the shells call at each Tab: the line in front of the cursor in, words out. */

import type { Io } from '../io.ts';
import { findRoot } from '../ledger/find-root.ts';
import type { OptionSpec } from './command.ts';
import type { Offer } from './complete-ledger.ts';
import { readLine, type Shell, shells, type TypedLine } from './complete-line.ts';
import { placeIn } from './complete-place.ts';
import { replyText } from './complete-reply.ts';
import { valueOffers } from './complete-values.ts';
import { allCommands, commandNamed } from './families.ts';

/** Writes `files`, `folders`, or the words for the line; nothing where there is nothing to say. Never complains. */
export async function completeWords(typed: readonly string[], io: Io): Promise<void> {
  const [name, line = '', breaks = '', listing = '', columns = ''] = typed;
  const shell = shells.find((one) => one === name);
  if (!shell) return;
  const read = readLine({ shell, line, breaks });
  const found = await offersFor(read, io);
  if (typeof found === 'string') io.out(`${found}\n`);
  else io.out(replyText({ ...read, shell, ...listed(shell, found, read, listing, columns) }));
}

const listed = (
  shell: Shell,
  found: readonly Offer[],
  { current }: TypedLine,
  listing: string,
  columns: string,
) => ({
  offers: found.filter(({ text }) => text.toLowerCase().startsWith(current.text.toLowerCase())),
  isListing: shell === 'bash' && listing === '63',
  columns: Number(columns) || 80,
});

type Found = readonly Offer[] | 'files' | 'folders';

async function offersFor({ words, current }: TypedLine, io: Io): Promise<Found> {
  const typed = words.slice(1).filter((word) => !['--no-color', '--page'].includes(word));
  const [first, ...rest] = typed;
  if (first === undefined || (first === 'help' && rest.length === 0))
    return current.text.startsWith('-') ? programOptions : commandOffers();
  const spec = await commandNamed(first);
  if (!spec) return [];
  const { value, options } = placeIn(spec, rest, current.text);
  if (!value) return optionOffers(options);
  const typedValue = current.text.slice(value.prefix.length);
  const { kinds } = value.wanted;
  if (kinds.includes('folder')) return 'folders';
  if (kinds[0] === 'file' || (kinds.length > 0 && isPath(typedValue))) return 'files';
  const root = await findRoot(io.workingFolder);
  const offers = await valueOffers({ place: value, typed: typedValue, root });
  const whole = offers.map((one) => ({ ...one, text: value.prefix + one.text }));
  return whole.length === 0 && current.text === '' ? optionOffers(options) : whole;
}

/** An item with a concentration has a stroke in it, too. */
const isPath = (text: string): boolean => /^(?:~|\.{0,2}\/)/.test(text) || /^[^\s\d]\S*\//.test(text);

const programOptions: readonly Offer[] = [
  { text: '--help', says: 'what to type first, and every command' },
  { text: '--version', says: 'the version' },
  { text: '--no-color', says: 'no colour' },
  { text: '--page', says: 'the answer in your pager' },
];

const optionOffers = (options: readonly OptionSpec[]): readonly Offer[] =>
  options.map(({ name, help }) => ({ text: `--${name}`, says: help }));

async function commandOffers(): Promise<readonly Offer[]> {
  const commands = (await allCommands()).map(({ name, summary }) => ({ text: name, says: summary }));
  return [...commands, { text: 'help', says: 'what a command does' }];
}
