/** What one file says of another: every reference between files of the ledger, and where it stands. All are found here. */

import type { AnyCard, FileCard, FormulaCard, MadeCard, Named } from './cards.ts';
import { isSameName, otherStageOf } from './stage-name.ts';
import { entryOf, type Span, valueUnder } from './tree.ts';

/** A trial by its number, or another file by the name in it. */
export interface Reference {
  readonly to: 'trial' | 'series' | 'batch' | 'formula';
  /** The key that it stands under; `item` for `emulsion of 21`, `stage` for the same in a result. */
  readonly key:
    | 'from'
    | 'control'
    | 'blank'
    | 'trial'
    | 'item'
    | 'against'
    | 'stage'
    | 'series'
    | 'batch'
    | 'formula';
  /** The name, or the number as typed. */
  readonly name: string;
  /** Of a trial. */
  readonly number?: number;
  /** Of an item: the stage of that trial. */
  readonly stage?: string;
  /** The text that it stands in. */
  readonly span: Span;
}

/**
 * All references in a file.
 * Input     its card; whether a name is that of an ingredient, since then `emulsion of 21` is no stage of a trial
 * Output    in the order of the keys below, items and observations in the order of the file
 */
export function referencesIn(
  card: AnyCard,
  isIngredient: (name: string) => boolean = () => false,
): readonly Reference[] {
  switch (card.kind) {
    case 'trial':
      return [
        ...trialUnder(card, 'from', card.from),
        ...nameUnder('series', card.series),
        ...nameUnder('batch', card.batch),
        ...inItems(card, isIngredient),
        ...inObservations(card),
        ...inResults(card),
      ];
    case 'formula':
      return [...trialUnder(card, 'from', card.from), ...inItems(card, isIngredient)];
    case 'series':
      return [
        ...trialUnder(card, 'control', card.control),
        ...trialUnder(card, 'blank', card.blank),
        ...nameUnder('formula', card.formula),
      ];
    case 'batch':
      return [
        ...trialUnder(card, 'trial', card.trial),
        ...nameUnder('formula', card.formula),
        ...inItems(card, isIngredient),
        ...inObservations(card),
        ...inResults(card),
      ];
    default:
      return [];
  }
}

/** `trial 13` or `13` in a text of its own. */
const numberIn = (text: string): number | undefined => {
  const digits = /^\s*(?:trial\s+)?(\d{1,9})\s*$/iu.exec(text)?.[1];
  return digits === undefined ? undefined : Number(digits);
};

function trialUnder(
  card: FileCard,
  key: 'from' | 'control' | 'blank' | 'trial',
  number: number | undefined,
): readonly Reference[] {
  if (number === undefined) return [];
  // The tree of a file is read again only for those that are really looked at.
  const span = () => entryOf(card.root, key)?.value ?? card.root;
  return [
    {
      to: 'trial',
      key,
      name: String(number),
      number,
      get span() {
        return span();
      },
    },
  ];
}

const nameUnder = (key: 'series' | 'batch' | 'formula', link: Named | undefined): readonly Reference[] =>
  link ? [{ to: key, key, name: link.text, span: link }] : [];

function inItems(
  { stages }: Pick<FormulaCard, 'stages'>,
  isIngredient: (name: string) => boolean,
): readonly Reference[] {
  const isOwn = (name: string): boolean => stages.some((stage) => isSameName(stage.name, name));
  return stages.flatMap(({ items }) =>
    items.flatMap(({ name, nameSpan }): readonly Reference[] => {
      const other = otherStageOf(name);
      if (!other || isOwn(name) || isIngredient(name)) return [];
      return [{ to: 'trial', key: 'item', name, number: other.trial, stage: other.stage, span: nameSpan }];
    }),
  );
}

/** What a glass was tasted against, where that is a trial. */
function inObservations(card: MadeCard): readonly Reference[] {
  return card.observations.flatMap(({ against, start }): readonly Reference[] => {
    const number = against === undefined ? undefined : numberIn(against);
    if (against === undefined || number === undefined) return [];
    const span = () => againstAt(card, start);
    return [
      {
        to: 'trial',
        key: 'against',
        name: against,
        number,
        get span() {
          return span();
        },
      },
    ];
  });
}

/** Answers on a stage of another trial, filed under its name. */
const inResults = ({ results }: MadeCard): readonly Reference[] =>
  results.flatMap(({ stage = '', node }): readonly Reference[] => {
    const other = otherStageOf(stage);
    if (!other) return [];
    const span = valueUnder(node, 'stage') ?? node;
    return [{ to: 'trial', key: 'stage', name: stage, number: other.trial, stage: other.stage, span }];
  });

function againstAt({ root }: FileCard, start: number): Span {
  const list = valueUnder(root, 'observations');
  const entry = list?.kind === 'list' ? list.items.find((item) => item.start === start) : undefined;
  return valueUnder(entry, 'against') ?? root;
}

/**
 * The text with references to a trial naming another number.
 * Input     the text of the file, the references that are to change, all to one trial
 * Output    the same text with other digits, and not another character
 */
export function withNumber(text: string, references: readonly Reference[], number: number): string {
  return [...references]
    .sort((left, right) => right.span.start - left.span.start)
    .reduce((now, { span }) => {
      const typed = now.slice(span.start, span.end);
      // The number is the last thing in the text; a quote may stand behind it.
      return now.slice(0, span.start) + typed.replace(/\d+(?=\D*$)/u, String(number)) + now.slice(span.end);
    }, text);
}
