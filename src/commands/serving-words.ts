/** The serving sheet and its key as lines of text. */

import type { Serving, ServingKind } from '../calc/tasting/serving-plan.ts';
import { visible } from '../output/visible.ts';
import { wrapped } from '../output/wrap.ts';

export interface Plan {
  readonly kind: ServingKind;
  /** When it was planned. */
  readonly at: string;
  readonly drinks: { readonly A: string; readonly B: string };
  readonly question: string;
  /** The question as it is typed when the answers are counted: `--prefer`; empty for a triangle. */
  readonly asked: string;
  /** Where the key is. */
  readonly key: string;
  readonly rows: readonly Serving[];
}

const width = 78;

/** What the taster sees: codes, and where to write. */
export function sheetLines(plan: Plan): readonly string[] {
  const { kind, at, question, asked, key, rows } = plan;
  const places = placesOf(kind);
  return [
    `Serving sheet of a ${kind}, ${rows.length} ${rows.length === 1 ? 'tasting' : 'tastings'}, ${at}`,
    '',
    ...paragraph(
      `${question} Taste from left to right, and write down a code each time; guess where you can't tell. Water and a pause in between. Never taste what has stood uncovered.`,
    ),
    '',
    `tasting  ${places.map((place) => place.padEnd(8)).join('')}answer`,
    ...rows.map(
      (row, index) =>
        `${String(index + 1).padStart(7)}  ${row.map(({ code }) => code.padEnd(8)).join('')}______`,
    ),
    '',
    ...paragraph(`The key is in ${key}. Open it when every line has an answer, then type`),
    `  neckring ${[kind, asked, `--right N --of ${rows.length}`].filter(Boolean).join(' ')}`,
  ].map(visible);
}

/** What the one who pours needs, and the one who counts. */
export function keyText(plan: Plan): string {
  const { kind, at, drinks, rows } = plan;
  const lines = [
    `Key to a ${kind}, ${rows.length} ${rows.length === 1 ? 'tasting' : 'tastings'}, ${at}`,
    '',
    `A  ${drinks.A}`,
    `B  ${drinks.B}`,
    '',
    ...paragraph(howToPour),
    '',
    `tasting  ${placesOf(kind)
      .map((place) => place.padEnd(8))
      .join('')}${kind === 'triangle' ? 'odd one' : ''}`.trimEnd(),
    ...rows.map((row, index) =>
      `${String(index + 1).padStart(7)}  ${row.map(({ code, drink }) => `${code} ${drink}`.padEnd(8)).join('')}${kind === 'triangle' ? oddOne(row) : ''}`.trimEnd(),
    ),
    '',
    ...poured('A', rows),
    ...poured('B', rows),
  ];
  return `${lines.map(visible).join('\n')}\n`;
}

const howToPour =
  'Pour by this list, all glasses alike, equally full and equally cold, the code on each. Who tastes alone pours ahead and tastes later from the sheet, with this put away.';

const placesOf = (kind: ServingKind): readonly string[] =>
  kind === 'triangle' ? ['left', 'middle', 'right'] : ['left', 'right'];

const paragraph = (text: string): readonly string[] => wrapped(text, width);

function oddOne(row: Serving): string {
  const odd = row.find(({ drink }) => row.filter((other) => other.drink === drink).length === 1);
  return odd?.code ?? '';
}

const codesOf = (rows: readonly Serving[], drink: 'A' | 'B'): readonly string[] =>
  rows.flatMap((row) => row.filter((glass) => glass.drink === drink).map(({ code }) => code)).sort();

/** `A into 137 254 …`, by number, as the glasses are filled. */
function poured(drink: 'A' | 'B', rows: readonly Serving[]): readonly string[] {
  const codes = codesOf(rows, drink);
  return wrapped(codes.join(' '), width - 8).map(
    (line, at) => `${at === 0 ? `${drink} into` : '      '}  ${line}`,
  );
}
