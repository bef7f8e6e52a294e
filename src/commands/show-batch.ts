/** One batch as a page of the notebook. */

import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { isProblemError } from '../problem.ts';
import { batchReportOf, reportBlocks, reportJson } from './batch-report.ts';
import type { Outcome } from './command.ts';
import { bookOf } from './ledger-book.ts';
import type { OpenedBatch } from './open-batch.ts';
import { type OpenedDesign, openDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { observationBlocks } from './show-record.ts';
import { stageBlocks } from './show-stages.ts';

export async function showBatch(here: Here, io: Io, batch: OpenedBatch): Promise<Outcome> {
  const { card } = batch;
  const design = await designOf(here, io, batch);
  const report = await batchReportOf(here, batch, { book: await bookOf(here), design });
  return {
    exitCode: 0,
    page: [
      ...headBlocks(batch),
      ...card.stages.flatMap((stage) => stageBlocks(stage, report.mixture)),
      ...observationBlocks(card, here.bench.tastes, new Map()),
      ...reportBlocks(report),
    ],
    json: envelope({
      schema: 'show@1',
      given: { batch: card.name },
      found: {
        file: batch.file,
        formula: card.formula?.text ?? '',
        trial: card.trial ?? null,
        ...reportJson(report),
      },
      cautions: report.cautions,
      problems: report.warnings,
    }),
    problems: report.warnings,
  };
}

/** The design as it is now; a formula that is gone leaves the batch without aims. */
export async function designOf(here: Here, io: Io, { card }: OpenedBatch): Promise<OpenedDesign | undefined> {
  const name = card.formula?.text ?? (card.trial === undefined ? undefined : String(card.trial));
  if (name === undefined) return undefined;
  try {
    return await openDesign(here, io, name);
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return undefined;
  }
}

/** What is known of a batch beside its stages. */
export function batchFacts(card: OpenedBatch['card']): readonly (readonly [label: string, value: string])[] {
  const facts: readonly (readonly [string, string | undefined])[] = [
    ['of', card.formula?.text ?? (card.trial === undefined ? undefined : `trial ${card.trial}`)],
    ['revision', card.revision],
    ['made', card.made?.written],
    ['by', card.by],
    ['scaled to', card.scaledTo],
    ['loss', card.loss?.written],
    ['yield', card.yield?.written],
    [
      'bottles',
      card.bottles === undefined
        ? undefined
        : `${card.bottles}${card.bottle ? ` of ${card.bottle.written}` : ''}`,
    ],
    ['kept back', keptBack(card.samples)],
    ['note', card.note],
  ];
  return facts.flatMap(([label, value]) => (value === undefined ? [] : [[label, value] as const]));
}

function headBlocks({ card }: OpenedBatch): Page {
  return [
    { kind: 'heading', text: `Batch ${card.name}${card.title ? `: ${card.title}` : ''}` },
    {
      kind: 'table',
      columns: [
        { head: '', align: 'left' },
        { head: '', align: 'left' },
      ],
      rows: batchFacts(card),
    },
  ];
}

function keptBack(samples: OpenedBatch['card']['samples']): string | undefined {
  const kept = samples.find(({ name }) => name === 'retained');
  if (!kept) return undefined;
  const looks = (kept.looks ?? []).map(({ written }) => written).join(', ');
  return `${kept.count ?? ''} of ${kept.of}, to look at after ${looks}`.trim();
}
