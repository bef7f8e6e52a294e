/** Two texts of one file compared, or one told line by line: what `git diff` and `git log -p` show of the ledger. */

import { loadArithmetic } from '../calc/arithmetic.ts';
import { factChanges } from '../calc/compare/facts.ts';
import type { Io } from '../io.ts';
import type { RecordCard } from '../ledger/compared-document.ts';
import { flatFacts } from '../ledger/flat-facts.ts';
import { needsArithmetic, type Opened, readText } from '../ledger/open-file.ts';
import { parseDocument } from '../ledger/parse.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { readFormulaCard } from '../ledger/read-formula.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { entryOf } from '../ledger/tree.ts';
import { layOut } from '../output/page.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { comparisonPage } from './compare-page.ts';
import { factBlocks } from './compare-record-page.ts';
import { type Side, sideOf } from './compare-side.ts';
import { comparisonOf } from './compare-sides.ts';
import { notebookLines } from './notebook-lines.ts';
import { type Here, openHere } from './open-ledger.ts';

export interface TwoTexts {
  /** From the root of the ledger, or any name for the file. */
  readonly file: string;
  /** Undefined where the file was not there. */
  readonly before: string | undefined;
  readonly after: string | undefined;
}

/**
 * The comparison of two texts of one file, on the ledger around the working folder as it stands.
 * Output    lines that end in a line feed; of a file that can't be read what is wrong with it
 */
export async function comparisonText(io: Io, texts: TwoTexts): Promise<string> {
  const page = await comparisonOfTexts(await openHere(io), io, texts);
  return layOut(page, { width: Math.min(io.columns, 100), paint: (_, text) => text });
}

export async function comparisonOfTexts(here: Here, io: Io, texts: TwoTexts): Promise<Page> {
  const { file, before, after } = texts;
  const title = visible(file);
  if (before === undefined || after === undefined) {
    const word = before === undefined ? 'new' : 'gone';
    const lines = (await notebookText(io, { file, text: before ?? after ?? '' })).trimEnd().split('\n');
    return [
      { kind: 'heading', text: `${title} (${word})` },
      { kind: 'lines', lines },
    ];
  }
  const [was, now] = [await sideOfText(here, io, file, before), await sideOfText(here, io, file, after)];
  if (was?.document && now?.document) {
    const told = [...was.problems, ...now.problems];
    return [
      ...comparisonPage(comparisonOf(was, now)),
      ...(told.length > 0 ? [{ kind: 'problems', problems: told } as const] : []),
    ];
  }
  return otherFile(here, texts);
}

/** A file that is no record, or can't be read as one: fact by fact. */
function otherFile(here: Here, { file, before = '', after = '' }: TwoTexts): Page {
  const [was, now] = [parseDocument(file, before), parseDocument(file, after)];
  const problems = [was, now].flatMap((one) => (one.isReadable ? [] : one.problems));
  if (problems.length > 0)
    return [
      { kind: 'heading', text: visible(file) },
      { kind: 'problems', problems },
    ];
  const facts = factChanges(
    flatFacts({ node: was.root, zone: here.settings.zone }),
    flatFacts({ node: now.root, zone: here.settings.zone }),
  );
  return facts.length > 0
    ? factBlocks(file, facts)
    : [
        { kind: 'heading', text: visible(file) },
        { kind: 'text', text: 'No change in what it says.', tone: 'good' },
      ];
}

/**
 * One text told a fact a line, with what it comes to: for comparing line by line.
 * Output    lines; the text itself where it can't be read as a file of the ledger
 */
export async function notebookText(
  io: Io,
  { file, text }: { readonly file: string; readonly text: string },
): Promise<string> {
  const here = await openHere(io);
  const side = await sideOfText(here, io, file, text);
  return side?.document
    ? notebookLines(side, text)
        .map((line) => `${line}\n`)
        .join('')
    : text;
}

/** Undefined for what is no trial, formula or batch. */
export async function sideOfText(here: Here, io: Io, file: string, text: string): Promise<Side | undefined> {
  const read = readerFor(file, text);
  if (!read) return undefined;
  const open = (): Opened<RecordCard> =>
    readText<RecordCard>(file, text, (document) => read(document, here.settings));
  let opened = open();
  if (needsArithmetic(opened)) {
    await loadArithmetic();
    opened = open();
  }
  return sideOf(io, here, opened, opened.card ? undefined : file);
}

/** By what names it: git hands over texts under names of its own. */
function readerFor(file: string, text: string) {
  const { root } = parseDocument(file, text);
  if (entryOf(root, 'batch') && entryOf(root, 'trial') === undefined) return readBatchCard;
  if (entryOf(root, 'trial') && !file.startsWith('batches/')) return readTrialCard;
  if (entryOf(root, 'batch')) return readBatchCard;
  return entryOf(root, 'formula') ? readFormulaCard : undefined;
}
