/** Short questions on a terminal, each asked again until its answer can be read. */

import type { Io } from '../io.ts';
import { visible } from '../output/visible.ts';
import { wrapped } from '../output/wrap.ts';
import { isProblemError, type Parsed, parsed, refused } from '../problem.ts';
import type { Call, Outcome } from './command.ts';

/** Whether a person is there to be asked. Nothing is asked in a pipe, nor where JSON is wanted. */
export const mayAsk = (call: Call, io: Io): boolean => io.canAsk && !call.flags.has('json');

export const say = (io: Io, text: string): void =>
  io.out(`${wrapped(visible(text), io.columns).join('\n')}\n`);

export interface Question<T> {
  readonly io: Io;
  readonly text: string;
  /** What was typed, without spaces around it; a problem that is thrown is told as one that is handed back. */
  readonly read: (typed: string) => Parsed<T> | Promise<Parsed<T>>;
}

/** The answer as it was read; undefined where the person leaves with Ctrl-C or Ctrl-D. */
export async function asked<T>({ io, text, read }: Question<T>): Promise<T | undefined> {
  for (;;) {
    const typed = await io.ask(text);
    if (typed === undefined) {
      io.out('\n');
      return undefined;
    }
    const answer = await readOrTold(typed.trim(), read);
    if (answer.ok) return answer.value;
    const { message, hint } = answer.fault;
    say(io, `  ${message}${hint === '' ? '' : `; ${hint}`}`);
  }
}

async function readOrTold<T>(typed: string, read: Question<T>['read']): Promise<Parsed<T>> {
  try {
    return await read(typed);
  } catch (thrown) {
    const problem = isProblemError(thrown) ? thrown.problems[0] : undefined;
    if (!problem) throw thrown;
    // An option is not what was typed here.
    return refused(problem.code, problem.message.replace(/^--([a-z-]+): /u, ''), problem.hint);
  }
}

/** Answers one a line, until an empty one. */
export async function askedLines<T>({ io, text, read }: Question<T>): Promise<readonly T[] | undefined> {
  const lines: T[] = [];
  const one: Question<readonly T[]>['read'] = async (typed) => {
    if (typed === '') return parsed([]);
    const line = await read(typed);
    return line.ok ? parsed([line.value]) : line;
  };
  for (;;) {
    const line = await asked({ io, text, read: one });
    if (!line || line.length === 0) return line && lines;
    lines.push(...line);
  }
}

export async function askedYes(io: Io, text: string): Promise<boolean> {
  const answer = await asked({
    io,
    text: `${text} y or n: `,
    read: (typed) => {
      if (/^y(es)?$/iu.test(typed)) return parsed(true);
      if (/^no?$/iu.test(typed)) return parsed(false);
      return refused('yes-or-no', `"${typed}" is neither y nor n`, 'type y or n');
    },
  });
  return answer ?? false;
}

export const nothingWritten = (schema: string): Outcome => ({
  exitCode: 0,
  page: [],
  json: { schema, given: {}, found: {}, cautions: [], sources: [], problems: [] },
  notes: ['nothing written'],
});
