/** An answer as a page: the lead, the figures, the lists, the working if asked for, the cautions. */

import type { Answer, Caution, Entry, Facts, Row, WorkingLine } from '../calc/answer.ts';
import type { Reading, Readings } from '../calc/calculator.ts';
import { entryText } from './leaf-text.ts';
import type { Block, Page } from './view.ts';

export const closingCaution =
  'Figures here are for your own judgement: local food law and a qualified person decide.';

export function answerPage(answer: Answer, readings: Readings, showsWorking = false): Page {
  return [
    ...(answer.lead === undefined ? [] : [{ kind: 'text', text: answer.lead, tone: 'strong' } as const]),
    ...figures(answer.found, readings),
    ...(showsWorking ? workingBlocks(answer.working) : []),
    ...cautionBlocks(answer.cautions),
  ];
}

/** Each single figure with its label. */
export const figurePairs = (found: Facts, readings: Readings): readonly (readonly [string, string])[] =>
  Object.entries(readings).flatMap(([key, reading]) => {
    const fact = found[key];
    const isShown = fact !== undefined && reading.as !== 'nowhere' && !isList(fact) && !isAbsent(fact);
    return isShown ? [[reading.label, entryText(fact, reading)] as const] : [];
  });

function figures(found: Facts, readings: Readings): Page {
  const pairs = figurePairs(found, readings);
  const lists = Object.entries(readings).flatMap(([key, reading]) => {
    const fact = found[key];
    const isShown = fact !== undefined && reading.as !== 'nowhere' && isList(fact) && fact.length > 0;
    return isShown ? listBlocks(fact, reading) : [];
  });
  return [...(pairs.length > 0 ? [{ kind: 'pairs', pairs } as const] : []), ...lists];
}

const isList = (fact: Facts[string]): fact is Exclude<Facts[string], Entry> => Array.isArray(fact);

const isAbsent = (entry: Entry): boolean => typeof entry === 'object' && entry.value === null;

function listBlocks(
  fact: readonly (Row | string | { readonly value: number | null; readonly unit: string })[],
  reading: Reading,
): Page {
  const columns = Object.entries(reading.columns ?? {});
  const rows = fact.filter(
    (one): one is Row => typeof one === 'object' && !('unit' in one && 'value' in one),
  );
  const shown = columns.filter(
    ([key, column]) =>
      column.as !== 'nowhere' && rows.some((row) => row[key] !== undefined && !isAbsent(row[key])),
  );
  return [
    {
      kind: 'table',
      columns: shown.map(([, column]) => ({
        head: column.label,
        align: column.unit === undefined ? 'left' : 'point',
      })),
      rows: rows.map((row) => shown.map(([key, column]) => entryText(row[key], column))),
    },
  ];
}

/** How it was worked out: each equation with the numbers in it. */
export const workingBlocks = (lines: readonly WorkingLine[]): Page =>
  lines.length === 0
    ? []
    : [
        { kind: 'heading', text: 'Working' },
        { kind: 'notes', mark: ' -', notes: lines.map(({ equation, numbers }) => `${equation}\n${numbers}`) },
      ];

/** Cautions with their sources, and who decides. */
export function cautionBlocks(cautions: readonly Caution[]): Page {
  if (cautions.length === 0) return [];
  return [
    {
      kind: 'notes',
      mark: '!',
      notes: cautions.map((one) => `${one.text} [${one.source}]`),
      tone: 'warn',
    },
    { kind: 'text', text: closingCaution, tone: 'faint' },
  ];
}

/** A page that says only once, after the last caution, who decides. */
export function closedOnce(page: Page): Page {
  const isClosing = (block: Block): boolean => block.kind === 'text' && block.text === closingCaution;
  const last = page.findLastIndex(isClosing);
  return page.filter((block, at) => at === last || !isClosing(block));
}
