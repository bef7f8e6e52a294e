/**
 * What can be wrong with what a person typed, as data. Open to every layer; words are made where the
 * fault is seen, the layout of a problem on the screen is made in `output/problems.ts`.
 */

export type Severity = 'error' | 'warning';

/** A stretch of text in a file: line and column count from 1, length in UTF-16 units on that line. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly length: number;
  /** The whole line, for the excerpt with its caret. */
  readonly lineText: string;
}

export interface Problem {
  readonly code: string;
  readonly severity: Severity;
  /** What is wrong, with the value that was seen. No full stop. */
  readonly message: string;
  /** What to do. No full stop. */
  readonly hint: string;
  readonly place?: Place;
}

/** A fault in a piece of text that has no file yet: `start` and `end` are offsets into that text. */
export interface Fault {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
  readonly start?: number;
  readonly end?: number;
}

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: Fault };

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value });

export const refused = (
  code: string,
  message: string,
  hint: string,
  span?: readonly [number, number],
): Parsed<never> => ({
  ok: false,
  fault: { code, message, hint, ...(span ? { start: span[0], end: span[1] } : {}) },
});

/** The exception that carries problems to the person; anything else thrown is a defect of ours. */
export class ProblemError extends Error {
  readonly isProblemError = true;
  readonly problems: readonly Problem[];
  readonly exitCode: number;

  constructor(problems: readonly Problem[], exitCode = 2) {
    super(problems[0]?.message ?? 'a problem');
    this.name = 'ProblemError';
    this.problems = problems;
    this.exitCode = exitCode;
  }
}

/** Each bundle has its own copy of the class, so the mark is looked at, not the prototype. */
export function isProblemError(thrown: unknown): thrown is ProblemError {
  return typeof thrown === 'object' && thrown !== null && 'isProblemError' in thrown;
}

export function fail(code: string, message: string, hint: string, exitCode = 2): never {
  throw new ProblemError([{ code, severity: 'error', message, hint }], exitCode);
}
