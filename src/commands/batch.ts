import type { Io } from '../io.ts';
import { openFolder } from '../ledger/folder.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { envelope } from '../output/answer-json.ts';
import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { runBatchRecord } from './batch-record.ts';
import type { Call, Outcome } from './command.ts';
import { openHere } from './open-ledger.ts';

/** `batch` lists, `batch record DESIGN …` writes one. */
export async function runBatch(call: Call, io: Io): Promise<Outcome> {
  const [word] = call.words;
  if (word === 'record') return runBatchRecord(call, io);
  if (word !== undefined)
    return fail(
      'usage',
      `"${call.words.join(' ')}" is not what batch takes`,
      `${nearestNames(word, ['record'], 1).length > 0 ? 'did you mean record? ' : ''}batch lists them; batch record FORMULA … writes one; show NAME shows one`,
    );
  return listBatches(io);
}

async function listBatches(io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const opened = await openFolder(here, 'batches', readBatchCard);
  const cards = opened.flatMap(({ card }) => card ?? []);
  const errors = opened.flatMap(({ problems }) => problems.filter(({ severity }) => severity === 'error'));
  const of = (card: (typeof cards)[number]): string =>
    card.formula?.text ?? (card.trial === undefined ? '' : `trial ${card.trial}`);
  return {
    exitCode: errors.length > 0 ? 1 : 0,
    page:
      cards.length === 0
        ? [{ kind: 'text', text: opened.length === 0 ? noneYet : 'No batch that can be read.' }]
        : [
            {
              kind: 'grid',
              columns: ['batch', 'made', 'of', 'scaled to', 'yield', 'bottles'].map(
                (head) => ({ head, align: 'left' }) as const,
              ),
              rows: cards.map((card) => [
                card.name,
                card.made?.written.slice(0, 10) ?? '',
                of(card),
                card.scaledTo ?? '',
                card.yield?.written ?? '',
                card.bottles === undefined ? '' : String(card.bottles),
              ]),
            },
          ],
    json: envelope({
      schema: 'batch@1',
      found: {
        batches: cards.map((card) => ({
          batch: card.name,
          file: card.file,
          made: card.made?.written ?? '',
          of: of(card),
          scaledTo: card.scaledTo ?? '',
          yield: card.yield ? { value: card.yield.value, unit: card.yield.unit } : { value: null, unit: 'g' },
          bottles: { value: card.bottles ?? null, unit: '' },
        })),
      },
      problems: errors,
    }),
    problems: errors,
  };
}

const noneYet = 'No batches yet. neckring batch record FORMULA … writes the first.';
