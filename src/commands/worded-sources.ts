/** Source keys of an answer as the words of the bibliography. */

import type { Answer } from '../calc/answer.ts';
import type { Source } from '../reference/sources.ts';

type Sources = Readonly<Record<string, Source>>;

export function wordSources(answer: Answer, sources: Sources): Answer {
  return {
    ...answer,
    cautions: answer.cautions.map((one) => ({ ...one, source: sourceWords(one.source, sources) })),
    sources: answer.sources.map((one) => ({ ...one, source: sourceWords(one.source, sources) })),
  };
}

/** `key#place` as `author, year, title, place`; words that are not a key stay as they are. */
export function sourceWords(source: string, sources: Sources): string {
  const [key = '', ...place] = source.split('#');
  const text = Object.hasOwn(sources, key) ? sources[key]?.text : undefined;
  return [text ?? key, ...place].join(', ');
}
