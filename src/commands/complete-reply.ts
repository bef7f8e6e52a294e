/** What is answered to the shell's script: a head line, then a line for each word. */

import { visible } from '../output/visible.ts';
import { cellWidth } from '../output/wrap.ts';
import type { Offer } from './complete-ledger.ts';
import type { Quote, Shell, TypedWord } from './complete-line.ts';

export interface Reply {
  readonly shell: Shell;
  readonly current: TypedWord;
  readonly offers: readonly Offer[];
  /** True where bash only lists, so that descriptions may stand beside the words. */
  readonly isListing: boolean;
  readonly columns: number;
}

const longestSaying = 60;

/** `words`, or `open` where nothing is to be added after the word; then the words. Unruly names are not offered. */
export function replyText(reply: Reply): string {
  const { shell, current } = reply;
  const offers = reply.offers.filter(
    ({ text }) => text !== '' && visible(text) === text && !(current.open === '"' && text.includes('!')),
  );
  const head = offers.length > 0 && offers.every(({ text }) => text.endsWith('=')) ? 'open' : 'words';
  const lines = shell === 'bash' ? bashLines(offers, reply) : offers.map(lineWithSaying);
  return [head, ...lines].map((line) => `${line}\n`).join('');
}

const shortSaying = (says: string | undefined, longest: number): string => {
  const told = visible(says ?? '')
    .replace(/\s+/g, ' ')
    .trim();
  return told.length > longest ? `${told.slice(0, Math.max(0, longest - 1))}…` : told;
};

function lineWithSaying({ text, says }: Offer): string {
  const told = shortSaying(says, longestSaying);
  return told === '' ? text : `${text}\t${told}`;
}

/** Bash puts the words in as they stand, so they are quoted for it, from where its own word begins. */
function bashLines(offers: readonly Offer[], { current, isListing, columns }: Reply): readonly string[] {
  const kept = current.text.slice(0, current.from);
  const words = offers
    .filter(({ text }) => text.startsWith(kept))
    .map(({ text, says }) => ({ word: quotedIn(text.slice(current.from), current.open), text, says }));
  if (!isListing || words.length < 2) return words.map(({ word }) => word);
  const widest = Math.max(...words.map(({ text }) => cellWidth(text)));
  return words.map(({ text, says }) => {
    const told = shortSaying(says, columns - widest - 5);
    return told === '' ? text : `${text.padEnd(widest)}  (${told})`;
  });
}

/** A text as bash reads it back, letter for letter, where this quote is open. */
export function quotedIn(text: string, open: Quote): string {
  if (open === '"') return text.replace(/[$`"\\]/g, '\\$&');
  if (open === "'") return text.replaceAll("'", `'\\''`);
  return text.replace(/[^\p{L}\p{N}_./,+%@:=-]/gu, '\\$&');
}
