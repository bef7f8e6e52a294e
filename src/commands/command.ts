/** What a command is: its words as data, and a loader for what it does. Nothing here prints. */

import type { Citation, WorkingLine } from '../calc/answer.ts';
import type { Example } from '../calc/calculator.ts';
import type { Io } from '../io.ts';
import type { Envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import type { Problem } from '../problem.ts';
import type { Kind } from './completion-kinds.ts';

export interface ArgumentSpec {
  /** In capitals, as help shows it: `TRIAL`. */
  readonly name: string;
  readonly help: string;
  readonly many?: boolean;
  readonly required?: boolean;
  readonly isAmount?: boolean;
  /** What it names, for completion, where `completion-kinds.ts` does not know it by its name. */
  readonly takes?: readonly Kind[];
  /** The only words that it may be. */
  readonly choices?: readonly string[];
}

export interface OptionSpec {
  /** Without dashes: `emulsifier-share`. */
  readonly name: string;
  readonly help: string;
  /** What stands for the value; left out for a yes-or-no option. */
  readonly placeholder?: string;
  readonly many?: boolean;
  /** Its value is an amount, so `--batch 50 g` may be typed without quotes. */
  readonly isAmount?: boolean;
  /** What its value names, for completion, where `completion-kinds.ts` does not know it by its placeholder. */
  readonly takes?: readonly Kind[];
  /** The only words that it may be. */
  readonly choices?: readonly string[];
}

export const commandGroups = [
  'Calculate',
  'Ledger',
  'Ladders',
  'Batches',
  'Tasting',
  'Keeping and sharing',
  'Look up',
] as const;

export interface CommandSpec {
  readonly name: string;
  readonly summary: string;
  readonly about?: string;
  readonly group: (typeof commandGroups)[number];
  readonly words: readonly ArgumentSpec[];
  readonly options: readonly OptionSpec[];
  readonly examples: readonly Example[];
  readonly load: () => Promise<Run>;
}

/** A command line as it was understood. */
export interface Call {
  readonly command: string;
  readonly words: readonly string[];
  readonly values: Readonly<Record<string, readonly string[]>>;
  readonly flags: ReadonlySet<string>;
  /** Options with their values in the order typed, where one belongs to what stands before it. */
  readonly order?: readonly (readonly [option: string, text: string])[];
}

export const optionValue = (call: Call, option: string): string | undefined => call.values[option]?.[0];

/** How an answer came about; worked out and laid out only where `--explain` asks for it. */
export interface Explanation {
  readonly working: readonly WorkingLine[];
  /** Where each figure is from, as a key of the bibliography with its place, `key#place`, or in words. */
  readonly sources: readonly Citation[];
  /** Names under which `reference/uses` knows what every such answer rests on. */
  readonly restsOn?: readonly string[];
  /** What else there is to say before the sources. */
  readonly more?: Page;
  /** True where the page shows the working at its place already. */
  readonly isShown?: boolean;
}

/** What came of it. Text goes to stdout, problems and notes to stderr; with `--json` the envelope alone. */
export interface Outcome {
  readonly exitCode: number;
  readonly page: Page;
  readonly json: Envelope;
  readonly problems?: readonly Problem[];
  readonly explained?: () => Explanation | Promise<Explanation>;
  /** What was written where, for stderr. */
  readonly notes?: readonly string[];
}

export type Run = (call: Call, io: Io) => Promise<Outcome>;

export const jsonOption: OptionSpec = { name: 'json', help: 'print one JSON object instead of text' };
export const explainOption: OptionSpec = {
  name: 'explain',
  help: 'show the equations with the numbers in them, the sources, and where they hold',
};
export const dryRunOption: OptionSpec = {
  name: 'dry-run',
  help: 'show what would be written and write nothing',
};
export const yesOption: OptionSpec = {
  name: 'yes',
  help: 'go on although a serving holds more than 200 mg of caffeine',
};
