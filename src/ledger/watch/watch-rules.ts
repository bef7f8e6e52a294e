/** What series say of looking, by their names, as short texts that can be kept and compared. */

import { normaliseName } from '../../reference/name.ts';
import { type Look, looks, type SeriesCard } from '../cards.ts';
import type { SeriesRules } from '../outcome.ts';
import { readSeriesCard } from '../read-series.ts';
import { type FolderWanted, keepFolder, walkFolder } from './kept-folder.ts';
import { fieldOf, textOf } from './kept-text.ts';

/** The same text where two series say the same; empty where there is none. */
export type RulesText = string;

export interface SeriesNames {
  /** What holds for trials of a series; of several with one name the first counts. */
  readonly rulesOf: (name: string) => RulesText;
  readonly names: readonly string[];
  /** How many errors stand in their files. */
  readonly errors: number;
}

const rulesText = ({ passes, settle, watch }: SeriesRules): RulesText =>
  [passes.join(','), settle?.inner ?? '', watch?.inner ?? ''].join(';');

/** What `looksOpen` asks of a series; undefined where there is none. */
export function openRules(text: RulesText): SeriesRules | undefined {
  if (text === '') return undefined;
  const [passes = '', settle = '', watch = ''] = text.split(';');
  const words = passes.split(',');
  return {
    passes: looks.filter((one: Look) => words.includes(one)),
    settle: settle === '' ? undefined : { inner: Number(settle) },
    watch: watch === '' ? undefined : { inner: Number(watch) },
  };
}

const rowOf = (card: SeriesCard): string => `${rulesText(card)}\t${fieldOf(card.name)}`;

/** The series of the ledger, mostly without reading them again. */
export async function seriesNames(
  from: Omit<FolderWanted<SeriesCard>, 'folder' | 'read' | 'isEnough'>,
): Promise<SeriesNames> {
  const wanted = { ...from, folder: 'series', read: readSeriesCard };
  const walked = await walkFolder(wanted);
  if (walked.isStale) keepFolder(wanted, walked, rowOf);
  const names: string[] = [];
  const rules = new Map<string, RulesText>();
  let errors = 0;
  for (const one of walked.files) {
    errors += one.errors;
    const row = one.row ?? (one.card ? rowOf(one.card) : '');
    if (row === '') continue;
    const tab = row.indexOf('\t');
    const name = textOf(row.slice(tab + 1));
    const known = normaliseName(name);
    names.push(name);
    if (!rules.has(known)) rules.set(known, row.slice(0, tab));
  }
  return { rulesOf: (name) => rules.get(name) ?? rules.get(normaliseName(name)) ?? '', names, errors };
}
