/** `14-17 clear 18 bluish 19 "clear, ring"`: which trials are meant, and what was seen of them. */

import type { Look } from '../ledger/cards.ts';
import type { Fault } from '../problem.ts';
import { readLooks } from './look-words.ts';

/** `same`: what was seen the last time. */
export type Seen = readonly Look[] | 'same';

export interface SeenTrial {
  /** A number without zeros in front, or a file. */
  readonly trial: string;
  readonly seen: Seen;
}

export interface LookLine {
  readonly round: readonly SeenTrial[];
  readonly faults: readonly Fault[];
}

/** What was seen is said after the trials of which it was seen. */
export function readLookLine(words: readonly string[]): LookLine {
  const round: SeenTrial[] = [];
  const faults: Fault[] = [];
  let waiting: string[] = [];
  let waitingWords: string[] = [];
  for (const word of joinedLooks(words)) {
    if (isTrialWord(word)) {
      const trials = readTrialWord(word);
      waiting.push(...trials.numbers);
      waitingWords.push(word);
      faults.push(...trials.faults);
      continue;
    }
    if (waitingWords.length === 0) faults.push(lookWithoutTrial(word));
    const isSame = word.trim().toLowerCase() === 'same';
    const typed = isSame ? { looks: [], faults: [] } : readLooks([word]);
    faults.push(...typed.faults);
    round.push(...waiting.map((trial) => ({ trial, seen: isSame ? ('same' as const) : typed.looks })));
    [waiting, waitingWords] = [[], []];
  }
  if (waitingWords.length > 0) faults.push(trialWithoutLook(waitingWords.join(' ')));
  return { round, faults };
}

/** `clear, ring` typed without quotes comes as two words. */
function joinedLooks(words: readonly string[]): readonly string[] {
  const joined: string[] = [];
  for (const word of words) {
    const last = joined.at(-1);
    if (last?.trimEnd().endsWith(',') && !isTrialWord(last) && !isTrialWord(word))
      joined[joined.length - 1] = `${last} ${word}`;
    else joined.push(word);
  }
  return joined;
}

const lookWithoutTrial = (word: string): Fault => ({
  code: 'no-trial-before',
  message: `no trial stands before "${word}"`,
  hint: 'name the trials first, and put several looks in quotes: 14 "clear, ring"',
});

const trialWithoutLook = (words: string): Fault => ({
  code: 'no-look-after',
  message: `no look stands after ${words}`,
  hint: `say what was seen: ${words} clear`,
});

/** The trials of `same 14-17 19`. */
export function readTrialWords(words: readonly string[]): TrialWord {
  const all = words.map((word) => (isTrialWord(word) ? readTrialWord(word) : notATrial(word)));
  return {
    numbers: [...new Set(all.flatMap(({ numbers }) => numbers))],
    faults: all.flatMap(({ faults }) => faults),
  };
}

/** Anything that begins like a number, and files. */
const isTrialWord = (word: string): boolean => /^\s*[-–]?\d/u.test(word) || /[\\/]|\.yaml$/u.test(word);

export interface TrialWord {
  readonly numbers: readonly string[];
  readonly faults: readonly Fault[];
}

const mostInRange = 500;

/** A number, a range, several of both with commas, or a file. */
function readTrialWord(word: string): TrialWord {
  if (/[\\/]|\.yaml$/u.test(word)) return { numbers: [word], faults: [] };
  const parts = word
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map(readRange);
  return {
    numbers: parts.flatMap(({ numbers }) => numbers),
    faults: parts.flatMap(({ faults }) => faults),
  };
}

function readRange(text: string): TrialWord {
  const [, from = '', to = from] = /^(\d{1,9})(?:[-–](\d{1,9}))?$/u.exec(text) ?? [];
  if (from === '') return notATrial(text);
  const [first, last] = [Number(from), Number(to)];
  if (last < first) return faulty('bad-range', `"${text}" runs backwards`, `write ${last}-${first}`);
  if (last - first >= mostInRange)
    return faulty('bad-range', `"${text}" is ${last - first + 1} trials`, 'look whether a digit is too many');
  return {
    numbers: Array.from({ length: last - first + 1 }, (_, index) => String(first + index)),
    faults: [],
  };
}

function notATrial(text: string): TrialWord {
  const [, open] = /^(\d{1,9})[-–]$/u.exec(text) ?? [];
  const hint =
    open === undefined
      ? 'name a trial by its number, or several as 14-17'
      : `write ${open} alone, or both ends: ${open}-${Number(open) + 3}`;
  return faulty('bad-trial', `"${text}" is not a trial or a range of trials`, hint);
}

const faulty = (code: string, message: string, hint: string): TrialWord => ({
  numbers: [],
  faults: [{ code, message, hint }],
});
