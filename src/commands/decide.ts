/** `decide`: what was decided goes into the file of the series. */

import { loadArithmetic } from '../calc/arithmetic.ts';
import { plainBracket } from '../calc/ladder/beaker.ts';
import { parseAmount } from '../calc/parse-amount.ts';
import { parseRungNumber, parseRungRatio } from '../calc/rungs/read-rungs.ts';
import type { Io } from '../io.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { setDecision } from '../ledger/series-edit.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { isOilPerEmulsifier, readVaried } from '../ledger/varied.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, type Parsed, ProblemError } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { orFail } from './ladder-options.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { openHere } from './open-ledger.ts';
import { type OpenedSeries, openRungs, openSeriesNamed } from './series-open.ts';
import { ratioCell } from './series-words.ts';

export async function runDecide(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const [name = '', typed = ''] = call.words;
  const opened = await openSeriesNamed(here, io, name);
  const text = typed.trim();
  if (text === '') fail('missing', 'the decision is empty', 'write what was decided, in your own words');
  const ratio = optionValue(call, 'ratio')?.trim();
  const value = ratio === undefined ? undefined : await ratioTyped(ratio, opened);
  const why = optionValue(call, 'why')?.trim() || undefined;
  const date = writtenTime(io.now(), here.settings.zone).slice(0, 10);
  const { file } = opened;
  const isDry = call.flags.has('dry-run');
  let diff: readonly string[] = [];
  const make = async () => {
    const before = textNow(here.root, file, io);
    const edited = setDecision(file, before, { text, date, ratio, why }, call.flags.has('again'));
    if (!edited.ok) throw new ProblemError(edited.problems);
    diff = changedLines(before, edited.text);
    return [{ path: file, before, after: edited.text }];
  };
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  const rungs = value === undefined ? undefined : await openRungs(here, opened.card);
  const cautions = value === undefined || !rungs ? [] : beyondHeld(rungs, opened, value);
  return {
    exitCode: 0,
    page: [
      { kind: 'lines', lines: diff },
      ...(cautions.length === 0
        ? []
        : [{ kind: 'notes', mark: '!', notes: cautions, tone: 'warn' } as const]),
    ],
    json: envelope({
      schema: 'decide@1',
      given: { series: opened.card.name, text },
      found: {
        file,
        date,
        ...(value === undefined ? {} : { ratio: { value, unit: '' } }),
        written: !isDry && diff.length > 0,
      },
      cautions: cautions.map((one) => ({
        code: 'not-seen-to-hold',
        text: one,
        source: 'the looks of this series',
      })),
    }),
    notes: [
      diff.length === 0
        ? `${file} says so already; nothing written`
        : `${isDry ? 'would write' : 'wrote'} ${file}`,
    ],
    explained: async () =>
      (await import('./explain-ladder.ts')).decideExplanation({
        here,
        value,
        rungs: rungs ?? (await openRungs(here, opened.card)),
        most: rungs && mostHeld(rungs),
      }),
  };
}

/** The figure that was decided on; refused where it is none of what the series varies. */
async function ratioTyped(text: string, { card }: OpenedSeries): Promise<number | undefined> {
  const [varied, second] = readVaried(card.varies);
  if (!varied || second) {
    if (text === '') fail('usage', '--ratio is empty', 'write what was decided on, such as 1:3');
    return undefined;
  }
  if (varied.kind === 'ratio') {
    const isTurned = /^emulsifier\s+per\s+oil$/u.test(normaliseName(card.varies ?? ''));
    return orFail('--ratio', parseRungRatio(text, isTurned));
  }
  if (varied.kind === 'blend hlb') return orFail('--ratio', parseRungNumber(text));
  if (/[*(+]/u.test(text)) await loadArithmetic();
  const amount: Parsed<unknown> = varied.kind === 'amount' ? parseAmount(text) : { ok: true, value: 0 };
  orFail('--ratio', amount);
  return undefined;
}

/** Where more oil was decided on than was seen to hold. */
function beyondHeld(rungs: SeriesRungs, { card }: OpenedSeries, value: number): readonly string[] {
  const [varied] = readVaried(card.varies);
  if (!isOilPerEmulsifier(varied)) return [];
  const most = mostHeld(rungs);
  if (most === undefined) return [`no beaker of this series has held yet`];
  if (value <= most * seenWithin) return [];
  return [
    `${ratioCell(value)} is more oil than was seen to hold: the highest before one failed is ${ratioCell(most)}`,
  ];
}

/** The most oil that held before a beaker failed. */
function mostHeld({ beakers }: SeriesRungs): number | undefined {
  const held = beakers.filter(({ outcome }) => outcome === 'held').map(({ ratio }) => ratio);
  return plainBracket(beakers).lastHeld ?? (held.length > 0 ? Math.max(...held) : undefined);
}

/** 0.333 was weighed where 1:3 is decided on. */
const seenWithin = 1.02;
