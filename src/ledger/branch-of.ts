/** Which of two trials of one number a reference was written for, as the branches that were merged tell. */

import type { AnyCard } from './cards.ts';
import { runGit } from './git-write.ts';
import { readText } from './open-file.ts';
import { readBatchCard } from './read-batch.ts';
import { readFormulaCard } from './read-formula.ts';
import { readSeriesCard } from './read-series.ts';
import { readTrialCard } from './read-trial.ts';
import type { ReadSettings } from './reading.ts';
import { type Reference, referencesIn } from './references.ts';

export interface Twins {
  /** The root of the ledger. */
  readonly root: string;
  readonly settings: ReadSettings;
  /** Files of one number, from the root of the ledger. */
  readonly moving: string;
  readonly others: readonly string[];
}

/** What a file said on the branch on which only one of the twins was. */
export interface Branches {
  readonly withMoving: string;
  readonly withOthers: string;
}

const mostMerges = 50;

/** The two sides of the merge that brought the twins together; undefined where none did, or git is not there. */
export async function branchesOf(twins: Twins): Promise<Branches | undefined> {
  const { root, moving, others } = twins;
  for (const [one, other] of await mergedPairs(root)) {
    if (one === undefined || other === undefined) continue;
    const [mine, yours] = [await trialsAt(root, one), await trialsAt(root, other)];
    const isOnly = (names: ReadonlySet<string>, file: string, without: readonly string[]): boolean =>
      names.has(file) && without.every((name) => !names.has(name));
    const hasOther = (names: ReadonlySet<string>): boolean =>
      others.some((file) => isOnly(names, file, [moving]));
    if (isOnly(mine, moving, others) && hasOther(yours)) return { withMoving: one, withOthers: other };
    if (isOnly(yours, moving, others) && hasOther(mine)) return { withMoving: other, withOthers: one };
  }
  return undefined;
}

async function mergedPairs(root: string): Promise<readonly (readonly string[])[]> {
  const lines = async (words: readonly string[]): Promise<readonly string[]> => {
    const { code, out } = await runGit(root, words);
    return code === 0 ? new TextDecoder().decode(out).split('\n').filter(Boolean) : [];
  };
  const [going] = await lines(['rev-parse', '--verify', '--quiet', 'MERGE_HEAD']);
  const done = await lines(['rev-list', '--merges', '--parents', `-n${mostMerges}`, 'HEAD']);
  return [
    ...(going === undefined ? [] : [['HEAD', going]]),
    ...done.map((line) => line.split(' ').slice(1, 3)),
  ];
}

async function trialsAt(root: string, revision: string): Promise<ReadonlySet<string>> {
  const { code, out } = await runGit(root, ['ls-tree', '--name-only', '-z', revision, '--', 'trials/']);
  return new Set(code === 0 ? new TextDecoder().decode(out).split('\0') : []);
}

/**
 * For which of the twins a reference was written.
 * Output    undefined where it stood on both branches, or on none
 */
export async function writtenFor(
  reference: Reference,
  file: string,
  twins: Twins,
  branches: Branches,
): Promise<'moving' | 'other' | undefined> {
  const stood = async (revision: string): Promise<boolean> => {
    const { code, out } = await runGit(twins.root, ['show', `${revision}:./${file}`]);
    const card = code === 0 ? cardOf(file, new TextDecoder().decode(out), twins.settings) : undefined;
    return (card ? referencesIn(card) : []).some(
      ({ key, number, stage }) =>
        key === reference.key && number === reference.number && stage === reference.stage,
    );
  };
  const [mine, yours] = [await stood(branches.withMoving), await stood(branches.withOthers)];
  if (mine === yours) return undefined;
  return mine ? 'moving' : 'other';
}

type Open = (file: string, text: string, settings: ReadSettings) => AnyCard | undefined;

const readers: Readonly<Record<string, Open>> = {
  trials: (file, text, settings) =>
    readText(file, text, (document) => readTrialCard(document, settings)).card,
  series: (file, text, settings) =>
    readText(file, text, (document) => readSeriesCard(document, settings)).card,
  formulas: (file, text, settings) =>
    readText(file, text, (document) => readFormulaCard(document, settings)).card,
  batches: (file, text, settings) =>
    readText(file, text, (document) => readBatchCard(document, settings)).card,
};

function cardOf(file: string, text: string, settings: ReadSettings): AnyCard | undefined {
  const [folder = ''] = file.split('/');
  return Object.hasOwn(readers, folder) ? readers[folder]?.(file, text, settings) : undefined;
}
