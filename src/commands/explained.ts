/** What `--explain` adds to an answer: the working, the sources, and where each of them holds. */

import type { Citation } from '../calc/answer.ts';
import { withLocator } from '../calc/working.ts';
import { workingBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { sources as bibliography } from '../reference/kept-sources.ts';
import { lawUses } from '../reference/uses/index.ts';
import type { Use } from '../reference/uses/use.ts';
import type { Explanation, Outcome } from './command.ts';
import { sourceWords } from './worded-sources.ts';

/** A citation in words, with its range. */
export interface ExplainedSource extends Citation {
  readonly range: string;
}

/** The outcome with its explanation under the page and in the envelope. */
export async function withExplanation(outcome: Outcome): Promise<Outcome> {
  const told = await outcome.explained?.();
  if (!told) return outcome;
  const sources = explainedSources(told);
  const { schema, given, found, cautions, problems } = outcome.json;
  return {
    ...outcome,
    page: [
      ...outcome.page,
      ...(told.isShown ? [] : workingBlocks(told.working)),
      ...(told.more ?? []),
      ...sourceBlocks(sources),
    ],
    json: { schema, given, found, working: told.working, cautions, sources, problems },
  };
}

/** Sources with the same words, range and standing in one note. */
function sourceBlocks(sources: readonly ExplainedSource[]): Page {
  if (sources.length === 0) return [];
  const purposes = new Map<string, string[]>();
  for (const { for: purpose, source, fromMemory, range } of sources) {
    const where = `: ${source}${fromMemory ? ' (from memory)' : ''}\n${range === notStated ? 'range' : 'range:'} ${range}`;
    const there = purposes.get(where);
    if (there) there.push(purpose);
    else purposes.set(where, [purpose]);
  }
  const notes = [...purposes].map(([where, all]) => `${all.join(', ')}${where}`);
  return [
    { kind: 'heading', text: 'Sources' },
    { kind: 'notes', mark: ' -', notes },
  ];
}

/** What the answer cited, then what every such answer rests on; each once, in words. */
export function explainedSources({ sources, restsOn = [] }: Explanation): readonly ExplainedSource[] {
  const laws = lawUses();
  const always = laws.filter(({ always: names = [] }) => names.some((name) => restsOn.includes(name)));
  const all = [...sources, ...always.map(citationOf)].map((one) => ({
    for: one.for,
    source: sourceWords(one.source, bibliography),
    fromMemory: one.fromMemory,
    range: rangeOf(one, laws),
  }));
  return all.filter(
    (one, at) => all.findIndex((other) => other.for === one.for && other.source === one.source) === at,
  );
}

const citationOf = ({ what, source, locator, fromMemory, range }: Use): Citation => ({
  for: what,
  source: withLocator(source, locator),
  fromMemory,
  ...(range === undefined ? {} : { range }),
});

const notStated = 'not stated by the source';

/** Where it holds; said by whoever cites it, else by the register of uses. */
function rangeOf(one: Citation, laws: readonly Use[]): string {
  if (/^(?:given|taken|typed)\b/u.test(one.source)) return 'this answer alone';
  const practice = one.source.startsWith('common practice') ? 'none, practice only' : notStated;
  return one.range ?? registered(one, laws) ?? practice;
}

const keyOf = (source: string): string => source.split('#')[0] ?? source;

/** By what it is for; else by its source, as a key or in words, where that holds for one range only. */
function registered({ for: purpose, source }: Citation, laws: readonly Use[]): string | undefined {
  const named = laws.find((use) => use.what === purpose);
  if (named) return named.range;
  const key = keyOf(source);
  const isFrom = (use: Use): boolean => {
    const words = sourceWords(use.source, bibliography);
    return use.source === key || source === words || source.startsWith(`${words}, `);
  };
  const ranges = new Set(laws.flatMap((use) => (use.range !== undefined && isFrom(use) ? [use.range] : [])));
  const [only, second] = ranges;
  return second === undefined ? only : undefined;
}
