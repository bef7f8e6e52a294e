/** What `drink` may be asked about: a trial, a formula, or a batch with the aims of its formula. */

import type { Io } from '../io.ts';
import type { BatchCard, FormulaCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import type { Opened } from '../ledger/open-file.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail, isProblemError, ProblemError } from '../problem.ts';
import { type OpenedDesign, openDesign, openFormulaNamed } from './open-formula.ts';
import type { Here } from './open-ledger.ts';

export interface OpenedBatch extends Opened<BatchCard> {
  readonly card: BatchCard;
}

export interface DrinkDesign {
  readonly design: OpenedDesign | OpenedBatch;
  /** The formula whose aims it is held to. */
  readonly formula: FormulaCard | undefined;
}

export async function openDrinkDesign(here: Here, io: Io, typed: string): Promise<DrinkDesign> {
  try {
    if (!/(^|\/)batches\//.test(typed)) {
      const design = await openDesign(here, io, typed);
      return { design, formula: design.card.kind === 'formula' ? design.card : undefined };
    }
  } catch (thrown) {
    if (!isProblemError(thrown) || !thrown.problems.some(({ code }) => code === 'no-formula')) throw thrown;
    const batch = await batchNamed(here, typed);
    if (!batch) throw thrown;
    return { design: batch, formula: await formulaOf(here, io, batch.card) };
  }
  const batch = await batchNamed(here, typed);
  if (!batch) return fail('no-batch', `there is no batch ${typed}`, 'neckring list shows what there is');
  return { design: batch, formula: await formulaOf(here, io, batch.card) };
}

async function batchNamed(here: Here, typed: string): Promise<OpenedBatch | undefined> {
  const all = await openFolder(here, 'batches', readBatchCard);
  const file = typed.replace(/^.*?(?=batches\/)/, '');
  const found = all.find((one) => one.file === file || (one.card && isSameName(one.card.name, typed)));
  if (!found) return undefined;
  const { card } = found;
  if (!card?.isSound) throw new ProblemError(found.problems.filter(({ severity }) => severity === 'error'));
  if (card.stages.length === 0)
    return fail(
      'no-stages',
      `batch "${card.name}" says no stages of its own`,
      card.formula ? `ask for its formula: neckring drink "${card.formula.text}"` : 'write what went in',
    );
  return { ...found, card };
}

/** Undefined where it has none, or it can't be read: that is said by check. */
async function formulaOf(here: Here, io: Io, card: BatchCard): Promise<FormulaCard | undefined> {
  if (!card.formula) return undefined;
  try {
    return (await openFormulaNamed(here, io, card.formula.text)).card;
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return undefined;
  }
}
