/** The report of a batch: what went in, what it came to beside its plan, and what was seen on what was kept back. */

import type { Io } from '../io.ts';
import type { BatchCard } from '../ledger/cards.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { Part, Report } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import { batchReportOf, reportBlocks } from './batch-report.ts';
import { bookOf } from './ledger-book.ts';
import type { OpenedBatch } from './open-batch.ts';
import type { Here } from './open-ledger.ts';
import { cellsOf } from './report-board.ts';
import { photoParts } from './report-photos.ts';
import type { Reported } from './report-series.ts';
import { tastingParts } from './report-tastes.ts';
import { cautionSection, problemPart, section } from './report-words.ts';
import { batchFacts, designOf } from './show-batch.ts';
import { stageBlocks } from './show-stages.ts';

export async function batchPage(io: Io, here: Here, batch: OpenedBatch): Promise<Reported> {
  const { card } = batch;
  const design = await designOf(here, io, batch);
  const made = await batchReportOf(here, batch, { book: await bookOf(here), design });
  const { cautions, warnings } = made;
  const tasted = card.samples.map((sample) => ({ card, sample, head: sample.name, about: '' }));
  const sections: Report['sections'] = [
    ...section('mind', 'Take care first', problemPart(warnings)),
    ...section('board', 'What was kept back', batchBoard(card)),
    ...section(
      'recipe',
      'What went in',
      card.stages.flatMap((stage) => stageBlocks(stage, made.mixture)),
      'In the order of addition.',
    ),
    ...section('drink', 'What it came to', [...reportBlocks({ ...made, cautions: [] })]),
    ...section('tastes', 'Taste', tastingParts(tasted, here.bench.tastes)),
    ...section('photos', 'Photos', await photoParts(here, [card])),
    ...cautionSection(cautions),
  ];
  return {
    report: { ...headOf(card), sections, closing: closingCaution },
    cautions,
    sources: [],
    problems: warnings,
  };
}

function headOf(card: BatchCard): Omit<Report, 'sections' | 'closing'> {
  return {
    kind: card.title === undefined ? 'batch' : `batch ${visible(card.name)}`,
    title: visible(card.title ?? card.name),
    lead: card.why,
    headline: [],
    facts: batchFacts(card).map(([label, value]) => [label, visible(value)]),
  };
}

function batchBoard(card: BatchCard): readonly Part[] {
  const rows = card.samples.map((sample) => {
    const cells = cellsOf(card, sample);
    const last = [...cells.keys()].at(-1);
    return {
      head: visible(sample.name),
      about: [sample.in, sample.at && `at ${sample.at.written}`].filter(Boolean).join(', '),
      cells,
      outcome: last === undefined ? 'no look yet' : `looked at up to day ${last}`,
    };
  });
  if (!rows.some(({ cells }) => cells.size > 0)) return [];
  return [{ kind: 'board', board: { caption: 'What was seen, day by day', head: 'sample', rows } }];
}
