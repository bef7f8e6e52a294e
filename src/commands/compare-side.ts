/** One of two records that are compared: a trial, a formula or a batch, now or at a revision, with what follows from it. */

import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Book } from '../calc/book.ts';
import type { ComparedDocument } from '../calc/compare/document.ts';
import { costOfLitre } from '../calc/compare/drink-cost.ts';
import { type Property, propertiesOf } from '../calc/compare/properties.ts';
import type { Cost } from '../calc/cost.ts';
import { type BesideFigure, besideFigures } from '../calc/drink/beside-figures.ts';
import { type FinishedDrink, finishedDrink } from '../calc/drink/finished-drink.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import type { Io } from '../io.ts';
import type { KnownObjects, Revision } from '../ledger/at-revision.ts';
import { comparedDocument, type RecordCard } from '../ledger/compared-document.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { openFolder } from '../ledger/folder.ts';
import { type Opened, openFile } from '../ledger/open-file.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { readFormulaCard } from '../ledger/read-formula.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { openTrial } from '../ledger/single-trial.ts';
import { isSameName, otherStageOf } from '../ledger/stage-name.ts';
import { isProblemError, type Problem, ProblemError } from '../problem.ts';
import { bookOf } from './ledger-book.ts';
import { openHereAt, problemsThen, revisionLine } from './open-at.ts';
import { designWords, openFormulaNamed, resolveDesign } from './open-formula.ts';
import { type Here, openTrialNamed, readPort } from './open-ledger.ts';
import { outcomeWords } from './outcome-words.ts';
import { trialOutcomes } from './trial-outcomes.ts';

export interface Solved {
  readonly mixture: Mixture;
  readonly drink: FinishedDrink | undefined;
  readonly properties: readonly Property[];
  readonly beside: readonly BesideFigure[];
  /** Of a litre. */
  readonly cost: Cost | undefined;
}

export interface Side {
  /** `formula "orange cardamom" at v2, commit 3f2a1bc of 2026-03-01` */
  readonly label: string;
  readonly here: Here;
  readonly file: string;
  readonly revision: Revision | undefined;
  /** Absent where the file can't be read at all. */
  readonly card: RecordCard | undefined;
  readonly book: Book;
  readonly document: ComparedDocument | undefined;
  /** Absent where it can't be worked out; the problems say why. */
  readonly solved: Solved | undefined;
  /** By sample. */
  readonly outcomes: readonly { readonly sample: string; readonly words: string }[];
  readonly problems: readonly Problem[];
}

/** Opens what was typed, sound or not. Refuses only what is not there. */
export async function openSide(io: Io, typed: string, known: KnownObjects): Promise<Side> {
  const { here, name, problems } = await openHereAt(io, typed, { known });
  const opened = await openRecordThen(here, io, name);
  const side = await sideOf(io, here, opened);
  return { ...side, problems: [...problems, ...side.problems] };
}

type OpenedRecord = Opened<RecordCard>;

async function openRecordThen(here: Here, io: Io, name: string): Promise<OpenedRecord> {
  try {
    return await openRecord(here, io, name);
  } catch (thrown) {
    if (!isProblemError(thrown) || !here.revision) throw thrown;
    throw new ProblemError(problemsThen(thrown.problems, here.revision), thrown.exitCode);
  }
}

async function openRecord(here: Here, io: Io, name: string): Promise<OpenedRecord> {
  if (/^\d{1,9}$/.test(name))
    return (await openTrial(here, Number(name))) ?? (await openTrialNamed(here, io, name));
  const file = fileThere(here, io, name);
  if (file !== undefined) return openRecordFile(here, file);
  const formulas = await openFolder(here, 'formulas', readFormulaCard);
  const formula = formulas.filter((one) => one.card && isSameName(one.card.name, name));
  const batches = formula.length === 0 ? await openFolder(here, 'batches', readBatchCard) : [];
  const found =
    (formula.length === 1 ? formula[0] : undefined) ??
    batches.find((one) => one.card && isSameName(one.card.name, name)) ??
    [...formulas, ...batches].find((one) => nameOfFile(one.file) === name);
  return found ?? (await openFormulaNamed(here, io, name));
}

const nameOfFile = (file: string): string => file.replace(/^.*\/|\.yaml$/gu, '');

function fileThere(here: Here, io: Io, name: string): string | undefined {
  const path = resolve(io.workingFolder, name);
  const file = relative(here.root, path).split(sep).join('/');
  const isRecord = /^(?:trials|formulas|batches)\/[^/]+\.yaml$/u.test(file) && !isAbsolute(file);
  return isRecord && here.port.sizeOf(path) !== undefined ? file : undefined;
}

