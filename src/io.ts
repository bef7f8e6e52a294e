/** The port to the world: everything that reads, writes, asks or looks at the clock goes through here. */

import type { Problem } from './problem.ts';

export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly outIsTerminal: boolean;
  readonly errIsTerminal: boolean;
  /** True where a person can be asked something. */
  readonly canAsk: boolean;
  /** Asks one line; undefined when the person leaves with Ctrl-C or Ctrl-D. */
  readonly ask: (question: string) => Promise<string | undefined>;
  /** Shows a text in the person's own pager; what is wrong where there is none. Left out where none can be. */
  readonly page?: (text: string) => Promise<Problem | undefined>;
  /** Says how far a long piece of work has come; left out where nobody watches. */
  readonly progress?: (text: string) => void;
  readonly columns: number;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly workingFolder: string;
  /** Node and the script that was started, for whoever is to start it again. */
  readonly program?: readonly [node: string, script: string];
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** A number from 0 to 1 for shuffling; fixed in tests. */
  readonly random: () => number;
}

/** Whether to colour a stream: first match wins. */
export function wantsColour(io: Io, isTerminal: boolean, noColourAsked: boolean): boolean {
  const { environment } = io;
  if (noColourAsked || environment['NO_COLOR']) return false;
  const forced = environment['FORCE_COLOR'];
  if (forced !== undefined && forced !== '') return forced !== '0';
  return isTerminal && environment['TERM'] !== 'dumb';
}
