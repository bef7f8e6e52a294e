/** The one JSON object that every command prints with `--json`, also when it fails. */

import type { Answer, Caution, Citation, Facts, WorkingLine } from '../calc/answer.ts';
import type { Problem } from '../problem.ts';
import { escapedInJson } from './visible.ts';

export interface Envelope {
  readonly schema: string;
  readonly given: unknown;
  readonly found: unknown;
  /** With `--explain` alone. */
  readonly working?: readonly WorkingLine[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Citation[];
  readonly problems: readonly object[];
}

interface Parts {
  readonly schema: string;
  readonly given?: Facts | Readonly<Record<string, unknown>>;
  readonly found?: Facts | Readonly<Record<string, unknown>>;
  readonly cautions?: readonly Caution[];
  readonly sources?: readonly Citation[];
  readonly problems?: readonly Problem[];
}

export function envelope(parts: Parts): Envelope {
  return {
    schema: parts.schema,
    given: parts.given ?? {},
    found: parts.found ?? {},
    cautions: parts.cautions ?? [],
    sources: (parts.sources ?? []).map(({ for: purpose, source, fromMemory }) => ({
      for: purpose,
      source,
      fromMemory,
    })),
    problems: (parts.problems ?? []).map(problemJson),
  };
}

export function answerJson(answer: Answer, showsWorking = false): Envelope {
  const told = envelope({ schema: `${answer.calculator}@${answer.version}`, ...answer });
  return showsWorking ? { ...told, working: answer.working } : told;
}

export function problemJson(problem: Problem): object {
  const { code, severity, message, hint, place } = problem;
  const { file, line, column } = place ?? {};
  return { code, severity, message, hint, ...(place ? { file, line, column } : {}) };
}

/** Pure of everything that could drive a terminal, also of what JSON itself would let pass. */
export const jsonText = (value: unknown): string => `${escapedInJson(JSON.stringify(value, null, 2))}\n`;
