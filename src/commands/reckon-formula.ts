/** A formula under `reckon`: every calculator on its stages and its aims judged. A formula keeps no results. */

import type { Caution } from '../calc/answer.ts';
import type { Book } from '../calc/book.ts';
import { finishedDrink } from '../calc/drink/finished-drink.ts';
import { adviceCaution } from '../ledger/advice.ts';
import { aimReports } from '../ledger/check-aims.ts';
import { slipAdvice } from '../ledger/check-slips.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { answerJson } from '../output/answer-json.ts';
import { answerPage, cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import type { Source } from '../reference/sources.ts';
import { aimJson } from './drink-json.ts';
import { aimBlocks } from './drink-page.ts';
import { type OpenedFormula, resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { type ShortAnswer, shortPage } from './reckon-short.ts';
import { type Reckoned, reckonTrial } from './reckoned.ts';
import { sourceWords, wordSources } from './worded-sources.ts';

export interface ReckonedFormula {
  readonly page: Page;
  readonly json: object;
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Problem[];
  readonly isMissed: boolean;
  readonly answers: readonly Reckoned[];
}

interface Around {
  readonly here: Here;
  readonly book: Book;
  readonly sources: Readonly<Record<string, Source>>;
  readonly explain: boolean;
  readonly isShort: boolean;
}

export async function reckonFormula(
  design: OpenedFormula,
  { here, book, sources: bibliography, explain, isShort }: Around,
): Promise<ReckonedFormula> {
  const { card } = design;
  const { mixture, sources, warnings } = await resolveDesign(here, design, book);
  const { drop, water, temperature } = here.bench;
  const bench = { dropGrams: drop?.massGrams, alkalinity: water.alkalinity, temperature };
  const { answers, notApplied } = await reckonTrial({ number: undefined, mixture, ...bench }, book);
  const drink = finishedDrink(mixture, drinkConditions({ bench: here.bench, card }));
  const aims = drink.ok ? aimReports(card, drink.value, sources) : [];
  const worded = answers.map((one) => ({ ...one, answer: wordSources(one.filed.answer, bibliography) }));
  const cautions = slipAdvice(card, sources)
    .map(adviceCaution)
    .map((one) => ({ ...one, source: sourceWords(one.source, bibliography) }));
  const heading = `Formula: ${visible(card.name)}`;
  return {
    page: [
      ...(isShort
        ? shortPage({ heading, answers: worded, notApplied, results: [] })
        : [{ kind: 'heading', text: heading } as const, ...fullPage(worded, explain)]),
      ...aimBlocks(aims),
      ...(drink.ok || card.aims.length === 0
        ? []
        : [{ kind: 'text', text: `The aims are not judged: ${drink.fault.message}.` } as const]),
      ...cautionBlocks(cautions),
    ],
    json: {
      formula: card.name,
      answers: worded.map(({ filed, answer }) => ({
        ...answerJson(answer, explain),
        stage: filed.stage ?? '',
      })),
      aims: aims.map(aimJson),
      cautions,
    },
    cautions,
    warnings,
    answers,
    isMissed: aims.some(({ judged }) => judged.state === 'missed'),
  };
}

const fullPage = (answers: readonly ShortAnswer[], explain: boolean): Page =>
  answers.flatMap(({ calculator, filed, answer }) => [
    { kind: 'heading', text: filed.stage ? `${calculator.name}, ${filed.stage}` : calculator.name } as const,
    ...answerPage(answer, calculator.readings, explain),
  ]);
