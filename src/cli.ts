/** The command line: words in, exit code out. The only place that catches. */

import { Command, CommanderError } from 'commander';
import { joinAmountWords } from './commands/amount-words.ts';
import type { Call, CommandSpec, OptionSpec } from './commands/command.ts';
import { commandNamed, listedCommands } from './commands/families.ts';
import { commandHelp, overview, versionText } from './commands/help.ts';
import { type Io, wantsColour } from './io.ts';
import { envelope, jsonText } from './output/answer-json.ts';
import { defectText } from './output/defect-text.ts';
import { layOut } from './output/page.ts';
import type { Paint } from './output/paint.ts';
import { problemsText } from './output/problem-page.ts';
import { tameText, visible } from './output/visible.ts';
import { wrapped } from './output/wrap.ts';
import { isProblemError, type Problem, type ProblemError } from './problem.ts';
import { withProgress } from './progress.ts';
import { usageProblem } from './usage.ts';

const plain: Paint = (_, text) => text;
const exitDefect = 70;

/** Runs one command line and returns its exit code; never ends the process. */
export async function run(typed: readonly string[], port: Io): Promise<number> {
  if (typed[0] === 'complete-words') return completed(typed.slice(1), port);
  const io = withProgress({ ...port, ask: (question) => port.ask(tameText(question)) });
  const noColour = typed.includes('--no-color');
  const isPaged = typed.includes('--page');
  const words = typed.filter((word) => word !== '--no-color' && word !== '--page');
  const asJson = words.includes('--json');
  let errPaint = plain;
  try {
    const outPaint = await paintFor(wantsColour(io, io.outIsTerminal, noColour));
    errPaint = await paintFor(wantsColour(io, io.errIsTerminal, noColour));
    return await dispatch(words, io, { outPaint, errPaint, asJson, isPaged });
  } catch (thrown) {
    const told = isProblemError(thrown) ? thrown : await refusedByDisk(thrown);
    if (told) return await tell(told.problems, told.exitCode, words, io, asJson, errPaint);
    io.err(defectText(thrown, io.environment['NECKRING_DEBUG'] === '1'));
    return exitDefect;
  }
}

/** What a shell asks at each Tab; whatever goes wrong, the person who is typing sees nothing of it. */
async function completed(words: readonly string[], io: Io): Promise<number> {
  try {
    await (await import('./commands/complete-words.ts')).completeWords(words, io);
  } catch (thrown) {
    if (io.environment['NECKRING_DEBUG'] === '1') io.err(defectText(thrown, true));
  }
  return 0;
}

/** What the disk refused where nobody looked for it, in words that name the file and the cause. */
async function refusedByDisk(thrown: unknown): Promise<ProblemError | undefined> {
  if (!(thrown instanceof Error) || !('path' in thrown) || !('syscall' in thrown)) return undefined;
  if (String(thrown.syscall).startsWith('spawn')) return undefined;
  const { diskProblem } = await import('./ledger/disk-problem.ts');
  const told = diskProblem(thrown, String(thrown.path));
  return isProblemError(told) ? told : undefined;
}

interface Manner {
  readonly outPaint: Paint;
  readonly errPaint: Paint;
  readonly asJson: boolean;
  readonly isPaged: boolean;
}

async function dispatch(words: readonly string[], io: Io, manner: Manner): Promise<number> {
  const [first] = words;
  const helpWidth = Math.min(io.columns, 100);
  if (
    first === undefined ||
    first === '--help' ||
    first === '-h' ||
    (first === 'help' && words.length === 1)
  ) {
    await show(
      await layOut(overview(await listedCommands()), { width: helpWidth, paint: manner.outPaint }),
      io,
      manner,
    );
    return 0;
  }
  if (first === '--version' || first === '-V') {
    io.out(versionText);
    return 0;
  }
  const spec = await commandNamed((first === 'help' ? words[1] : first) ?? '');
  if (spec && (first === 'help' || words.includes('--help') || words.includes('-h'))) {
    await show(
      await layOut(commandHelp(spec, helpWidth), { width: helpWidth, paint: manner.outPaint }),
      io,
      manner,
    );
    return 0;
  }
  const call = spec ? understand(words, spec) : await unknownCommand(words);
  if ('code' in call) return await tell([call], 2, words, io, manner.asJson, manner.errPaint);
  const runCommand = await spec?.load();
  if (!runCommand) throw new Error(`no command ${call.command}`);
  const ran = await runCommand(call, io);
  const isExplained = ran.explained !== undefined && call.flags.has('explain');
  const outcome = isExplained ? await (await import('./commands/explained.ts')).withExplanation(ran) : ran;
  if (manner.asJson) {
    await show(jsonText(outcome.json), io, manner);
    return outcome.exitCode;
  }
  const problemWidth = io.outIsTerminal ? io.columns : undefined;
  await show(
    await layOut(outcome.page, { width: io.columns, paint: manner.outPaint, problemWidth }),
    io,
    manner,
  );
  io.err(problemsText(outcome.problems ?? [], manner.errPaint, errWidth(io)));
  const noteWidth = errWidth(io) ?? Number.POSITIVE_INFINITY;
  for (const note of outcome.notes ?? []) io.err(`${wrapped(visible(note), noteWidth).join('\n')}\n`);
  return outcome.exitCode;
}

