/** All series of the ledger with how far they are. */

import type { SeriesCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { outcomeOf, watchRules } from '../ledger/outcome.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { judgedSample } from '../ledger/rung-standing.ts';
import { envelope } from '../output/answer-json.ts';
import { visible } from '../output/visible.ts';
import { normaliseName } from '../reference/name.ts';
import type { Outcome } from './command.ts';
import type { Here } from './open-ledger.ts';

interface Listed {
  readonly card: SeriesCard;
  readonly outcomes: readonly string[];
}

export async function listSeries(here: Here): Promise<Outcome> {
  const opened = await openFolder(here, 'series', readSeriesCard);
  const trials = opened.length === 0 ? [] : await openFolder(here, 'trials', readTrialCard);
  const members = bySeries(trials.flatMap(({ card }) => (card ? [card] : [])));
  const all = opened.flatMap(({ card }): readonly Listed[] =>
    card ? [{ card, outcomes: outcomesIn(card, members.get(normaliseName(card.name)) ?? [], here) }] : [],
  );
  const errors = opened.flatMap(({ problems }) => problems.filter(({ severity }) => severity === 'error'));
  return {
    exitCode: errors.length > 0 ? 1 : 0,
    page: [
      all.length === 0
        ? { kind: 'text', text: opened.length === 0 ? noneYet : noneRead }
        : {
            kind: 'grid',
            columns: [
              { head: 'series', align: 'left' },
              { head: 'varies', align: 'left' },
              { head: 'held', align: 'right' },
              { head: 'failed', align: 'right' },
              { head: 'watching', align: 'right' },
              { head: 'decided', align: 'left' },
            ],
            rows: all.map(rowOf),
          },
    ],
    json: envelope({ schema: 'series@1', found: { series: all.map(listedJson) }, problems: errors }),
    problems: errors,
  };
}

const noneYet = 'No series yet. neckring ladder plans one and writes it.';
const noneRead = 'No series that can be read.';

/** The trials of each series by its name as names are compared, in the order of the files. */
function bySeries(trials: readonly TrialCard[]): ReadonlyMap<string, readonly TrialCard[]> {
  const members = new Map<string, TrialCard[]>();
  for (const card of trials) {
    if (!card.series) continue;
    const name = normaliseName(card.series.text);
    const known = members.get(name);
    if (known) known.push(card);
    else members.set(name, [card]);
  }
  return members;
}

/** What became of the sample that decides, of every trial of the series but the blank. */
function outcomesIn(series: SeriesCard, trials: readonly TrialCard[], { bench }: Here): readonly string[] {
  return trials.flatMap((card) => {
    const sample = card.number === series.blank ? undefined : judgedSample(card.samples, series);
    return sample ? [outcomeOf({ card, sample, rules: watchRules({ sample, bench, series }) }).outcome] : [];
  });
}

const count = ({ outcomes }: Listed, outcome: string): number =>
  outcomes.filter((one) => one === outcome).length;

function rowOf(one: Listed): readonly string[] {
  const { card } = one;
  const decided = [card.decided?.date?.written.slice(0, 10), card.decided?.text].filter(Boolean).join(' ');
  return [
    visible(card.name),
    visible(card.varies ?? ''),
    ...['held', 'failed', 'watching'].map((outcome) => String(count(one, outcome))),
    visible(decided),
  ];
}

const leaf = (value: number) => ({ value, unit: '' });

function listedJson(one: Listed) {
  const { card } = one;
  return {
    series: card.name,
    file: card.file,
    varies: card.varies ?? '',
    beakers: leaf(one.outcomes.length),
    held: leaf(count(one, 'held')),
    failed: leaf(count(one, 'failed')),
    watching: leaf(count(one, 'watching')),
    ended: leaf(count(one, 'ended')),
    decided: card.decided?.text ?? '',
  };
}
