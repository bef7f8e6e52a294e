/** The answers of a trial as a page. */

import type { Answer } from '../calc/answer.ts';
import { answerPage } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import type { Source } from '../reference/sources.ts';
import type { OpenedTrial } from './open-ledger.ts';
import { shortPage } from './reckon-short.ts';
import type { NotApplied, Reckoning } from './reckoned.ts';
import { wordSources } from './worded-sources.ts';

/** Every answer of a trial, then which calculators do not apply, and why. */
export function reckonedPage(
  trial: OpenedTrial,
  { answers, notApplied }: Reckoning,
  sources: Readonly<Record<string, Source>>,
  explain: boolean,
): Page {
  const said = new Set<string>();
  return [
    { kind: 'heading', text: headingOf(trial.card) },
    ...answers.flatMap(
      ({ calculator, filed }): Page => [
        { kind: 'heading', text: filed.stage ? `${calculator.name}, ${filed.stage}` : calculator.name },
        ...answerPage(sayingOnce(wordSources(filed.answer, sources), said), calculator.readings, explain),
      ],
    ),
    ...(notApplied.length > 0
      ? [
          {
            kind: 'notes',
            mark: '-',
            notes: notApplyingNotes(notApplied),
            tone: 'faint',
          } as const,
        ]
      : []),
  ];
}

/** The same in short. */
export const shortTrial = (
  { card }: OpenedTrial,
  { answers, notApplied }: Reckoning,
  sources: Readonly<Record<string, Source>>,
): Page =>
  shortPage({
    heading: headingOf(card),
    answers: answers.map((one) => ({ ...one, answer: wordSources(one.filed.answer, sources) })),
    notApplied,
    results: card.results,
  });

const headingOf = ({ number, title }: OpenedTrial['card']): string =>
  `Trial ${number}${title ? `: ${title}` : ''}`;

/** A caution that an answer above has said is not said again. */
function sayingOnce(answer: Answer, said: Set<string>): Answer {
  const cautions = answer.cautions.filter(({ text }) => !said.has(text));
  for (const { text } of cautions) said.add(text);
  return { ...answer, cautions };
}

/** Those that do not apply for the same reason stand in one note. */
function notApplyingNotes(notApplied: readonly NotApplied[]): readonly string[] {
  const namesByReason = new Map<string, string[]>();
  for (const { calculator, why } of notApplied) {
    const names = namesByReason.get(why);
    if (names) names.push(calculator.name);
    else namesByReason.set(why, [calculator.name]);
  }
  return [...namesByReason].map(
    ([why, names]) => `${names.join(', ')} ${names.length > 1 ? 'do' : 'does'} not apply: ${why}`,
  );
}
