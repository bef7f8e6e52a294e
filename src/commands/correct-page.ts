/** What to add to a tank, as a page and as JSON. */

import type { Measured } from '../calc/correction/measured-tank.ts';
import type { Addition, Mend } from '../calc/correction/mend.ts';
import type { TankReadings } from '../calc/correction/tank.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { asShown } from '../calc/weighing/balance.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { Block, Page } from '../output/view.ts';
import type { Problem } from '../problem.ts';
import type { AcidName } from '../reference/solution/acid-constants.ts';
import { type MeasuredDrink, measuredJson, slipSentences } from './drink-measured.ts';

export interface Corrected {
  readonly made: string;
  readonly stage: string;
  readonly read: Measured;
  readonly aim: TankReadings;
  readonly now: TankReadings;
  readonly massGrams: number;
  /** False where nobody said how much there is. */
  readonly isMassTold: boolean;
  /** g/mL, as planned. */
  readonly density: number;
  /** Nearer to the aim than the readings can tell. */
  readonly isWithin: boolean;
  readonly full: Mend;
  readonly short: Mend;
  readonly after: TankReadings;
  readonly afterShort: TankReadings;
  /** What is off its planned share after the short mend. */
  readonly thinned: readonly { readonly name: string; readonly change: number }[];
  readonly explained: MeasuredDrink | undefined;
  /** Divisions of the balances, g. */
  readonly divisions: readonly number[];
  readonly refusal: string | undefined;
  /** Of the stage, by name. */
  readonly acids: readonly AcidName[];
}

export function correctPage(corrected: Corrected): Page {
  const { made, stage, massGrams, isWithin, refusal, explained, divisions } = corrected;
  return [
    { kind: 'heading', text: `${made}, ${stage}: ${tankWords(massGrams, divisions)} in the tank` },
    readingsTable(corrected),
    ...(refusal === undefined ? [] : [{ kind: 'text', text: refusal, tone: 'warn' } as const]),
    ...(corrected.isMassTold || isWithin
      ? []
      : [
          {
            kind: 'text',
            text: 'Nobody said how much is in the tank: it is taken to hold what was written down. --tank "19.4 kg" says what there is.',
            tone: 'faint',
          } as const,
        ]),
    ...(explained ? slipSentences(explained).map((text): Block => ({ kind: 'text', text })) : []),
    ...(isWithin
      ? [
          {
            kind: 'text',
            text: 'It is as near to the aim as a refractometer and a titration can tell. Nothing is to be added.',
          } as const,
        ]
      : mendBlocks(corrected)),
    { kind: 'text', text: closingCaution, tone: 'faint' },
  ];
}

function readingsTable({ read, aim, after, isWithin }: Corrected): Block {
  const row = (label: string, measured: string, is: string, then: string): readonly string[] =>
    isWithin ? [label, measured, is] : [label, measured, is, then];
  return {
    kind: 'table',
    columns: [
      { head: '', align: 'left' },
      { head: 'measured', align: 'point' },
      { head: 'aim', align: 'point' },
      ...(isWithin ? [] : [{ head: 'afterwards', align: 'point' } as const]),
    ],
    rows: [
      row(
        'Brix',
        read.brix === undefined ? '-' : numberText(read.brix, 3),
        numberText(aim.brix, 3),
        numberText(after.brix, 3),
      ),
      row(
        'acid as citric',
        read.acid === undefined ? '-' : `${numberText(read.acid, 3)} g/L`,
        `${numberText(aim.acid, 3)} g/L`,
        `${numberText(after.acid, 3)} g/L`,
      ),
      ...(aim.ph === undefined
        ? []
        : [
            row(
              read.ph === undefined ? 'pH, reckoned' : 'pH',
              read.ph?.toFixed(2) ?? '-',
              aim.ph.toFixed(2),
              after.ph?.toFixed(2) ?? '-',
            ),
          ]),
    ],
  };
}

