import { numberText } from '../calc/number-text.ts';
import type { Io } from '../io.ts';
import type { KnownObjects } from '../ledger/at-revision.ts';
import { envelope } from '../output/answer-json.ts';
import { smallPlot } from '../output/small-plot.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { openSide } from './compare-side.ts';
import { type Figure, figureAt, figuresAsked } from './history-figures.ts';
import { type History, type HistoryEntry, historyOf } from './history-record.ts';

/** A line for each commit that changed a record, and figures of it through time. */
export async function runHistory(call: Call, io: Io): Promise<Outcome> {
  const figures = figuresAsked(call.values['show'] ?? []);
  const known: KnownObjects = new Map();
  const side = await openSide(io, call.words[0] ?? '', known);
  const { here, file, card } = side;
  const text = here.revision ? undefined : textNow(side);
  const history = await historyOf({ io, here, file, text, withFigures: figures.length > 0 });
  if (!history.entries.some(({ commit }) => commit)) return notCommitted(file);
  const name = card ? side.label : file;
  return {
    exitCode: 0,
    page: historyPage(history, figures, { name, width: io.columns }),
    json: envelope({
      schema: 'history@1',
      given: { file, show: figures.map(({ key }) => key) },
      found: { commits: history.entries.map((entry) => entryJson(entry, figures)) },
      problems: side.problems,
    }),
    problems: side.problems,
    notes: await shallowNote(here.root, history),
    explained: async () =>
      (await import('./explain-records.ts')).historyExplanation(history.entries, figures),
  };
}

const textNow = ({ here, file }: Awaited<ReturnType<typeof openSide>>): string =>
  new TextDecoder().decode(here.port.read(`${here.root}/${file}`));

const notCommitted = (file: string): never =>
  fail('not-committed', `${file} is in no commit yet`, `git add ${file}, then git commit`);

async function shallowNote(root: string, { entries }: History): Promise<readonly string[]> {
  const { isShallow } = await import('../ledger/git.ts');
  const isCut = entries.length > 0 && (await isShallow(root));
  return isCut
    ? ['this clone is shallow: older commits are not here; git fetch --unshallow brings them']
    : [];
}

interface Showing {
  readonly name: string;
  readonly width: number;
}

function historyPage({ entries }: History, figures: readonly Figure[], { name, width }: Showing): Page {
  const columns = [
    { head: 'when', align: 'left' },
    { head: 'who', align: 'left' },
    ...figures.map(({ label }) => ({ head: label, align: 'right' }) as const),
    { head: 'what changed', align: 'left' },
  ] as const;
  return [
    { kind: 'heading', text: `${visible(name)}: ${countWords(entries)}` },
    {
      kind: 'grid',
      columns,
      rows: entries.map((entry) => [
        whenText(entry),
        visible(entry.commit?.author ?? ''),
        ...figures.map((figure) => figureText(figure, entry)),
        visible(entry.words.join('; ')),
      ]),
    },
    ...figures.flatMap((figure) => plotOf(figure, entries, width)),
  ];
}

function countWords(entries: readonly HistoryEntry[]): string {
  const count = entries.filter(({ commit }) => commit).length;
  return `${count} commit${count === 1 ? '' : 's'}`;
}

const whenText = ({ commit }: HistoryEntry): string =>
  commit ? `${commit.at.slice(0, 16).replace('T', ' ')} ${commit.short}` : 'not committed';

function figureText(figure: Figure, entry: HistoryEntry): string {
  const value = figureAt(figure, entry.side);
  return value === undefined ? '-' : numberText(value, figure.digits);
}

function plotOf(figure: Figure, entries: readonly HistoryEntry[], width: number): Page {
  const lines = smallPlot({
    values: entries.map(({ side }) => figureAt(figure, side)),
    textOf: (value) => numberText(value, figure.digits),
    width: Math.min(width, 80),
  });
  const unit = figure.unit === '' ? '' : `, ${figure.unit}`;
  return lines.length === 0
    ? []
    : [
        { kind: 'heading', text: `${figure.label}${unit}, from the oldest to the newest` },
        { kind: 'lines', lines },
      ];
}

function entryJson(entry: HistoryEntry, figures: readonly Figure[]): object {
  const { commit, words, renamedFrom, side } = entry;
  return {
    commit: commit?.id ?? null,
    short: commit?.short ?? null,
    at: commit?.at ?? null,
    author: commit?.author ?? null,
    message: commit?.message ?? null,
    renamedFrom: renamedFrom ?? null,
    readable: side?.document !== undefined,
    changed: words,
    figures: Object.fromEntries(
      figures.map((figure) => [figure.key, { value: figureAt(figure, side) ?? null, unit: figure.unit }]),
    ),
  };
}
