/** Opening what holds a finished drink: a formula by its name or file, or a trial. */

import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Book } from '../calc/book.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import type { Io } from '../io.ts';
import type { BatchCard, FormulaCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { type Opened, openFile } from '../ledger/open-file.ts';
import { problemAt } from '../ledger/places.ts';
import { readFormulaCard } from '../ledger/read-formula.ts';
import { makeSources, resolveStages, resolveTrial, type Sources } from '../ledger/resolve.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';
import { type Here, type OpenedTrial, openTrialNamed } from './open-ledger.ts';
import { thereWords } from './there-words.ts';

export interface OpenedFormula extends Opened<FormulaCard> {
  readonly card: FormulaCard;
}

export type OpenedDesign = OpenedFormula | OpenedTrial;

/** A trial by its number or file, a formula by the name inside its file or by its file. */
export async function openDesign(here: Here, io: Io, typed: string): Promise<OpenedDesign> {
  if (/^\d{1,9}$/.test(typed)) return openTrialNamed(here, io, typed);
  const file = fileInLedger(here, io, typed);
  if (file?.startsWith('trials/')) return openTrialNamed(here, io, typed);
  return openFormulaNamed(here, io, typed);
}

/** A formula; refused with its problems where it can't be read. */
export async function openFormulaNamed(here: Here, io: Io, typed: string): Promise<OpenedFormula> {
  const file = fileInLedger(here, io, typed);
  if (file === undefined) return sound(await formulaByName(here, typed));
  const request = {
    root: here.root,
    file,
    read: (document: Opened<FormulaCard>['document']) => readFormulaCard(document, here.settings),
  };
  return sound(await openFile(here.port, request));
}

/** The path from the root where such a file is there. */
function fileInLedger(here: Here, io: Io, typed: string): string | undefined {
  const path = resolve(io.workingFolder, typed);
  if (here.port.sizeOf(path) === undefined || path === here.root) return undefined;
  const file = relative(here.root, path).split(sep).join('/');
  if (!file.startsWith('..') && !isAbsolute(file)) return file.endsWith('.yaml') ? file : undefined;
  return fail(
    'outside',
    `${typed} is outside the ledger in ${here.root}`,
    'name a formula of this ledger, or a trial by its number',
  );
}

async function formulaByName(here: Here, typed: string): Promise<Opened<FormulaCard>> {
  const all = await openFolder(here, 'formulas', readFormulaCard);
  const [first, second] = all.filter(({ card }) => card !== undefined && isSameName(card.name, typed));
  if (first && !second) return first;
  if (first && second) {
    return fail(
      'same-name',
      `"${typed}" is the name of ${first.file} and of ${second.file}`,
      'name the file, or give one of them another name',
    );
  }
  const byFile = all.find(({ file }) => file === `formulas/${typed}.yaml`);
  return byFile ?? noSuchDesign(typed, all);
}

function noSuchDesign(typed: string, all: readonly Opened<FormulaCard>[]): never {
  const names = all.flatMap(({ card }) => (card ? [card.name] : []));
  const unread = all.flatMap(({ card, file }) => (card ? [] : [file]));
  const near = nearestNames(normaliseName(typed), names, 3);
  const none = 'there are no formulas yet';
  const there = `${thereWords({ kind: 'formulas', names, unread, none })}; a trial is named by its number`;
  const hint = near.length > 0 ? `did you mean ${near.map((name) => `"${name}"`).join(' or ')}?` : there;
  return fail('no-formula', `there is no formula or trial "${typed}"`, hint);
}

function sound(opened: Opened<FormulaCard>): OpenedFormula {
  const { card } = opened;
  if (card?.isSound) return { ...opened, card };
  const errors = opened.problems.filter(({ severity }) => severity === 'error');
  throw new ProblemError(errors.length > 0 ? errors : opened.problems);
}

export interface ResolvedDesign {
  readonly mixture: Mixture;
  readonly sources: Sources;
  readonly warnings: readonly Problem[];
}

/** Its mixture, stages of other trials included; refused with its problems where it can't be solved. */
export async function resolveDesign(
  here: Here,
  design: OpenedDesign | (Opened<BatchCard> & { readonly card: BatchCard }),
  book: Book,
): Promise<ResolvedDesign> {
  const { card } = design;
  const used = await openTrialsUsedBy(here, card);
  const trialOf = (number: number): TrialCard | undefined =>
    card.kind === 'trial' && number === card.number ? card : used.get(number)?.card;
  const sources = makeSources({ book, bench: here.bench, trialOf });
  const { mixture, found } =
    card.kind === 'trial' ? resolveTrial(card, sources) : resolveStages(card, sources);
  const warnings = found.map(({ finding, span }) => problemAt(design.document.source, finding, span));
  if (!mixture) throw new ProblemError(warnings);
  return { mixture, sources, warnings };
}

/** `formula "orange cardamom"`, `trial 17` */
export const designWords = ({ card }: { readonly card: FormulaCard | TrialCard | BatchCard }): string =>
  card.kind === 'trial' ? `trial ${card.number}` : `${card.kind} "${card.name}"`;
