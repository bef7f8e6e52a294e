/** The weighing walk on a terminal: one addition at a time, each written as soon as it is typed. */

import { asShown } from '../calc/weighing/balance.ts';
import type { Io } from '../io.ts';
import { openTrial, trialFiles } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { envelope } from '../output/answer-json.ts';
import { visible } from '../output/visible.ts';
import type { Call, Outcome } from './command.ts';
import { type AtBalance, atBalance, type ItemFactToWrite, slips, writeFacts } from './weigh.ts';
import { readFigure } from './weigh-words.ts';
import { type Addition, readings } from './weighing-plan.ts';

/** How many of the newest trials are looked through for the lot that was used last. */
const trialsForLots = 5;

export async function walkWeighing(typed: string, call: Call, io: Io): Promise<Outcome> {
  let at = await atBalance(typed, call, io);
  for (const caution of at.cautions) io.out(`! ${visible(caution)}\n`);
  io.out('Type what the balance says of this addition; Enter for as planned, s to skip, Ctrl-C to leave.\n');
  const lots = await lastLots(at);
  let written = 0;
  for (let place = 0; place < at.additions.length; place++) {
    const addition = at.additions[place];
    if (!addition || addition.item.weighed) continue;
    const facts = await askAddition(at, place, io, lots);
    if (facts === 'leave') break;
    if (facts.length === 0) continue;
    await writeFacts(at, call, io, facts);
    written += 1;
    // What was weighed changes what is still to weigh.
    at = await atBalance(typed, call, io);
  }
  return {
    exitCode: 0,
    page: [],
    json: envelope({
      schema: 'weigh@1',
      given: { trial: at.trial.card.number },
      found: { file: at.trial.file },
    }),
    notes: [
      written === 0
        ? 'nothing written'
        : `wrote ${written} weighing${written === 1 ? '' : 's'} to ${at.trial.file}`,
    ],
  };
}

async function askAddition(
  at: AtBalance,
  place: number,
  io: Io,
  lots: Map<string, string>,
): Promise<readonly ItemFactToWrite[] | 'leave'> {
  const addition = at.additions[place];
  if (!addition) return [];
  const planned = asShown(addition.plannedGrams, addition.divisionGrams);
  io.out(
    `\n${visible(addition.stage.name)}, ${visible(addition.item.name)}: this addition ${planned} g, the balance should read ${readings(at.additions)[place]} g\n`,
  );
  for (;;) {
    const answer = await io.ask('  weighed: ');
    if (answer === undefined) return 'leave';
    if (answer.trim().toLowerCase() === 's') return [];
    const figure = readFigure(answer.trim() === '' ? planned : answer);
    if ('code' in figure) {
      io.out(`  ${visible(figure.message)}; ${visible(figure.hint)}\n`);
      continue;
    }
    const [slip] = slips([{ addition, ...figure }]);
    if (slip !== undefined) {
      const meant = await io.ask(`  ! ${visible(slip)} (y or n) `);
      if (meant === undefined) return 'leave';
      if (!/^y/i.test(meant.trim())) continue;
    }
    const lot = await askLot(at, addition, io, lots);
    return [
      { addition, key: 'weighed', text: figure.written },
      ...(lot === undefined ? [] : [{ addition, key: 'lot', text: lot } as const]),
    ];
  }
}

/** Asked once an ingredient; not of water, of stages, nor of what has its lot in the book. */
async function askLot(
  at: AtBalance,
  { item }: Addition,
  io: Io,
  lots: Map<string, string>,
): Promise<string | undefined> {
  const entry = at.book.find(item.name);
  if (!entry || item.lot !== undefined || entry.lot !== undefined || entry.record.role === 'water')
    return undefined;
  const last = lots.get(entry.name);
  const answer = (
    await io.ask(`  lot${last ? ` (Enter for ${visible(last)})` : ' (Enter for none)'}: `)
  )?.trim();
  const lot = answer === '' || answer === undefined ? last : answer;
  if (lot !== undefined) lots.set(entry.name, lot);
  return lot;
}

/** The lots of the newest trials, by ingredient. */
async function lastLots(at: AtBalance): Promise<Map<string, string>> {
  const lots = new Map<string, string>();
  const { here, book, trial } = at;
  const newest = trialFiles(here.root, here.port).slice(-trialsForLots);
  for (const { number } of newest) {
    const card = number === trial.card.number ? trial.card : (await openTrial(here, number))?.card;
    for (const item of card?.stages.flatMap((stage) => stage.items) ?? []) {
      const entry = book.find(item.name);
      if (entry && item.lot !== undefined && !isSameName(item.lot, '')) lots.set(entry.name, item.lot);
    }
  }
  return lots;
}
