/** A record as lines, one fact a line with what it comes to, so that two of them can be compared line by line. */

import { comesTo } from '../calc/compare/comes-to.ts';
import type { ComparedEntry, ComparedItem, ComparedStage } from '../calc/compare/document.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { visible } from '../output/visible.ts';
import type { Side } from './compare-side.ts';
import { comesToTexts } from './compare-words.ts';
import { designWords } from './open-formula.ts';

export function notebookLines(side: Side, text: string): readonly string[] {
  const { card, document, solved, outcomes, problems } = side;
  if (!card || !document) return [];
  return [
    designWords({ card }),
    ...document.facts.map(({ key, written }) => `${key}: ${written}`),
    ...document.stages.flatMap((stage) => stageLines(side, stage)),
    ...section('samples', document.samples.map(entryLine)),
    ...section('seen', document.observations.map(entryLine)),
    ...section(
      'what became of it',
      outcomes.map(({ sample, words }) => `${sample}: ${words}`),
    ),
    ...section(
      'aims',
      document.aims.map(({ key, written }) => `${key}: ${written}`),
    ),
    ...section('what follows', solved ? figureLines(side) : problems.map(({ message }) => message)),
    ...section('results', document.results.map(entryLine)),
    ...section('remarks', remarksIn(text)),
  ].map((line) => visible(line));
}

const section = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', heading, ...lines.map((line) => `  ${line}`)];

const entryLine = ({ heading, facts }: ComparedEntry): string =>
  [heading, facts.map(({ key, written }) => `${key} ${written}`).join(', ')].filter(Boolean).join(': ');

function stageLines(side: Side, stage: ComparedStage): readonly string[] {
  const resolved = side.solved?.mixture.stages.find(({ name }) => name === stage.name);
  const mass = resolved ? `, ${trimmedNumber(resolved.massGrams, 4)} g` : '';
  return [
    '',
    `${stage.name}${mass}`,
    ...stage.facts.map(({ key, written }) => `  ${key}: ${written}`),
    ...stage.steps.map(({ written }, at) => `  step ${at + 1}: ${written}`),
    ...stage.items.flatMap((item, at) => itemLines(side, stage, { item, at })),
  ];
}

function itemLines(
  { solved }: Side,
  { name }: ComparedStage,
  { item, at }: { readonly item: ComparedItem; readonly at: number },
): readonly string[] {
  const comes = solved && comesTo(solved.mixture, name, at);
  const [, share] = comesToTexts(undefined, comes);
  const grams = comes && `${numberText(comes.massGrams, 3)} g`;
  const isWeight = item.amount.kind === 'mass' && item.amount.written.endsWith(' g');
  const told = comes ? [...(isWeight ? [] : [grams]), `${share} in the ${comes.of}`] : [];
  return [
    `  ${[`${item.name}: ${item.amount.written}`, ...told].join(', ')}`,
    ...item.facts.map(({ key, written }) => `    ${key}: ${written}`),
  ];
}

function figureLines({ solved }: Side): readonly string[] {
  const figures = (solved?.properties ?? []).flatMap(({ label, value, digits, unit }) =>
    value === undefined ? [] : [`${label}: ${numberText(value, digits)}${unit === '' ? '' : ` ${unit}`}`],
  );
  const costs = (solved?.cost?.totals ?? []).map(
    ({ currency, amount }) => `cost of what is weighed in: ${numberText(amount, 3)} ${currency}/L`,
  );
  const above = (solved?.beside ?? [])
    .filter(({ isAbove }) => isAbove)
    .map(({ counted, figure }) => `above a published figure: ${counted.substance}, ${figure.body}`);
  return [...figures, ...costs, ...above];
}

/** Comments of the file, in its order. */
const remarksIn = (text: string): readonly string[] =>
  text
    .split(/\r?\n/u)
    .flatMap((line) => /^(?:[^"'#]|"[^"]*"|'[^']*'|(?<=\S)#)*?(?:^|\s)(#.*)$/u.exec(line)?.[1] ?? []);
