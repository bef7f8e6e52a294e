import type { Io } from '../io.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { envelope } from '../output/answer-json.ts';
import type { Block } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Call, Outcome } from './command.ts';
import { newestLook } from './look-strip.ts';
import { openLooks } from './open-looks.ts';

const newest = 40;

export async function runList(call: Call, io: Io): Promise<Outcome> {
  const { trials, errors } = await openLooks(io);
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

function table(trials: readonly TrialCard[]): Block {
  const isSeries = trials.some((trial) => trial.series);
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
      trial.made?.written.slice(0, 10) ?? '',
      ...(isSeries ? [visible(trial.series?.text ?? '')] : []),
      visible(trial.title ?? ''),
      lastLook(trial),
    ]),
  };
}

/** The newest look of each sample; the sample is named where there are several. */
function lastLook(trial: TrialCard): string {
  const looks = trial.samples.flatMap((sample) => {
    const last = newestLook(trial, sample);
    if (!last) return [];
    const day = last.day === undefined ? '' : ` d${last.day}`;
    return [
      trial.samples.length > 1 ? `${visible(sample.name)}: ${last.words}${day}` : `${last.words}${day}`,
    ];
  });
  return looks.join('; ');
}

function trialJson(trial: TrialCard): object {
  return {
    trial: trial.number,
    file: trial.file,
    title: trial.title ?? '',
    made: trial.made?.written ?? '',
    series: trial.series?.text ?? '',
    lastLooks: trial.samples.map((sample) => ({
      sample: sample.name,
      look: newestLook(trial, sample)?.words ?? '',
    })),
  };
}
