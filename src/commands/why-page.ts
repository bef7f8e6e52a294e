/** `why` as a page and as JSON: what was seen, what is known, what it can mean. */

import type { Citation } from '../calc/answer.ts';
import { type Cause, type Known, likelihood, orLarge, spanWords } from '../calc/causes/facts.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { causeWords } from '../reference/why-causes.ts';
import { type HazeRow, hazeBlocks, hazeJson } from './why-compared.ts';

export interface Explained {
  readonly trial: number;
  readonly sample: string;
  readonly day: number | undefined;
  /** The day that was asked for, where nothing was seen on it. */
  readonly askedDay: number | undefined;
  readonly known: Known;
  readonly causes: readonly Cause[];
  readonly rows: readonly HazeRow[];
}

export function whyPage({ trial, sample, day, askedDay, known, causes, rows }: Explained): Page {
  const when = day === undefined ? '' : `, day ${day}`;
  return [
    {
      kind: 'text',
      text: visible(`Trial ${trial}, ${sample}${when}: ${known.looks.join(', ')}.`),
      tone: 'strong',
    },
    ...(askedDay === undefined
      ? []
      : [
          {
            kind: 'text',
            text: `Nothing was seen on day ${trimmedNumber(askedDay)}: this is the last look before it.`,
          } as const,
        ]),
    { kind: 'pairs', pairs: knownPairs(known).map(([label, text]) => [label, visible(text)] as const) },
    ...hazeBlocks(rows),
    ...causeBlocks(causes),
    {
      kind: 'text',
      text: closing(causes),
      tone: 'faint',
    },
  ];
}

const closing = (causes: readonly Cause[]): string =>
  causes.length === 0
    ? 'Nothing here needs explaining. A week on the bench says a week, that lot and that temperature: never a shelf life.'
    : 'The order is common practice, not a measurement; sizes are good to 20 %, what is seen to four times. Try the cheapest first, one thing at a time.';

function causeBlocks(causes: readonly Cause[]): Page {
  if (causes.length === 0) return [];
  const notes = causes.map((one) => {
    const { title, source } = causeWords[one.code];
    return visible(
      `${likelihood(one.weight)}: ${title}. ${capital(one.because)}. Next: ${nextOf(one)}. [${source}]`,
    );
  });
  return [
    { kind: 'heading', text: 'What it can mean' },
    ...notes.map((note, at) => ({ kind: 'notes', mark: `${at + 1}`, notes: [note] }) as const),
  ];
}

const nextOf = (one: Cause): string => one.next ?? causeWords[one.code].next;

const capital = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}`.replace(/\.$/u, '');

/** What is known, each in one line; what nobody wrote is left out. */
function knownPairs(known: Known): readonly (readonly [string, string])[] {
  const { implied, largestClear, micelle, emulsifierPerOil, ageDays } = known;
  const haze = known.isConcentrate
    ? 'none can be told in a concentrate; its look counts'
    : implied &&
      `droplets ${spanWords(implied)}${orLarge(implied)}${implied.largeFrom === undefined ? ',' : ''} from ${implied.from}`;
  const pairs: (readonly [string, string | undefined])[] = [
    [
      'age',
      ageDays === undefined
        ? undefined
        : `${numberText(ageDays, 2)} d; looks count from ${trimmedNumber(known.settleDays, 2)} d on`,
    ],
    ['before', known.before],
    ['since then', known.since],
    ['kept at', `${trimmedNumber(known.celsius, 3)} C${known.stress ? `, ${known.stress}` : ''}`],
    ['emulsifier per oil', emulsifierPerOil === undefined ? undefined : numberText(emulsifierPerOil, 3)],
    [
      'ratio would make',
      micelle === undefined ? undefined : `about ${numberText(micelle, 2)} nm, 1.5 times either way`,
    ],
    [known.isConcentrate ? 'droplet size' : known.implied?.isReading ? 'reading means' : 'look means', haze],
    [
      'measured',
      known.measuredDroplet === undefined
        ? undefined
        : `droplets of ${numberText(known.measuredDroplet, 3)} nm`,
    ],
    [
      'stays clear with',
      largestClear === undefined
        ? undefined
        : `droplets up to ${numberText(largestClear, 2)} nm, at this dose`,
    ],
    ['control', known.control],
    ['blank', known.blank],
    ['made otherwise', known.differences.length > 0 ? known.differences.join('; ') : undefined],
  ];
  return pairs.flatMap(([label, text]) => (text === undefined ? [] : [[label, text] as const]));
}

const leaf = (value: number | undefined, unit: string) => ({ value: value ?? null, unit });

export const whyJson = ({ trial, sample, day, known, causes, rows }: Explained) =>
  envelope({
    schema: 'why@1',
    given: { trial },
    found: {
      trial: leaf(trial, ''),
      sample,
      day: leaf(day, 'd'),
      looks: known.looks,
      impliedLow: leaf(known.implied?.low, 'nm'),
      impliedHigh: leaf(known.implied?.high, 'nm'),
      largestClearDiameter: leaf(known.largestClear, 'nm'),
      micelleDiameter: leaf(known.micelle, 'nm'),
      leastRisenDiameter: leaf(known.looks.includes('ring') ? known.leastRisen : undefined, 'nm'),
      emulsifierPerOil: leaf(known.emulsifierPerOil, ''),
      control: known.control ?? '',
      blank: known.blank ?? '',
      differences: known.differences,
      causes: causes.map((one) => ({
        cause: one.code,
        likelihood: likelihood(one.weight),
        title: causeWords[one.code].title,
        because: one.because,
        next: nextOf(one),
        source: causeWords[one.code].source,
      })),
      haze: hazeJson(rows),
    },
    sources: causeSources(causes),
  });

export const causeSources = (causes: readonly Cause[]): readonly Citation[] =>
  causes.map((one) => ({
    for: causeWords[one.code].title,
    source: causeWords[one.code].source,
    fromMemory: causeWords[one.code].source.includes('from memory'),
  }));
