/** Everything that only shows when files are laid side by side, or when amounts are solved. */

import type { BuiltInIngredients } from '../calc/book/shelf.ts';
import type { Book } from '../calc/book.ts';
import type { Problem } from '../problem.ts';
import type { TrialCard } from './cards.ts';
import type { Check } from './check.ts';
import { checkAims } from './check-aims.ts';
import { checkBenzene } from './check-benzene.ts';
import { checkKept } from './check-kept.ts';
import { checkLinks, checkPhotos } from './check-links.ts';
import { checkDuplicates, checkFileNames } from './check-numbers.ts';
import { checkProcess } from './check-process.ts';
import { checkMadeTimes, checkSamples, checkTimes, checkWords } from './check-samples.ts';
import { checkSlips } from './check-slips.ts';
import { checkMixtures, checkStageNames } from './check-stages.ts';
import { checkWithdrawn } from './check-withdrawn.ts';
import { ingredientsFile } from './folder.ts';
import type { Ledger } from './ledger.ts';
import { type OpenedOwnBook, openOwnBook } from './own-book.ts';
import { byPlace } from './read-file.ts';
import { makeSources, type Sources } from './resolve.ts';
import { numberInName } from './single-trial.ts';

/** In no order that matters: problems are sorted by file and line. A new check is one line here. */
export const checks: readonly Check[] = [
  checkDuplicates,
  checkFileNames,
  checkLinks,
  checkPhotos,
  checkStageNames,
  checkMixtures,
  checkProcess,
  checkSlips,
  checkSamples,
  checkTimes,
  checkMadeTimes,
  checkWords,
  checkAims,
  checkBenzene,
  checkKept,
  checkWithdrawn,
];

/** The book of a ledger that was read. */
export const openBookOf = (ledger: Ledger, builtIn: BuiltInIngredients): OpenedOwnBook =>
  openOwnBook(builtIn, ledger.ingredients, ledger.documents.get(ingredientsFile)?.source);

/** Every problem of a ledger, those of reading included, file by file in the order of the lines. */
export function checkLedger(
  ledger: Ledger,
  builtIn: BuiltInIngredients,
  more: readonly Check[] = [],
): readonly Problem[] {
  const { book, problems: bookProblems } = openBookOf(ledger, builtIn);
  const remembered = rememberingBook(book);
  const sources = sourcesOf(ledger, remembered);
  const context = { ledger, book: remembered, sources };
  const found = [...checks, ...more].flatMap((check) => check(context));
  return inFileOrder(ledger, [...ledger.problems, ...bookProblems(), ...found]);
}

/** Where the names of a ledger that was read are looked up. */
export function sourcesOf(ledger: Ledger, book: Book): Sources {
  const byNumber = new Map<number, TrialCard>();
  for (const trial of ledger.trials) if (!byNumber.has(trial.number)) byNumber.set(trial.number, trial);
  const unread = new Set(ledger.unread.filter((file) => file.startsWith('trials/')).map(numberInName));
  return makeSources({
    book,
    bench: ledger.bench,
    trialOf: (number) => byNumber.get(number),
    isUnread: (number) => unread.has(number),
  });
}

/** The same names come again and again; looking one up takes its letters apart each time. */
function rememberingBook(book: Book): Book {
  const known = new Map<string, ReturnType<Book['find']>>();
  const find: Book['find'] = (name) => {
    if (known.has(name)) return known.get(name);
    const entry = book.find(name);
    known.set(name, entry);
    return entry;
  };
  return {
    find,
    nearest: book.nearest,
    get entries() {
      return book.entries;
    },
  };
}

function inFileOrder(ledger: Ledger, problems: readonly Problem[]): readonly Problem[] {
  if (problems.length === 0) return problems;
  const order = new Map([...ledger.documents.keys()].map((file, index): [string, number] => [file, index]));
  const placeOf = ({ place }: Problem): number => order.get(place?.file ?? '') ?? -1;
  return [...problems].sort((left, right) => placeOf(left) - placeOf(right) || byPlace(left, right));
}

export const mostPerFile = 20;

export interface Limited {
  readonly shown: readonly Problem[];
  /** Files of which not all is shown, and how many problems are left out. */
  readonly hidden: readonly { readonly file: string; readonly count: number }[];
}

/** At most so many problems of each file, errors before warnings where not all fit. */
export function limitPerFile(problems: readonly Problem[], most = mostPerFile): Limited {
  const byFile = new Map<string, Problem[]>();
  for (const problem of problems) {
    const file = problem.place?.file ?? '';
    const same = byFile.get(file);
    if (same) same.push(problem);
    else byFile.set(file, [problem]);
  }
  const kept = new Set<Problem>();
  const hidden: { readonly file: string; readonly count: number }[] = [];
  for (const [file, all] of byFile) {
    const errorsFirst = [...all].sort((left, right) => rank(left) - rank(right));
    for (const problem of errorsFirst.slice(0, most)) kept.add(problem);
    if (all.length > most) hidden.push({ file, count: all.length - most });
  }
  return { shown: problems.filter((problem) => kept.has(problem)), hidden };
}

const rank = ({ severity }: Problem): number => (severity === 'error' ? 0 : 1);
