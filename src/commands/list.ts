import type { Io } from '../io.ts';
import type { TrialHead } from '../ledger/watch/trial-row.ts';
import { envelope } from '../output/answer-json.ts';
import type { Block } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Call, Outcome } from './command.ts';
import { openLines } from './open-looks.ts';

const newest = 40;

export async function runList(call: Call, io: Io): Promise<Outcome> {
  const { trials, errors } = await openLines(io);
  const isWhole = call.flags.has('all') || call.flags.has('json') || !io.outIsTerminal;
  const shown = isWhole ? trials : trials.slice(-newest);
  const rest = trials.length - shown.length;
  return {
    exitCode: 0,
    page: [
      ...(trials.length === 0
        ? [{ kind: 'text', text: 'No trials yet. neckring new --title "…" writes the first.' } as const]
        : [table(shown)]),
      ...(rest > 0
        ? [
            {
              kind: 'text',
              text: `and ${rest} older; neckring list --all shows every one`,
              tone: 'faint',
            } as const,
          ]
        : []),
    ],
    json: envelope({
      schema: 'list@1',
      found: { trials: call.flags.has('json') ? trials.map(trialJson) : [] },
    }),
    ...(errors > 0
      ? { notes: [`${errors} error${errors === 1 ? '' : 's'} in the files; neckring check shows them`] }
      : {}),
  };
}

function table(trials: readonly TrialHead[]): Block {
  const isSeries = trials.some(({ series }) => series !== '');
  return {
    kind: 'grid',
    columns: [
      { head: 'trial', align: 'right' },
      { head: 'made', align: 'left' },
      ...(isSeries ? [{ head: 'series', align: 'left' } as const] : []),
      { head: 'title', align: 'left' },
      { head: 'last look', align: 'left' },
    ],
    rows: trials.map((trial) => [
      String(trial.number),
      trial.made.slice(0, 10),
      ...(isSeries ? [visible(trial.series)] : []),
      visible(trial.title),
      lastLook(trial),
    ]),
  };
}

/** The newest look of each sample; the sample is named where there are several. */
const lastLook = ({ newest }: TrialHead): string =>
  newest
    .flatMap(({ sample, look }) => {
      if (!look) return [];
      const words = look.day === undefined ? look.words : `${look.words} d${look.day}`;
      return [newest.length > 1 ? `${visible(sample)}: ${words}` : words];
    })
    .join('; ');

const trialJson = ({ number, file, title, made, series, newest }: TrialHead): object => ({
  trial: number,
  file,
  title,
  made,
  series,
  lastLooks: newest.map(({ sample, look }) => ({ sample, look: look?.words ?? '' })),
});
