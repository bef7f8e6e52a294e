/** What a text of a file would be wrong in if it stood in the ledger, place by place. */

import type { Problem } from '../../problem.ts';
import type { Ingredient } from '../../reference/ingredient.ts';
import type { AnyCard, BatchCard, FormulaCard, SeriesCard, TrialCard } from '../cards.ts';
import { checkLedger, openBookOf, sourcesOf } from '../checks.ts';
import { benchFile } from '../find-root.ts';
import { ingredientsFile } from '../folder.ts';
import type { Ledger } from '../ledger.ts';
import { type Opened, readText } from '../open-file.ts';
import { parseDocument } from '../parse.ts';
import { readBatchCard } from '../read-batch.ts';
import { readBenchCard } from '../read-bench.ts';
import { readFormulaCard } from '../read-formula.ts';
import { readIngredientsCard } from '../read-ingredients.ts';
import { readSeriesCard } from '../read-series.ts';
import { readTrialCard } from '../read-trial.ts';
import type { ReadSettings } from '../reading.ts';
import { resolveStages } from '../resolve.ts';
import type { MapEntry, TreeNode } from '../tree.ts';
import type { MergeFault } from './merge-texts.ts';

export interface FaultsIn {
  /** From the root of the ledger, with `/`. */
  readonly file: string;
  /** The rest of the ledger; absent where there is none around the file. */
  readonly ledger: Ledger | undefined;
  readonly settings: ReadSettings;
  readonly ingredients: readonly Ingredient[];
}

/** Looks at one text of a file after another. Sums and products must have been loaded. */
export function faultsIn({
  file,
  ledger,
  settings,
  ingredients,
}: FaultsIn): (text: string) => readonly MergeFault[] {
  const kind = kindOf(file);
  if (!kind) return () => [];
  return (text) => {
    const opened = kind.open(file, text, settings);
    const whole = ledger && kind.into(ledger, opened);
    const all = whole ? checkLedger(whole, ingredients) : opened.problems;
    const own = all.filter(({ severity, place }) => severity === 'error' && (place?.file ?? file) === file);
    const { root } = parseDocument(file, text);
    return [
      ...own.map((problem) => ({
        code: problem.code,
        message: problem.message,
        path: pathAt(root, offsetOf(problem, text)),
      })),
      ...(whole ? mixtureWarnings(opened.card, whole, ingredients, root) : []),
    ];
  };
}

/** A stage that uses more of another than there is of it: a total that no longer holds. */
function mixtureWarnings(
  card: AnyCard | undefined,
  ledger: Ledger,
  ingredients: readonly Ingredient[],
  root: TreeNode,
): readonly MergeFault[] {
  if (!card?.isSound || !('stages' in card)) return [];
  const sources = sourcesOf(ledger, openBookOf(ledger, ingredients).book);
  const number = card.kind === 'trial' ? card.number : undefined;
  return resolveStages({ stages: card.stages, number }, sources)
    .found.filter(({ finding }) => finding.severity === 'warning')
    .map(({ finding, span }) => ({
      code: finding.code,
      message: finding.message,
      path: pathAt(root, span.start),
    }));
}

interface Kind {
  readonly open: (file: string, text: string, settings: ReadSettings) => Opened<AnyCard>;
  /** The ledger with this in the place of what stands in the file. */
  readonly into: (ledger: Ledger, opened: Opened<AnyCard>) => Ledger;
}

const cardsOf = <Card extends AnyCard>(
  cards: readonly Card[],
  file: string,
  card: Card | undefined,
): Card[] => [...cards.filter((one) => one.file !== file), ...(card ? [card] : [])];

type Isa<Card extends AnyCard> = (card: AnyCard | undefined) => card is Card;
const isTrial: Isa<TrialCard> = (card): card is TrialCard => card?.kind === 'trial';
const isSeries: Isa<SeriesCard> = (card): card is SeriesCard => card?.kind === 'series';
const isFormula: Isa<FormulaCard> = (card): card is FormulaCard => card?.kind === 'formula';
const isBatch: Isa<BatchCard> = (card): card is BatchCard => card?.kind === 'batch';
const only = <Card extends AnyCard>(card: AnyCard | undefined, isa: Isa<Card>): Card | undefined =>
  isa(card) ? card : undefined;

const kinds: Readonly<Record<string, Kind>> = {
  trials: {
    open: (file, text, settings) => readText(file, text, (document) => readTrialCard(document, settings)),
    into: (ledger, { file, card }) => ({
      ...ledger,
      trials: cardsOf(ledger.trials, file, only(card, isTrial)),
    }),
  },
  series: {
    open: (file, text, settings) => readText(file, text, (document) => readSeriesCard(document, settings)),
    into: (ledger, { file, card }) => ({
      ...ledger,
      series: cardsOf(ledger.series, file, only(card, isSeries)),
    }),
  },
  formulas: {
    open: (file, text, settings) => readText(file, text, (document) => readFormulaCard(document, settings)),
    into: (ledger, { file, card }) => ({
      ...ledger,
      formulas: cardsOf(ledger.formulas, file, only(card, isFormula)),
    }),
  },
  batches: {
    open: (file, text, settings) => readText(file, text, (document) => readBatchCard(document, settings)),
    into: (ledger, { file, card }) => ({
      ...ledger,
      batches: cardsOf(ledger.batches, file, only(card, isBatch)),
    }),
  },
  [benchFile]: {
    open: (file, text) => readText(file, text, readBenchCard),
    into: (ledger) => ledger,
  },
  [ingredientsFile]: {
    open: (file, text, settings) =>
      readText(file, text, (document) => readIngredientsCard(document, settings)),
    into: (ledger, { card }) => ({ ...ledger, ingredients: card?.kind === 'ingredients' ? card : undefined }),
  },
};

/** The kind of a file by where it stands, with the ledger that it is put into made whole. */
function kindOf(file: string): Kind | undefined {
  const [folder = ''] = file.split('/');
  const kind = Object.hasOwn(kinds, folder) ? kinds[folder] : undefined;
  return (
    kind && {
      open: kind.open,
      into: (ledger, opened) => ({
        ...kind.into(ledger, opened),
        documents: new Map([...ledger.documents, [file, opened.document]]),
        unread: [...ledger.unread.filter((one) => one !== file), ...(opened.card ? [] : [file])],
        problems: [...ledger.problems.filter(({ place }) => place?.file !== file), ...opened.problems],
      }),
    }
  );
}

function offsetOf({ place }: Problem, text: string): number {
  if (!place) return 0;
  const above = text.split('\n', place.line - 1).reduce((sum, line) => sum + line.length + 1, 0);
  return above + place.column - 1;
}

/** The path to what an offset lies in, as deep as a merge can leave it apart: a key at the root, or one stage. */
function pathAt(root: TreeNode, offset: number): readonly string[] {
  const top = entryAround(root, offset);
  if (!top) return [];
  const inner = top.key.text === 'stages' ? entryAround(top.value, offset) : undefined;
  return inner ? [top.key.text, inner.key.text] : [top.key.text];
}

const entryAround = (node: TreeNode, offset: number): MapEntry | undefined =>
  node.kind === 'map' ? node.entries.findLast(({ key }) => key.start <= offset) : undefined;
