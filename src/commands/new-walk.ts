/** `new` alone on a terminal: short questions, then what would be written, and whether to write it. */

import type { Io } from '../io.ts';
import { readText } from '../ledger/open-file.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { isProblemError, parsed } from '../problem.ts';
import { withArithmetic } from './calculate.ts';
import type { Call, Outcome, Run } from './command.ts';
import { bookOf } from './ledger-book.ts';
import { type Here, openHere } from './open-ledger.ts';
import { asked, askedLines, askedYes, nothingWritten, say } from './questions.ts';
import { readTypedItems } from './typed-plan.ts';

export async function walkNew(call: Call, io: Io, write: Run): Promise<Outcome> {
  const here = await openHere(io);
  const filled = await filledCall(call, io, here);
  if (!filled) return nothingWritten('new@1');
  const planned = await write({ ...filled, flags: new Set([...filled.flags, 'dry-run']) }, io);
  if (call.flags.has('dry-run')) return planned;
  const lines = planned.page.flatMap((block) => (block.kind === 'lines' ? block.lines : []));
  io.out('\n');
  for (const line of lines) say(io, `  ${line}`);
  io.out('\n');
  for (const fault of await stageFaults(`${lines.join('\n')}\n`, here)) say(io, `! ${fault}`);
  return (await askedYes(io, 'Write this?')) ? write(filled, io) : nothingWritten('new@1');
}

/** The command line that says the same as the answers; undefined where the person left. */
async function filledCall(call: Call, io: Io, here: Here): Promise<Call | undefined> {
  say(io, 'A new trial. Ctrl-C leaves and writes nothing.');
  const title = await asked({ io, text: 'What is it, in a few words? ', read: (typed) => parsed(typed) });
  if (title === undefined) return undefined;
  const book = await bookOf(here);
  say(io, 'What goes in, in the order of addition, one a line, such as');
  say(io, '  2 g sweet orange oil');
  say(io, '  to 50 g water');
  say(io, 'Enter alone ends the list.');
  const items = await askedLines({
    io,
    text: '  item: ',
    read: async (typed) => {
      await withArithmetic(() => readTypedItems([typed], book));
      return parsed(typed);
    },
  });
  if (!items) return undefined;
  const steps = items.length === 0 ? [] : await askedSteps(io);
  if (!steps) return undefined;
  const values = { ...(title === '' ? {} : { title: [title] }), item: items, step: steps };
  return { ...call, values };
}

async function askedSteps(io: Io): Promise<readonly string[] | undefined> {
  say(io, 'How it is made, one step a line, such as: warm the oil and the emulsifier to 60 C. Enter ends.');
  return askedLines({ io, text: '  step: ', read: (typed) => parsed(typed) });
}

/** What can't be solved in it, such as two lines that make up to an amount. */
async function stageFaults(text: string, here: Here): Promise<readonly string[]> {
  const { pictureOf } = await import('./trial-picture.ts');
  const opened = readText('trials/new.yaml', text, (document) => readTrialCard(document, here.settings));
  const { card } = opened;
  if (!card || card.stages.every(({ items }) => items.length === 0)) return [];
  try {
    await pictureOf(here, { ...opened, card }, await bookOf(here));
    return [];
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return thrown.problems
      .filter(({ severity }) => severity === 'error')
      .map(({ message, hint }) => `${message}; ${hint}`);
  }
}
