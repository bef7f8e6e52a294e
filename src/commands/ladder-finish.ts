/** The end of a plan: shown, asked about on a terminal, and written when it is told to. */

import type { Io } from '../io.ts';
import { layOut } from '../output/page.ts';
import type { Page } from '../output/view.ts';
import type { Call } from './command.ts';
import { type LadderFiles, type LadderToWrite, ladderFiles, writeLadder } from './ladder-write.ts';
import { counted } from './series-words.ts';

export interface LadderPlan {
  readonly call: Call;
  readonly io: Io;
  readonly ladder: LadderToWrite;
  readonly pageOf: (files: LadderFiles) => Page;
}

export interface Finished {
  readonly page: Page;
  readonly files: LadderFiles;
  readonly isWritten: boolean;
  readonly notes: readonly string[];
}

/** Without `--write` nothing is written, unless a person says so at the terminal. */
export async function finishLadder(plan: LadderPlan): Promise<Finished> {
  const { call, io, ladder, pageOf } = plan;
  if (call.flags.has('write')) {
    const files = await writeLadder(ladder, call, io);
    return written(files, [...pageOf(files), ...nextSteps(ladder, files)]);
  }
  const files = await ladderFiles(ladder, io);
  const page = pageOf(files);
  const count = counted(pathsOf(files).length, 'file');
  if (io.canAsk && !call.flags.has('json')) {
    io.out(`${await layOut(page, { width: io.columns, paint: (_, text) => text })}\n`);
    const answer = await io.ask(`Write ${count}? (y/n) `);
    if (!/^y(es)?$/iu.test(answer?.trim() ?? ''))
      return { page: [], files, isWritten: false, notes: ['nothing written'] };
    const landed = await writeLadder(ladder, call, io);
    return written(landed, nextSteps(ladder, landed));
  }
  return {
    page,
    files,
    isWritten: false,
    notes: [`nothing written; --write writes ${count}, in an order drawn anew`, ...thereNotes(files)],
  };
}

/** What is written; a beaker that stands there already is not. */
const pathsOf = ({ changes }: LadderFiles): readonly string[] =>
  changes.flatMap((change) => ('path' in change && change.before !== change.after ? [change.path] : []));

function thereNotes({ numbered }: LadderFiles): readonly string[] {
  const there = numbered.filter(({ isThere }) => isThere).map(({ number }) => number);
  if (there.length === 0) return [];
  const [first = 0] = there;
  return [
    there.length === 1
      ? `trial ${first} stands there already as it is planned, neither weighed nor looked at`
      : `trials ${there.join(', ')} stand there already as they are planned, neither weighed nor looked at`,
  ];
}

const written = (files: LadderFiles, page: Page): Finished => ({
  page,
  files,
  isWritten: true,
  notes: [...pathsOf(files).map((path) => `wrote ${path}`), ...thereNotes(files)],
});

/** What to type while they are made and watched. */
function nextSteps({ series, made }: LadderToWrite, { numbered }: LadderFiles): Page {
  const numbers = numbered.map(({ number }) => number).sort((left, right) => left - right);
  const [first, last] = [numbers[0] ?? 0, numbers.at(-1) ?? 0];
  const isRun = last - first === numbers.length - 1;
  const all = first === last ? `${first}` : isRun ? `${first}-${last}` : numbers.join(' ');
  return [
    {
      kind: 'text',
      text: `The files say that they are made ${made ?? 'now'}; put "made" right in the file of a beaker that is made ${made === undefined ? 'later' : 'at another time'}.`,
    },
    {
      kind: 'lines',
      lines: [
        `neckring weigh ${first}   then ${first === last ? 'stir' : `the others to ${last}`}, in the order of their numbers`,
        `neckring look ${all} clear   what was seen, day by day`,
        `neckring series "${series.name}"   where the break lies`,
      ],
    },
  ];
}
