import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import type { Call, Outcome } from './command.ts';
import { shells } from './complete-line.ts';
import { scripts } from './completion-scripts.ts';

/** The script of a shell, for it to read. */
export async function runCompletion(call: Call, _io: Io): Promise<Outcome> {
  const [typed = ''] = call.words;
  const [near] = nearestNames(typed, shells, 1);
  const known = `say ${shells.join(', ')}`;
  const hint = near === undefined ? known : `did you mean ${near}? ${known}`;
  const shell =
    shells.find((one) => one === typed) ??
    fail('unknown-word', `"${typed}" is no shell that is known here`, hint);
  const script = scripts[shell];
  return {
    exitCode: 0,
    page: [{ kind: 'lines', lines: script.trimEnd().split('\n') }],
    json: envelope({ schema: 'completion@1', given: { shell }, found: { script } }),
  };
}
