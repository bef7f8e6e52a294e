/** The control of a ladder: a value that is known to hold, typed or taken from a trial or a series. */

import { plainBracket } from '../calc/ladder/beaker.ts';
import type { Io } from '../io.ts';
import type { RungValue } from '../ledger/ladder-vary.ts';
import { type Varied, variedIn } from '../ledger/varied.ts';
import { fail } from '../problem.ts';
import { optionValue } from './command.ts';
import { oneValue, type RungsAsked } from './ladder-options.ts';
import type { LadderStart } from './ladder-plan.ts';
import { openTrialNamed } from './open-ledger.ts';
import { openRungs, openSeriesNamed } from './series-open.ts';
import { pictureOf } from './trial-picture.ts';

export async function controlTyped(
  start: LadderStart,
  asked: RungsAsked,
  io: Io,
): Promise<RungValue | undefined> {
  const text = optionValue(asked.call, 'control')?.trim();
  if (text === undefined) return undefined;
  const [, kind = '', name = ''] = /^(trial|series)\s+(.+)$/iu.exec(text) ?? [];
  if (kind.toLowerCase() === 'trial') return ofTrial(start, asked.varied, name, io);
  if (kind.toLowerCase() === 'series') return ofSeries(start, asked.varied, name, io);
  if (asked.varied.kind === 'ratio' && /^\d+$/u.test(text) && Number(text) > 2)
    fail(
      'usage',
      `--control ${text} may be a ratio or a trial`,
      `write "trial ${text}", or a ratio such as 1:4`,
    );
  return oneValue('--control', text, asked);
}

async function ofTrial(start: LadderStart, varied: Varied, name: string, io: Io): Promise<RungValue> {
  const trial = await openTrialNamed(start.here, io, name);
  const { picture } = await pictureOf(start.here, trial, start.book);
  const found = variedIn(varied, { trial: trial.card, mixture: picture.mixture });
  if ('lacks' in found) return fail(found.lacks.code, `--control: ${found.lacks.message}`, found.lacks.hint);
  if (varied.kind !== 'amount') return found.value;
  const [typed, second] = found.typed;
  if (!typed || second) return noAmount(name);
  const { quantity, inDrink } = typed;
  return { quantity, inDrink, makeUp: false, written: quantity.written };
}

async function ofSeries(start: LadderStart, varied: Varied, name: string, io: Io): Promise<RungValue> {
  const { card } = await openSeriesNamed(start.here, io, name);
  if (varied.kind === 'amount') return noAmount(name);
  const { beakers, scales } = await openRungs(start.here, card);
  if (scales[0]?.text !== varied.text)
    fail(
      'other-series',
      `${card.name} varies ${scales[0]?.text ?? 'nothing'}`,
      `give a value of ${varied.text}`,
    );
  const held = beakers.filter(({ outcome }) => outcome === 'held').map(({ ratio }) => ratio);
  const { lastHeld } = plainBracket(beakers);
  if (held.length === 0)
    fail('nothing-held', `nothing held in ${card.name} yet`, 'give a value, such as 1:8');
  return (
    lastHeld ?? (beakers.some(({ outcome }) => outcome === 'failed') ? Math.min(...held) : Math.max(...held))
  );
}

const noAmount = (name: string): never =>
  fail('usage', `--control: the amount can't be taken from ${name}`, 'give the amount, such as 4 g');
