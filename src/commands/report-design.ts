/** The report of a formula or a trial. */

import type { Mixture } from '../calc/mixture/picture.ts';
import type { Io } from '../io.ts';
import type { StageCard, TrialCard } from '../ledger/cards.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { Part, Report, Section } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import type { Call } from './command.ts';
import { drinkReport } from './drink-report.ts';
import { drinkSources } from './drink-sources.ts';
import { bookOf } from './ledger-book.ts';
import { type OpenedDesign, resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { outcomeWords } from './outcome-words.ts';
import { cellsOf } from './report-board.ts';
import { drinkSections } from './report-drink.ts';
import { historyParts } from './report-history.ts';
import { mapParts, type Placed } from './report-map.ts';
import { photoParts } from './report-photos.ts';
import type { Reported } from './report-series.ts';
import { tastingParts } from './report-tastes.ts';
import { cautionSection, problemPart, section, sourceSection } from './report-words.ts';
import { stageBlocks } from './show-stages.ts';
import { trialCautions } from './trial-cautions.ts';
import { type TrialOutcomes, trialOutcomes } from './trial-outcomes.ts';

export async function designReport(call: Call, io: Io, here: Here, design: OpenedDesign): Promise<Reported> {
  const { card } = design;
  const book = await bookOf(here);
  const { mixture, warnings } = await resolveDesign(here, design, book);
  const drink = mixture.drink ? await drinkReport(drinkCall(call, design), io, here) : undefined;
  const trial = card.kind === 'trial' ? { ...design, card } : undefined;
  const around = trial ? await trialCautions(here, trial, { book, mixture }) : undefined;
  const cautions = [...(drink?.cautions ?? []), ...(around?.cautions ?? [])];
  const sources = drink ? drinkSources(drink) : [];
  const outcomes = trial ? await trialOutcomes(here, trial.card) : new Map();
  const sections: readonly Section[] = [
    ...section('mind', 'Take care first', problemPart(warnings)),
    ...(trial ? section('board', 'The board', trialBoard(trial.card, outcomes)) : []),
    ...section('recipe', 'What goes in', recipeParts(card.stages, mixture), 'In the order of addition.'),
    ...section(
      'map',
      'The map',
      mapParts([placedOf(mixture, trial?.card, outcomes)]),
      'Where oil and emulsifier meet, in percent by mass.',
    ),
    ...(drink ? drinkSections(drink) : []),
    ...(trial
      ? section(
          'tastes',
          'Taste',
          tastingParts(tastedOf(trial.card), here.bench.tastes),
          'Scores beside the newest look before them.',
        )
      : []),
    ...section(
      'history',
      'What changed',
      await historyParts(io, here, design.file),
      'One line for each version in git, the oldest first.',
    ),
    ...(trial ? section('photos', 'Photos', await photoParts(here, [trial.card])) : []),
    ...cautionSection(cautions),
    ...sourceSection(sources),
  ];
  return {
    report: { ...headOf(card), sections, closing: closingCaution },
    cautions,
    sources,
    problems: warnings,
  };
}

const drinkCall = (call: Call, { file }: OpenedDesign): Call => ({
  command: 'drink',
  words: [file],
  values: {},
  flags: new Set(call.flags.has('yes') ? ['yes'] : []),
});

function headOf(card: OpenedDesign['card']): Omit<Report, 'sections' | 'closing'> {
  if (card.kind === 'formula')
    return {
      kind: 'formula',
      title: visible(card.name),
      lead: card.title ?? card.why,
      headline: [],
      facts: [
        ['file', visible(card.file)],
        ...(card.from === undefined ? [] : [['made from trial', String(card.from)] as const]),
      ],
    };
  const facts: readonly (readonly [string, string | undefined])[] = [
    ['made', card.made?.written.slice(0, 10)],
    ['by', card.by],
    ['came from', card.from === undefined ? undefined : `trial ${card.from}`],
    ['series', card.series?.text],
    ['concluded', card.concluded],
  ];
  return {
    kind: `trial ${card.number}`,
    title: visible(card.title ?? `trial ${card.number}`),
    lead: card.why,
    headline: [],
    facts: facts.flatMap(([label, value]) => (value === undefined ? [] : [[label, visible(value)] as const])),
  };
}

export function trialBoard(card: TrialCard, outcomes: TrialOutcomes, isShort = false): readonly Part[] {
  const rows = card.samples
    .map((sample) => {
      const of = outcomes.get(sample);
      return {
        head: sample.name,
        about: [sample.in, sample.at && `at ${sample.at.written}`].filter(Boolean).join(', '),
        cells: cellsOf(card, sample),
        outcome: of ? outcomeWords(of) : 'no look yet',
      };
    })
    .filter(({ cells }) => cells.size > 0);
  if (rows.length === 0) return [];
  return [{ kind: 'board', board: { caption: 'What was seen, day by day', head: 'sample', rows, isShort } }];
}

function recipeParts(stages: readonly StageCard[], mixture: Mixture): readonly Part[] {
  return stages.flatMap((stage) => stageBlocks(stage, mixture));
}

/** By what became of the sample of the emulsion itself, where it has one. */
function placedOf(mixture: Mixture, card: TrialCard | undefined, outcomes: TrialOutcomes): Placed {
  const [first] = [...outcomes.values()];
  return {
    mixture,
    label: card ? `trial ${card.number}` : 'as designed',
    state: first && card?.samples.length === 1 ? first.outcome.outcome : 'made',
  };
}

const tastedOf = (card: TrialCard) =>
  card.samples.map((sample) => ({
    card,
    sample,
    head: sample.name,
    about: sample.at ? `at ${sample.at.written}` : '',
  }));