function mendBlocks(corrected: Corrected): Page {
  const { full, short, thinned, massGrams, afterShort, divisions, refusal } = corrected;
  const isShortEnough = full.additions.length === short.additions.length;
  const off = thinned.filter(({ name, change }) => name !== 'water' && Math.abs(change) > WORTH_A_WORD);
  return [
    {
      kind: 'heading',
      text: refusal === undefined ? 'Add, and everything is as planned' : 'What it would take',
    },
    additionsTable(full.additions, corrected),
    {
      kind: 'text',
      text: `Then there are ${tankWords(massGrams * full.growth, divisions)}, ${trimmedNumber((full.growth - 1) * 100, 2)} % more.`,
    },
    ...(isShortEnough
      ? []
      : [
          { kind: 'heading', text: 'Or sugar, acid and water alone' } as const,
          additionsTable(short.additions, corrected),
          {
            kind: 'text',
            text: `Brix ${numberText(afterShort.brix, 3)}, acid ${numberText(afterShort.acid, 3)} g/L${afterShort.ph === undefined ? '' : `, pH ${afterShort.ph.toFixed(2)}`}; ${thinWords(off)}.`,
          } as const,
        ]),
  ];
}

const WORTH_A_WORD = 1e-3;

const thinWords = (off: Corrected['thinned']): string =>
  off.length === 0
    ? 'the rest stays as planned'
    : off
        .map(
          ({ name, change }) =>
            `${name} ${trimmedNumber(Math.abs(change) * 100, 2)} % ${change < 0 ? 'under' : 'over'}`,
        )
        .join(', ');

function additionsTable(
  additions: readonly Addition[],
  { divisions, refusal }: Pick<Corrected, 'divisions' | 'refusal'>,
): Block {
  const shown = (grams: number): string =>
    refusal === undefined ? massOn(grams, divisions) : numberText(grams, 3);
  return {
    kind: 'table',
    columns: [
      { head: '', align: 'left' },
      { head: '', align: 'point' },
    ],
    rows: additions.map(({ name, addGrams }) => [name, `${shown(addGrams)} g`]),
  };
}

/** A whole tank: to its balance, and to no more than five digits. */
function tankWords(grams: number, divisions: readonly number[]): string {
  const shown = Number(massOn(grams, divisions));
  return shown >= 1000 ? `${trimmedNumber(shown / 1000, 5)} kg` : `${trimmedNumber(shown, 5)} g`;
}

/** To the finest division of the bench that leaves three digits. */
function massOn(grams: number, divisions: readonly number[]): string {
  const fitting = divisions.toSorted((one, other) => other - one).find((one) => grams >= 100 * one);
  return asShown(grams, fitting ?? Math.min(0.01, ...divisions));
}

const leaf = (value: number | null | undefined, unit: string) => ({ value: value ?? null, unit });

const additionJson = ({ name, addGrams }: Addition) => ({ ingredient: name, mass: leaf(addGrams, 'g') });

const readingJson = ({ brix, acid, ph, densityGramsPerMillilitre }: TankReadings) => ({
  brix: leaf(brix, ''),
  acid: leaf(acid, 'g/L'),
  ph: leaf(ph, ''),
  density: leaf(densityGramsPerMillilitre, 'g/mL'),
});

export function correctEnvelope(corrected: Corrected, problems: readonly Problem[]): Envelope {
  const { made, stage, read, massGrams, full, short, thinned, explained, refusal } = corrected;
  return envelope({
    schema: 'correct@1',
    given: {
      of: made,
      brix: leaf(read.brix, ''),
      acid: leaf(read.acid, 'g/L'),
      ph: leaf(read.ph, ''),
      tank: leaf(massGrams, 'g'),
    },
    found: {
      stage,
      additions: full.additions.map(additionJson),
      mendable: refusal === undefined,
      ...(refusal === undefined ? {} : { why: refusal }),
      aim: readingJson(corrected.aim),
      after: readingJson(corrected.after),
      massAfter: leaf(massGrams * full.growth, 'g'),
      sugarAcidWaterOnly: short.additions.map(additionJson),
      afterSugarAcidWater: readingJson(corrected.afterShort),
      offAfterSugarAcidWater: thinned.map(({ name, change }) => ({
        ingredient: name,
        change: leaf(change, ''),
      })),
      ...measuredJson(explained),
    },
    problems,
  });
}
