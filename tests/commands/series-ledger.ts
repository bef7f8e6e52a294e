/** Made-up series: a trial a rung, made alike, looked at on a few days. */

import { openHere } from '../../src/commands/open-ledger.ts';
import { openRungs, openSeriesNamed } from '../../src/commands/series-open.ts';
import type { Io } from '../../src/io.ts';
import { ledgerOf } from './small-ledger.ts';

export interface RungText {
  readonly trial: number;
  /** Items of the stage; the ratio's own when left out. */
  readonly items?: readonly string[];
  /** g of oil to 6 g of emulsifier. */
  readonly oil?: number;
  /** The day of making, of March 2026. */
  readonly day?: number;
  /** What was seen, by the number of days after the make. */
  readonly looks: Readonly<Record<number, string>>;
  readonly series?: string;
  /** Lines in place of those of a usual process. */
  readonly process?: string;
  /** More lines of the file, such as samples. */
  readonly more?: string;
  readonly observations?: string;
}

export const usualProcess = `    process:
      - do: warm
        what: oil and emulsifier
        to: 60 C
        stir: 400 rpm
      - do: add
        what: water
        over: 4 min
        stir: 400 rpm
`;

const dayMilliseconds = 86_400_000;

export const at = (day: number, after: number): string =>
  `${new Date(Date.UTC(2026, 2, day, 10) + after * dayMilliseconds).toISOString().slice(0, 16)}+00:00`;

export function rungText(rung: RungText): string {
  const { trial, oil = 2, day = 2, series = 'ladder', process = usualProcess } = rung;
  const items = rung.items ?? [`sweet orange oil: ${oil} g`, 'polysorbate 80: 6 g', 'water: to 50 g'];
  const looks = Object.entries(rung.looks).map(
    ([after, look]) => `  - at: ${at(day, Number(after))}\n    look: ${look}\n`,
  );
  const observations = `${looks.join('')}${rung.observations ?? ''}`;
  return `trial: ${trial}
made: ${at(day, 0)}
series: ${series}
stages:
  emulsion:
${process}    items:
${items.map((item) => `      - ${item}\n`).join('')}${rung.more ?? ''}${observations === '' ? '' : `observations:\n${observations}`}`;
}

export const ladderText = 'series: ladder\nquestion: how much?\nvaries: oil per emulsifier\n';

/** A ledger with one series; its file is the usual one unless told. */
export const seriesLedger = (
  rungs: readonly RungText[],
  series = ladderText,
  files: Readonly<Record<string, string>> = {},
): Promise<string> =>
  ledgerOf({
    'series/ladder.yaml': series,
    ...Object.fromEntries(rungs.map((rung) => [`trials/${rung.trial}.yaml`, rungText(rung)])),
    ...files,
  });

export const heldWeek = { 1: 'clear', 3: 'clear', 7: 'clear' } as const;
export const failedAtOnce = { 1: 'clear', 3: 'hazy' } as const;

/** Forty beakers on ten days around a break at a third; the fifteenth is odd. */
export const fortyBeakers: readonly RungText[] = Array.from({ length: 40 }, (_, index) => {
  const ratio = 0.2 * (0.6 / 0.2) ** (index / 39);
  const isHeld = ratio < 1 / 3 ? index !== 15 : false;
  return {
    trial: index + 1,
    oil: Number((6 * ratio).toFixed(2)),
    day: 2 + (index % 10),
    looks: isHeld ? heldWeek : failedAtOnce,
  };
});

const quiet = (folder: string): Io => ({
  out: () => {},
  err: () => {},
  outIsTerminal: false,
  errIsTerminal: false,
  canAsk: false,
  ask: async () => undefined,
  columns: 80,
  environment: {},
  workingFolder: folder,
  now: () => Date.parse('2026-03-12T12:00:00Z'),
  random: () => 0.5,
});

export async function rungsOf(folder: string, name = 'ladder') {
  const here = await openHere(quiet(folder));
  return openRungs(here, (await openSeriesNamed(here, quiet(folder), name)).card);
}
