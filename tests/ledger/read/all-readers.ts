/** The readers of all kinds of file, each under the name of such a file. */

import type { AnyCard } from '../../../src/ledger/cards.ts';
import { readText } from '../../../src/ledger/open-file.ts';
import type { LedgerDocument } from '../../../src/ledger/parse.ts';
import { readBatchCard } from '../../../src/ledger/read-batch.ts';
import { readBenchCard } from '../../../src/ledger/read-bench.ts';
import { readFormulaCard } from '../../../src/ledger/read-formula.ts';
import { readIngredientsCard } from '../../../src/ledger/read-ingredients.ts';
import { readSeriesCard } from '../../../src/ledger/read-series.ts';
import { readTrialCard } from '../../../src/ledger/read-trial.ts';
import type { Problem } from '../../../src/problem.ts';

export const readers = {
  'trials/0014.yaml': (document: LedgerDocument) => readTrialCard(document, {}),
  'series/ladder.yaml': (document: LedgerDocument) => readSeriesCard(document, {}),
  'formulas/drink.yaml': (document: LedgerDocument) => readFormulaCard(document, {}),
  'batches/b1.yaml': (document: LedgerDocument) => readBatchCard(document, {}),
  'bench.yaml': (document: LedgerDocument) => readBenchCard(document),
  'ingredients.yaml': (document: LedgerDocument) => readIngredientsCard(document, {}),
} as const;

export type FileRead = keyof typeof readers;

/** What one of them says of a text. */
export const readBy = (file: FileRead, text: string): readonly Problem[] =>
  readText<AnyCard>(file, text, readers[file]).problems;

/** What each of them says of a text. */
export const readByAll = (text: string): readonly Problem[] =>
  Object.entries(readers).flatMap(([file, read]) => readText<AnyCard>(file, text, read).problems);