/** An answer, in the person's pager where `--page` asks for it; without one it is shown all the same. */
async function show(text: string, io: Io, { isPaged, errPaint }: Manner): Promise<void> {
  if (!isPaged || !io.outIsTerminal || !io.page || text === '') return io.out(text);
  const problem = await io.page(text);
  if (!problem) return;
  io.out(text);
  io.err(problemsText([problem], errPaint, errWidth(io)));
}

async function unknownCommand(words: readonly string[]): Promise<Problem> {
  const word = (words[0] === 'help' ? words[1] : words[0]) ?? '';
  return usageProblem({ kind: 'unknown command', word }, undefined, await listedCommands());
}

/** The command line as commander reads it, or the one problem with it. */
function understand(words: readonly string[], spec: CommandSpec): Call | Problem {
  const rest = joinAmountWords(words.slice(1), spec);
  let call: Call | undefined;
  const program = new Command(spec.name)
    .exitOverride()
    .configureOutput({ writeErr: () => {}, writeOut: () => {} });
  program.helpOption(false).allowExcessArguments(false);
  for (const word of spec.words) {
    const name = word.many ? `${word.name}...` : word.name;
    program.argument(word.required ? `<${name}>` : `[${name}]`);
  }
  const order: (readonly [string, string])[] = [];
  for (const option of spec.options) addOption(program, option, (text) => order.push([option.name, text]));
  program.action(() => {
    call = { ...callOf(spec, program), order };
  });
  try {
    program.parse([...rest], { from: 'user' });
  } catch (thrown) {
    if (!(thrown instanceof CommanderError)) throw thrown;
    return usageProblem({ kind: thrown.code, word: thrown.message, words: rest }, spec, []);
  }
  if (!call) throw new Error('commander parsed a line but ran no action');
  return call;
}

function addOption(program: Command, option: OptionSpec, heard: (text: string) => void): void {
  const collect = (value: string, before: readonly string[] | undefined): readonly string[] => {
    heard(value);
    return [...(before ?? []), value];
  };
  if (option.placeholder === undefined) program.option(`--${option.name}`, option.help);
  else program.option(`--${option.name} <${option.placeholder}>`, option.help, collect);
}

function callOf(spec: CommandSpec, program: Command): Call {
  const values: Record<string, readonly string[]> = {};
  const flags = new Set<string>();
  for (const option of spec.options) {
    const value: unknown = program.getOptionValue(camelCase(option.name));
    if (Array.isArray(value)) values[option.name] = value.map(String);
    else if (value === true) flags.add(option.name);
  }
  return { command: spec.name, words: program.args, values, flags };
}

const camelCase = (name: string): string =>
  name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

async function tell(
  problems: readonly Problem[],
  exitCode: number,
  words: readonly string[],
  io: Io,
  asJson: boolean,
  paint: Paint,
): Promise<number> {
  if (asJson) {
    const command = (await commandNamed(words[0] ?? ''))?.name ?? 'neckring';
    io.out(jsonText(envelope({ schema: `${command}@1`, problems })));
  } else {
    io.err(problemsText(problems, paint, errWidth(io)));
  }
  return exitCode;
}

/** Problems are broken to the width on a terminal only; other programs read them a line each. */
const errWidth = (io: Io): number | undefined => (io.errIsTerminal ? io.columns : undefined);

async function paintFor(colour: boolean): Promise<Paint> {
  if (!colour) return plain;
  const { colourPaint } = await import('./output/paint.ts');
  return colourPaint();
}