/** Which files of the ledger are records, by where they stand. */
export const readerOf = (file: string) =>
  file.startsWith('trials/')
    ? readTrialCard
    : file.startsWith('batches/')
      ? readBatchCard
      : file.startsWith('formulas/')
        ? readFormulaCard
        : undefined;

export function openRecordFile(here: Here, file: string): Promise<OpenedRecord> {
  const read = readerOf(file) ?? readFormulaCard;
  return openFile<RecordCard>(here.port, {
    root: here.root,
    file,
    read: (document) => read(document, here.settings),
  });
}

/** What follows from a record, as far as it can be worked out. */
export async function sideOf(io: Io, here: Here, opened: OpenedRecord, label?: string): Promise<Side> {
  const { card, file } = opened;
  const { revision } = here;
  const { book, problems: bookProblems } = await bookFor(here, io);
  const own = opened.problems.filter(({ severity }) => severity === 'error');
  const solving = card?.isSound ? await solve(here, { ...opened, card }, book) : undefined;
  const problems = [...bookProblems, ...own, ...(solving?.problems ?? [])].map(
    (one): Problem => ({ ...one, severity: 'warning' }),
  );
  return {
    label: label ?? labelOf(card, file, revision),
    here,
    file,
    revision,
    card,
    book,
    document:
      card && comparedDocument({ card, book, zone: here.settings.zone, mixture: solving?.solved?.mixture }),
    solved: solving?.solved,
    outcomes: card?.kind === 'trial' ? await outcomesOf(here, card) : [],
    problems: revision ? problemsThen(problems, revision) : problems,
  };
}

function labelOf(card: RecordCard | undefined, file: string, revision: Revision | undefined): string {
  const name = card ? designWords({ card }) : file;
  return revision ? `${name} at ${revisionLine(revision)}` : name;
}

async function bookFor(
  here: Here,
  io: Io,
): Promise<{ readonly book: Book; readonly problems: readonly Problem[] }> {
  try {
    return { book: await bookOf(here), problems: [] };
  } catch (thrown) {
    if (!isProblemError(thrown) || !here.revision) throw thrown;
    const book = await bookOf({ ...here, port: readPort(io) });
    const told: Problem = {
      code: 'book-then',
      severity: 'warning',
      message: "ingredients.yaml can't be read",
      hint: 'the ingredients as they are now are taken instead',
    };
    return { book, problems: [told, ...thrown.problems] };
  }
}

interface Solving {
  readonly solved: Solved | undefined;
  readonly problems: readonly Problem[];
}

async function solve(
  here: Here,
  design: OpenedRecord & { readonly card: RecordCard },
  book: Book,
): Promise<Solving> {
  const { card } = design;
  if (card.stages.length === 0) return { solved: undefined, problems: [] };
  try {
    const { mixture, sources } = await resolveDesign(here, asDesign(design, card), book);
    const drink = mixture.drink && finishedDrink(mixture, drinkConditions({ bench: here.bench, card }));
    const bodies = (['us', 'eu', 'codex'] as const).filter((body) => here.bench.limits.includes(body));
    const cost = costOfLitre(mixture, {
      trialIn: (item) => otherStageOf(item)?.trial,
      stageOf: (trial, stage) =>
        sources.resolved.get(trial)?.mixture?.stages.find(({ name }) => name === stage),
    });
    const fault = drink && !drink.ok ? drink.fault : undefined;
    return {
      solved: {
        mixture,
        drink: drink?.ok ? drink.value : undefined,
        properties: propertiesOf(mixture, drink?.ok ? drink.value : undefined),
        beside: mixture.drink ? besideFigures(mixture.drink, bodies) : [],
        cost,
      },
      problems: fault
        ? [{ code: fault.code, severity: 'warning', message: fault.message, hint: fault.hint }]
        : [],
    };
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return { solved: undefined, problems: thrown.problems };
  }
}

/** The same, as one of the kinds that can be resolved. */
function asDesign(opened: OpenedRecord, card: RecordCard): Parameters<typeof resolveDesign>[1] {
  const { file, document, problems } = opened;
  if (card.kind === 'trial') return { file, document, problems, card };
  return card.kind === 'formula' ? { file, document, problems, card } : { file, document, problems, card };
}

async function outcomesOf(
  here: Here,
  card: Extract<RecordCard, { readonly kind: 'trial' }>,
): Promise<Side['outcomes']> {
  const outcomes = await trialOutcomes(here, card);
  return [...outcomes.values()].map((one) => ({ sample: one.sample.name, words: outcomeWords(one) }));
}
