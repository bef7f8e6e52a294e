/** The weighing walk on a terminal: one addition at a time, each written as soon as it is typed. */

import { asShown } from '../calc/weighing/balance.ts';
import type { Io } from '../io.ts';
import { openTrial, trialFiles } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { envelope } from '../output/answer-json.ts';
import { visible } from '../output/visible.ts';
import { wrapped } from '../output/wrap.ts';
import type { Call, Outcome } from './command.ts';
import {
  type AtBalance,
  atBalance,
  type ItemFactToWrite,
  slips,
  weighedCautions,
  writeFacts,
} from './weigh.ts';
import { isOffPlan, percentOff, weighedBlocks, weighingJson } from './weigh-off.ts';
import { readFigure, type Weighing } from './weigh-words.ts';
import { type Addition, readings } from './weighing-plan.ts';

/** How many of the newest trials are looked through for the lot that was used last. */
const trialsForLots = 5;

export async function walkWeighing(typed: string, call: Call, io: Io): Promise<Outcome> {
  let at = await atBalance(typed, call, io);
  for (const caution of at.cautions) say(io, `! ${caution}`);
  say(io, 'Type what the balance says of this addition; Enter for as planned, s to skip, Ctrl-C to leave.');
  const lots = await lastLots(at);
  const weighings: Weighing[] = [];
  for (let place = 0; place < at.additions.length; place++) {
    const addition = at.additions[place];
    if (!addition || addition.item.weighed) continue;
    const { facts, weighing, isLeft } = await askAddition(at, place, io, lots);
    if (facts.length > 0) {
      await writeFacts(at, call, io, facts);
      if (weighing) weighings.push(weighing);
    }
    if (isLeft) break;
    if (facts.length === 0) continue;
    // What was weighed changes what is still to weigh.
    at = await atBalance(typed, call, io);
  }
  return {
    exitCode: 0,
    page: weighedBlocks(at, weighings),
    json: envelope({
      schema: 'weigh@1',
      given: { trial: at.trial.card.number },
      found: { file: at.trial.file, weighed: weighings.map((one) => weighingJson(at, one)) },
      cautions: weighedCautions(at, weighings),
    }),
    notes: [
      weighings.length === 0
        ? 'nothing written'
        : `wrote ${weighings.length} weighing${weighings.length === 1 ? '' : 's'} to ${at.trial.file}`,
    ],
  };
}

const say = (io: Io, text: string): void => io.out(`${wrapped(visible(text), io.columns).join('\n')}\n`);

/** What came of one addition; `isLeft` when the person left with Ctrl-C. */
interface Asked {
  readonly facts: readonly ItemFactToWrite[];
  readonly weighing?: Weighing;
  readonly isLeft: boolean;
}

const left: Asked = { facts: [], isLeft: true };

async function askAddition(at: AtBalance, place: number, io: Io, lots: Map<string, string>): Promise<Asked> {
  const addition = at.additions[place];
  if (!addition) return { facts: [], isLeft: false };
  const planned = asShown(addition.plannedGrams, addition.divisionGrams);
  const total = readings(at.additions)[place];
  io.out('\n');
  say(io, `${addition.stage.name}, ${addition.item.name}`);
  say(io, `  this addition ${planned} g, the balance should read ${total} g`);
  for (;;) {
    const answer = await io.ask('  weighed: ');
    if (answer === undefined) return left;
    if (answer.trim().toLowerCase() === 's') return { facts: [], isLeft: false };
    const figure = readFigure(answer.trim() === '' ? planned : answer);
    if ('code' in figure) {
      say(io, `  ${figure.message}; ${figure.hint}`);
      continue;
    }
    const weighing = { addition, ...figure };
    const [slip] = slips([weighing]);
    if (slip !== undefined) {
      say(io, `  ! ${slip}`);
      const meant = await io.ask('  y or n: ');
      if (meant === undefined) return left;
      if (!/^y/i.test(meant.trim())) continue;
    }
    if (slip === undefined && isOffPlan(at, weighing))
      say(io, `  ! off by ${percentOff(weighing)}, more than ${at.here.bench.weighing.written}`);
    const weighed = { addition, key: 'weighed', text: figure.written } as const;
    const lot = await askLot(at, addition, io, lots);
    if (lot === 'left') return { facts: [weighed], weighing, isLeft: true };
    return {
      facts: lot === undefined ? [weighed] : [weighed, { addition, key: 'lot', text: lot }],
      weighing,
      isLeft: false,
    };
  }
}

/** Asked once an ingredient; not of water, of stages, nor of what has its lot in the book. */
async function askLot(
  at: AtBalance,
  { item }: Addition,
  io: Io,
  lots: Map<string, string>,
): Promise<string | undefined | 'left'> {
  const entry = at.book.find(item.name);
  const isKnown = item.lot !== undefined || entry?.lot !== undefined || entry?.record.role === 'water';
  if (!entry || isKnown) return undefined;
  const last = lots.get(entry.name);
  const answer = await io.ask(`  lot${last ? ` (Enter for ${visible(last)})` : ' (Enter for none)'}: `);
  if (answer === undefined) return 'left';
  const lot = answer.trim() === '' ? last : answer.trim();
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
