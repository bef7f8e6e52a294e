/** The answers of a trial or a formula in short: a line or two each, what changed since they were last written, the cautions. */

import type { Answer, Caution } from '../calc/answer.ts';
import type { ResultCard } from '../ledger/cards.ts';
import { textUnder } from '../ledger/reading.ts';
import { cautionBlocks, figurePairs } from '../output/answer-page.ts';
import type { Block, Page } from '../output/view.ts';
import { markOf, type Reckoned, type Reckoning } from './reckoned.ts';
import { figureFacts } from './result-facts.ts';

/** How many figures stand in the line of an answer; one less beside a sentence. */
const mostFigures = 4;

export interface ShortAnswer extends Reckoned {
  /** With its sources in words. */
  readonly answer: Answer;
}

export interface Short {
  readonly heading: string;
  readonly answers: readonly ShortAnswer[];
  readonly notApplied: Reckoning['notApplied'];
  /** What was written before, oldest first. */
  readonly results: readonly ResultCard[];
}

export function shortPage({ heading, answers, notApplied, results }: Short): Page {
  return [
    { kind: 'heading', text: heading },
    {
      kind: 'pairs',
      pairs: answers.map((one) => [nameOf(one), figuresOf(one)] as const),
      areSentences: true,
    },
    ...changeBlocks(answers, results),
    { kind: 'text', text: moreWords(notApplied.length), tone: 'faint' },
    ...cautionBlocks(saidOnce(answers.flatMap(({ answer }) => answer.cautions))),
  ];
}

const nameOf = ({ calculator, filed }: Reckoned): string =>
  filed.stage ? `${calculator.name}, ${filed.stage}` : calculator.name;

function figuresOf({ calculator, answer }: ShortAnswer): string {
  const { lead } = answer;
  const most = lead === undefined ? mostFigures : mostFigures - 1;
  const pairs = figurePairs(answer.found, calculator.readings);
  const figures = pairs.slice(0, most).map(([label, value]) => `${label} ${value}`);
  const text = [...figures, ...(pairs.length > most ? ['…'] : [])].join('; ');
  return lead === undefined ? text : `${lead.replace(/[.:]$/u, '')}: ${text}`;
}

function moreWords(notApplied: number): string {
  const others =
    notApplied === 0
      ? ''
      : `; ${notApplied} ${notApplied === 1 ? 'calculator does' : 'calculators do'} not apply`;
  return `--all shows every figure, each line that is written, and what does not apply and why${others}.`;
}

function saidOnce(cautions: readonly Caution[]): readonly Caution[] {
  const said = new Set<string>();
  return cautions.filter(({ text }) => !said.has(text) && said.add(text));
}

/** Figures that are not what the newest result of the same calculator and stage says. */
function changeBlocks(answers: readonly ShortAnswer[], results: readonly ResultCard[]): readonly Block[] {
  const rows = answers.flatMap((one) => {
    const { calculator, filed, answer } = one;
    const facts = figureFacts(answer, calculator.readings);
    const same = results.filter(
      (result) => result.calculator === calculator.name && (result.stage ?? '') === (filed.stage ?? ''),
    );
    if (same.some(({ of }) => of === markOf(filed))) return [];
    // Several answers of one stage are told apart by what they are about.
    const [subject] = facts.filter(([, text]) => /^\p{L}/u.test(text));
    const last = same.findLast(({ node }) => !subject || textUnder(node, subject[0]) === subject[1]);
    if (!last) return [];
    return facts.flatMap(([label, now]): readonly (readonly string[])[] => {
      const was = textUnder(last.node, label);
      return was === undefined || was === now ? [] : [[nameOf(one), label, was, now]];
    });
  });
  if (rows.length === 0) return [];
  const columns = ['answer', 'what changed', 'was', 'is'].map((head, at) => ({
    head,
    align: at < 2 ? ('left' as const) : ('point' as const),
  }));
  return [{ kind: 'grid', columns, rows }];
}
