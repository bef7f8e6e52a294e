/** What a ledger has that can be named, from the names of its files and their first lines; no file is understood. */

import { closeSync, openSync, readdirSync, readFileSync, readSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { bulletsUnder, entriesUnder, type ScannedEntry, valueAtEdge } from './complete-scan.ts';

export interface Offer {
  readonly text: string;
  /** Said beside it where the shell can show it. */
  readonly says?: string;
}

/** Larger files are left alone. */
const largestBytes = 1_000_000;
const headBytes = 1024;

/** Nothing where the disk does not give it: completion is silent. */
function orNothing<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch {
    return undefined;
  }
}

const yamlFiles = (root: string, folder: string): readonly string[] =>
  (orNothing(() => readdirSync(join(root, folder))) ?? []).filter(
    (name) => name.endsWith('.yaml') && !name.startsWith('.'),
  );

function wholeText(path: string): string {
  return (
    orNothing(() => {
      const stat = statSync(path);
      return stat.isFile() && stat.size <= largestBytes ? readFileSync(path, 'utf8') : undefined;
    }) ?? ''
  );
}

function headText(path: string): string {
  return (
    orNothing(() => {
      if (!statSync(path).isFile()) return '';
      const descriptor = openSync(path, 'r');
      try {
        const bytes = Buffer.allocUnsafe(headBytes);
        return bytes.toString('utf8', 0, readSync(descriptor, bytes, 0, headBytes, 0));
      } finally {
        closeSync(descriptor);
      }
    }) ?? ''
  );
}

export interface TrialFile {
  readonly number: number;
  readonly file: string;
  readonly title: string;
}

/** The trials by their numbers, the newest first. */
export function trialFiles(root: string): readonly TrialFile[] {
  const found = yamlFiles(root, 'trials').flatMap((file): readonly TrialFile[] => {
    const [, digits, rest = ''] = /^(\d{1,9})(?:[-_ ]+([\s\S]*))?\.yaml$/.exec(file) ?? [];
    if (digits === undefined) return [];
    return [{ number: Number(digits), file, title: rest.replace(/[-_ ]+/g, ' ') }];
  });
  return found.sort((left, right) => right.number - left.number);
}

/** The names inside the files of a folder: series, formulas, batches. */
export function namesIn(root: string, folder: string, key: string): readonly string[] {
  return yamlFiles(root, folder).flatMap(
    (file) => valueAtEdge(headText(join(root, folder, file)), key) ?? [],
  );
}

export const ownIngredients = (root: string): readonly ScannedEntry[] =>
  entriesUnder(wholeText(join(root, 'ingredients.yaml')), 'ingredients');

export const benchTastes = (root: string): readonly string[] =>
  bulletsUnder(wholeText(join(root, 'bench.yaml')), 'tastes');

/** Stages or samples of a trial by its number, or of a formula or batch by its name. */
export function partsOf(root: string, named: string, part: 'stages' | 'samples'): readonly string[] {
  const path = fileNamed(root, named);
  return path === undefined ? [] : entriesUnder(wholeText(path), part).map(({ name }) => name);
}

function fileNamed(root: string, named: string): string | undefined {
  if (/^\d{1,9}$/.test(named)) {
    const trial = trialFiles(root).find(({ number }) => number === Number(named));
    return trial && join(root, 'trials', trial.file);
  }
  for (const [folder, key] of [
    ['formulas', 'formula'],
    ['batches', 'batch'],
  ] as const) {
    const file = yamlFiles(root, folder).find(
      (one) => valueAtEdge(headText(join(root, folder, one)), key) === named,
    );
    if (file !== undefined) return join(root, folder, file);
  }
  return undefined;
}
