/** A card as it is laid beside another: its lines with what they are, whatever they are called and typed in. */

import type { Book, BookEntry } from '../calc/book.ts';
import type {
  ComparedDocument,
  ComparedEntry,
  ComparedFact,
  ComparedItem,
  ComparedStage,
  ComparedStep,
} from '../calc/compare/document.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import type { Amount } from '../calc/quantity.ts';
import type { Range } from '../calc/range.ts';
import { normaliseName } from '../reference/name.ts';
import type { AimCard, BatchCard, FormulaCard, ItemCard, StageCard, TrialCard } from './cards.ts';
import { flatFacts, rounded, sameText } from './flat-facts.ts';
import { isSameName, otherStageOf } from './stage-name.ts';
import type { TimeZone } from './times.ts';
import { entryOf, type MapEntry, type TreeNode, valueUnder } from './tree.ts';

export type RecordCard = TrialCard | FormulaCard | BatchCard;

export interface DocumentParts {
  readonly card: RecordCard;
  readonly book: Book;
  readonly zone: TimeZone | undefined;
  /** Where it could be solved. */
  readonly mixture?: Mixture | undefined;
}

/** What names the record, or stands in parts of its own. */
const told: ReadonlySet<string> = new Set([
  'trial',
  'formula',
  'batch',
  'stages',
  'samples',
  'observations',
  'results',
  'aim',
]);

export function comparedDocument(parts: DocumentParts): ComparedDocument {
  const { card, zone } = parts;
  const { root } = card;
  const named = card.kind === 'batch' ? new Set([...told].filter((key) => key !== 'formula')) : told;
  return {
    facts: flatFacts({ node: root, zone, without: named }),
    aims: card.kind === 'formula' ? card.aims.map(aimFact) : [],
    stages: card.stages.map((stage) => comparedStage(stage, parts)),
    samples: mapEntries(valueUnder(root, 'samples')).map(({ key, value }) => ({
      key: normaliseName(key.text),
      heading: key.text,
      facts: flatFacts({ node: value, zone }),
    })),
    observations: card.kind === 'formula' ? [] : observationsOf(card, zone),
    results: card.kind === 'formula' ? [] : resultsOf(card, zone),
  };
}

const mapEntries = (node: TreeNode | undefined): readonly MapEntry[] =>
  node?.kind === 'map' ? node.entries : [];
const listItems = (node: TreeNode | undefined): readonly TreeNode[] =>
  node?.kind === 'list' ? node.items : [];

function aimFact({ name, written, range, looks }: AimCard): ComparedFact {
  const same = range ? rangeKey(range) : (looks ?? [written]).join(', ');
  return { key: name, written, same };
}

const rangeKey = ({ low, high, exact }: Range): string =>
  [low, high, exact].map((side) => (side ? `${side.dimension} ${rounded(side.inner)}` : '')).join(' | ');

const stageKeys: ReadonlySet<string> = new Set(['items', 'process']);

function comparedStage(stage: StageCard, parts: DocumentParts): ComparedStage {
  const { card, mixture, zone } = parts;
  const node = entryOf(valueUnder(card.root, 'stages'), stage.name)?.value;
  const resolved = mixture?.stages.find(({ name }) => name === stage.name);
  const lines = listItems(node?.kind === 'list' ? node : valueUnder(node, 'items'));
  return {
    name: stage.name,
    facts: node?.kind === 'map' ? flatFacts({ node, zone, without: stageKeys }) : [],
    items: lines.flatMap((line): readonly ComparedItem[] => {
      const [first] = mapEntries(line);
      if (!first) return [];
      const at = stage.items.findIndex(({ nameSpan }) => nameSpan.start === first.key.start);
      const plannedGrams = resolved?.items[at]?.plannedGrams;
      return [comparedItem(first, { line, item: stage.items[at], plannedGrams }, parts)];
    }),
    steps: listItems(valueUnder(node, 'process')).map((step) => comparedStep(step, zone)),
  };
}

interface Line {
  readonly line: TreeNode;
  /** Absent where its amount can't be read. */
  readonly item: ItemCard | undefined;
  readonly plannedGrams: number | undefined;
}

