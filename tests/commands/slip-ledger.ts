/** A ledger of a few trials in which one thing at a time is odd. */

import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { neckring, record, rows, scratchFolder, writeIn } from './neckring.ts';

const bench = `ledger: 1
bench:
  time zone: Europe/Lisbon
  drop: 0.030 g
`;

const ingredients = `ingredients:
  orange oil lot 2231:
    like: sweet orange oil
    lot: 2231
  cassis stock:
    contains:
      cassis thiol: 2 ppm
      propylene glycol: rest
    drop: 0.021 g
  weak cassis:
    contains:
      cassis stock: 10 %
      propylene glycol: rest
`;

/** A sound emulsion and a drink of it, to change one line of. */
export const emulsionStages = `stages:
  emulsion:
    - orange oil lot 2231: 2 g
    - polysorbate 80: 6 g
    - propylene glycol: 6 g
    - water: to 50 g
`;

export const drinkItems = (changed: Readonly<Record<string, string>> = {}): string => {
  const items: Readonly<Record<string, string>> = {
    sucrose: '90 g',
    'citric acid': '4.5 g/L',
    'emulsion of 1': '1.5 g',
    ...changed,
    water: 'to 1 L',
  };
  return Object.entries(items)
    .map(([name, amount]) => `    - ${name}: ${amount}\n`)
    .join('');
};

export const drinkStages = (changed?: Readonly<Record<string, string>>): string =>
  `stages:\n  drink:\n${drinkItems(changed)}`;

/** Trial 1 is the emulsion, made on 1 March and clear on 8 March; the text of the others is given. */
export async function slipLedger(trials: Readonly<Record<string, string>>): Promise<string> {
  const folder = await scratchFolder();
  await writeIn(folder, 'bench.yaml', bench);
  await writeIn(folder, 'ingredients.yaml', ingredients);
  await mkdir(join(folder, 'trials'));
  await mkdir(join(folder, 'formulas'));
  const held = `observations:
  - at: 2026-03-08T10:00+00:00
    look: clear
`;
  await writeIn(
    folder,
    'trials/0001.yaml',
    `trial: 1\nmade: 2026-03-01T10:00+00:00\n${emulsionStages}${held}`,
  );
  for (const [file, text] of Object.entries(trials)) await writeIn(folder, file, text);
  return folder;
}

export interface Warning {
  readonly code: string;
  readonly file: string;
  readonly line: number;
  readonly message: string;
  readonly hint: string;
}

/** The warnings of `check`, which never change its exit code. */
export async function warningsOf(folder: string): Promise<readonly Warning[]> {
  const { out, code } = await neckring(['check', '--json'], { folder });
  if (code !== 0) throw new Error(`check found errors: ${out}`);
  const parsed: unknown = JSON.parse(out);
  return rows(record(parsed)['problems']).map((one) => ({
    code: String(one['code']),
    file: String(one['file']),
    line: Number(one['line']),
    message: String(one['message']),
    hint: String(one['hint']),
  }));
}

/** The text of the line that a warning points at. */
export const lineOf = (text: string, line: number): string => (text.split('\n')[line - 1] ?? '').trim();

export interface Told {
  readonly code: string;
  readonly text: string;
  readonly source: string;
}

/** The cautions of an answer with `--json`. */
export async function cautionsOf(words: readonly string[], folder?: string): Promise<readonly Told[]> {
  const { out } = await neckring([...words, '--json'], folder === undefined ? {} : { folder });
  const parsed: unknown = JSON.parse(out);
  return rows(record(parsed)['cautions']).map((one) => ({
    code: String(one['code']),
    text: String(one['text']),
    source: String(one['source']),
  }));
}
