/** What belongs where the cursor stands: a command, an option, or a value of some kind. */

import { joinAmountWords } from './amount-words.ts';
import type { CommandSpec, OptionSpec } from './command.ts';
import { type Wanted, wantedOf } from './completion-kinds.ts';

export interface ValuePlace {
  readonly wanted: Wanted;
  /** The name of the option or word, which may be a role: `--emulsifier`. */
  readonly name: string;
  /** What stands before the value in the same word: `--series=`. */
  readonly prefix: string;
  /** The words of the command so far: the trial whose samples are asked for. */
  readonly words: readonly string[];
}

export interface Place {
  readonly value: ValuePlace | undefined;
  /** Options that may be typed here. */
  readonly options: readonly OptionSpec[];
}

export const helpOption: OptionSpec = { name: 'help', help: 'what it does, with two examples' };

const nothing: Place = { value: undefined, options: [] };

interface Walked {
  readonly words: readonly string[];
  readonly given: ReadonlySet<string>;
  /** The option whose value comes next. */
  readonly pending: OptionSpec | undefined;
  readonly areOptionsOver: boolean;
}

/** `typed` is what stands between the name of the command and the word at the cursor. */
export function placeIn(spec: CommandSpec, typed: readonly string[], current: string): Place {
  const { words, given, pending, areOptionsOver } = walk(spec, typed);
  if (pending) return { value: valuePlace(pending, '', words), options: [] };
  const isDashed = current.startsWith('-') && !areOptionsOver;
  if (isDashed && current.includes('=')) {
    const name = current.slice(2, current.indexOf('='));
    const option = spec.options.find((one) => one.name === name && one.placeholder !== undefined);
    return option ? { value: valuePlace(option, `--${name}=`, words), options: [] } : nothing;
  }
  const options = areOptionsOver
    ? []
    : [...spec.options, helpOption].filter((one) => one.many || !given.has(one.name));
  if (isDashed) return { value: undefined, options };
  const word = spec.words[words.length] ?? spec.words.findLast((one) => one.many);
  if (!word) return { value: undefined, options };
  const { name } = word;
  const wanted = wantedOf({ ...word, placeholder: name });
  return { value: { wanted, name: name.toLowerCase(), prefix: '', words }, options };
}

const valuePlace = (option: OptionSpec, prefix: string, words: readonly string[]): ValuePlace => ({
  wanted: wantedOf({ ...option, placeholder: option.placeholder ?? '' }),
  name: option.name,
  prefix,
  words,
});

function walk(spec: CommandSpec, typed: readonly string[]): Walked {
  const words: string[] = [];
  const given = new Set<string>();
  let pending: OptionSpec | undefined;
  let areOptionsOver = false;
  for (const word of joinAmountWords(typed, spec)) {
    if (pending) pending = undefined;
    else if (areOptionsOver || !word.startsWith('--')) words.push(word);
    else if (word === '--') areOptionsOver = true;
    else {
      const [name = ''] = word.slice(2).split('=');
      given.add(name);
      const option = spec.options.find((one) => one.name === name);
      if (option?.placeholder !== undefined && !word.includes('=')) pending = option;
    }
  }
  return { words, given, pending, areOptionsOver };
}
