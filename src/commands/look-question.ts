/** Is this meant? Asked of a look that a slip of the finger makes likely; it is written all the same. */

import { lastLookOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Problem } from '../problem.ts';
import type { Entry } from './look-entry.ts';
import { sampleText } from './look-sample.ts';

export interface LookInFile {
  readonly entry: Entry;
  readonly file: string;
  readonly line: number;
  readonly state: 'added' | 'unchanged';
}

/**
 * Input     what was written, the words of the line, and whether nothing was written yet
 * Output    a warning for each look that says clear of what was broken or had a ring, and for each drink that a range
 *           of beakers reached
 */
export function lookQuestions(
  written: readonly LookInFile[],
  words: readonly string[],
  isDry: boolean,
): readonly Problem[] {
  const reached = drinksReached(written, words);
  return written
    .filter(({ state }) => state === 'added')
    .flatMap((one) => {
      const { trial } = one.entry;
      const healed = healedText(one.entry);
      const text =
        healed ??
        (reached.has(one)
          ? `trial ${trial.card.number} is a drink, and others of the range are not`
          : undefined);
      return text === undefined ? [] : [question(text, one, isDry)];
    });
}

function question(text: string, { file, line }: LookInFile, isDry: boolean): Problem {
  return {
    code: 'is-this-meant',
    severity: 'warning',
    message: `is this meant? ${text}`,
    hint: isDry ? 'leave it out if not' : `open ${file}:${line} and take the lines of this look out if not`,
  };
}

/** `the beaker of trial 3 was broken on 2026-03-09`, where it is said to be clear now. */
function healedText({ trial, sample, atEpoch, looks }: Entry): string | undefined {
  if (!looks.includes('clear')) return undefined;
  const last = lastLookOf(trial.card, sample, atEpoch);
  const seen = last?.looks.filter((look) => !looks.includes(look)) ?? [];
  const was = seen.includes('broken') ? 'was broken' : seen.includes('ring') ? 'had a ring' : undefined;
  if (!last || was === undefined) return undefined;
  return `${sampleText(trial.card, sample)} ${was} on ${last.at.written.slice(0, 'yyyy-mm-dd'.length)}`;
}

/** The drinks among the trials of a range such as `2-9`, where the others of it are none. */
function drinksReached(written: readonly LookInFile[], words: readonly string[]): ReadonlySet<LookInFile> {
  const ranges = words.flatMap((word) => [...word.matchAll(/(\d+)\s*[-–]\s*(\d+)/gu)]);
  return new Set(
    ranges.flatMap(([, first, last]) => {
      const inRange = written.filter(({ entry }) => {
        const { number } = entry.trial.card;
        return number >= Number(first) && number <= Number(last);
      });
      const drinks = inRange.filter(({ entry }) => isSameName(entry.sample.of, 'drink'));
      return drinks.length < inRange.length ? drinks : [];
    }),
  );
}