function comparedItem(
  { key, value }: MapEntry,
  { line, item, plannedGrams }: Line,
  { book, card, zone }: DocumentParts,
): ComparedItem {
  const what = whatIs(key.text, card.stages, book);
  const typed = value.kind === 'text' ? value.text : '';
  const kind = item ? amountKind(item.amount) : 'unread';
  const inner = item ? rounded(item.amount.quantity.inner) : typed;
  return {
    name: key.text,
    ...what,
    amount: { key: 'amount', kind, written: typed, same: `${kind} ${inner}` },
    plannedGrams,
    facts: flatFacts({ node: line, zone, without: new Set([key.text]) }),
  };
}

const amountKind = ({ quantity, makeUp, inDrink }: Amount): string =>
  `${makeUp ? 'to ' : ''}${quantity.dimension}${inDrink ? ' in drink' : ''}`;

/** A stage, a stage of another trial, an ingredient by the record that it goes back to, or a name that nothing knows. */
function whatIs(
  name: string,
  stages: readonly StageCard[],
  book: Book,
): Pick<ComparedItem, 'key' | 'identity'> {
  const stage = stages.find((one) => isSameName(one.name, name));
  if (stage) return { key: normaliseName(stage.name), identity: `stage ${normaliseName(stage.name)}` };
  const entry = book.find(name);
  if (entry) return { key: normaliseName(rootName(entry)), identity: identityOf(entry) };
  const other = otherStageOf(name);
  return other
    ? { key: normaliseName(other.stage), identity: `${normaliseName(other.stage)} of ${other.trial}` }
    : { key: normaliseName(name), identity: normaliseName(name) };
}

/** The record at the end of `like`, or its own. */
export const rootName = (entry: BookEntry): string => entry.like?.at(-1) ?? entry.name;

/** One lot as another: the same record, of the same strength, with the same in it. */
export function identityOf(entry: BookEntry): string {
  const { record, composition } = entry;
  const contents = composition.map(({ substance, massFraction }) =>
    substance === entry ? '' : `${normaliseName(rootName(substance))} ${rounded(massFraction)}`,
  );
  return [normaliseName(rootName(entry)), record.role, record.fold ?? 1, ...contents].join('|');
}

function comparedStep(node: TreeNode, zone: TimeZone | undefined): ComparedStep {
  if (node.kind === 'text') return { written: node.text, key: node.text, facts: [] };
  const facts = flatFacts({ node, zone });
  const text = (key: string): string => facts.find((fact) => fact.key === key)?.written ?? '';
  return {
    written: facts
      .map(({ key, written }) => (key === 'do' || key === 'what' ? written : `${key} ${written}`))
      .join(' '),
    key: normaliseName(`${text('do')} ${text('what')}`),
    facts: facts.filter(({ key }) => key !== 'do' && key !== 'what'),
  };
}

const entryHead: ReadonlySet<string> = new Set(['at', 'sample']);

function observationsOf(card: TrialCard | BatchCard, zone: TimeZone | undefined): readonly ComparedEntry[] {
  const first = card.samples[0]?.name ?? '';
  return listItems(valueUnder(card.root, 'observations')).map((node) => {
    const at = textAt(node, 'at');
    const sample = textAt(node, 'sample') || first;
    return {
      key: `${sameText('at', at, zone)} ${normaliseName(sample)}`,
      heading: `${at.slice(0, 16).replace('T', ' ')}, ${sample}`,
      facts: flatFacts({ node, zone, without: entryHead }),
    };
  });
}

const resultHead: ReadonlySet<string> = new Set(['at', 'calculator', 'stage']);

/** An answer given again later is the same answer. */
function resultsOf(card: TrialCard | BatchCard, zone: TimeZone | undefined): readonly ComparedEntry[] {
  return listItems(valueUnder(card.root, 'results')).map((node) => {
    const heading = [textAt(node, 'calculator'), textAt(node, 'stage')].filter((text) => text !== '');
    return {
      key: normaliseName(heading.join(' ')),
      heading: heading.join(', '),
      facts: flatFacts({ node, zone, without: resultHead }),
    };
  });
}

function textAt(node: TreeNode, key: string): string {
  const value = valueUnder(node, key);
  return value?.kind === 'text' ? value.text : '';
}
