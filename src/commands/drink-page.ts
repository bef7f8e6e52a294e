/** The finished drink as a page that fits a screen. */

import { aimFigure, aimRangeText, aimWords } from '../calc/drink/aims.ts';
import type { FinishedDrink } from '../calc/drink/finished-drink.ts';
import type { LabelLine } from '../calc/drink/label.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { type AimReport, moverWords } from '../ledger/check-aims.ts';
import { partsText } from '../output/leaf-text.ts';
import type { Block, Column, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { bottleLine, type WarmedBottle } from './drink-bottle.ts';
import { type FigureLine, figureLines, nutritionLines } from './drink-words.ts';

const column = (head: string, align: Column['align']): Column => ({ head, align });

const linesTable = (lines: readonly FigureLine[]): Block => ({
  kind: 'table',
  columns: [column('', 'left'), column('', 'point'), column('', 'left')],
  rows: lines,
});

/** `orange cardamom: 1.035 kg in 1 L at 20 C` */
export function figureBlocks(drink: FinishedDrink, title: string, bottle?: WarmedBottle): Page {
  const { stage, litres, conditions } = drink;
  const celsius = trimmedNumber(conditions.temperatureKelvin - 273.15, 4);
  return [
    {
      kind: 'heading',
      text: `${title}: the finished drink, ${massText(stage.massGrams)} in ${volumeText(litres)} at ${celsius} C`,
    },
    linesTable([...figureLines(drink), ...(bottle ? [bottleLine(bottle)] : [])]),
  ];
}

/** What is one to four digits is shown as one. */
const ALMOST_ONE = 0.99995;

const massText = (grams: number): string =>
  grams >= ALMOST_ONE * 1000 ? `${numberText(grams / 1000, 4)} kg` : `${numberText(grams, 4)} g`;
const volumeText = (litres: number): string =>
  litres >= ALMOST_ONE ? `${numberText(litres, 4)} L` : `${numberText(litres * 1000, 4)} mL`;

export function aimBlocks(reports: readonly AimReport[]): Page {
  if (reports.length === 0) return [];
  const moved = reports.flatMap((report) => {
    const words = report.judged.state === 'missed' ? moverWords(report) : undefined;
    return words ? [`${aimWords(report.judged.name)}: ${words}`] : [];
  });
  return [
    { kind: 'heading', text: 'Aims' },
    {
      kind: 'table',
      columns: [column('', 'left'), column('comes to', 'point'), column('aim', 'left'), column('', 'left')],
      rows: reports
        .filter(({ judged }) => judged.state !== 'given')
        .map(({ card, judged }) => [
          aimWords(judged.name),
          judged.value === undefined ? '-' : aimFigure(judged, judged.value),
          judged.tolerance === undefined ? card.written : `${card.written} (${aimRangeText(judged)})`,
          stateWords(judged),
        ]),
    },
    ...(moved.length > 0 ? [{ kind: 'notes', mark: '-', notes: moved } as const] : []),
  ];
}

function stateWords({ state, by = 0, unit }: AimReport['judged']): string {
  if (state === 'missed')
    return `MISSED, ${trimmedNumber(Math.abs(by), 2)}${unit === '' ? '' : ` ${unit}`} ${by < 0 ? 'under' : 'over'}`;
  if (state === 'to measure') return 'for measuring';
  return state === 'given' ? '' : 'met';
}

/** Every stage: the syrup is where things crystallise, and where the pH is lowest. */
export function stagesBlock({ stages }: FinishedDrink): Page {
  return [
    { kind: 'heading', text: 'Stages' },
    {
      kind: 'table',
      columns: [
        column('', 'left'),
        column('mass', 'point'),
        column('volume', 'point'),
        column('Brix', 'point'),
        column('pH', 'point'),
        column('water activity', 'point'),
        column('in the drink', 'point'),
      ],
      rows: stages.map(({ stage, brix, acidity, hasAcids, waterActivity }) => [
        stage.name,
        massText(stage.massGrams),
        volumeText(stage.volumeMillilitres / 1000),
        brix > 0 ? brix.toFixed(1) : '-',
        hasAcids && acidity.ok ? acidity.value.ph.toFixed(2) : '-',
        waterActivity.ok ? waterActivity.value.waterActivity.toFixed(3) : '-',
        stage.name === 'drink' || stage.shareInDrink <= 0 ? '' : partsText(stage.shareInDrink),
      ]),
    },
  ];
}

export function labelBlocks(drink: FinishedDrink, lines: readonly LabelLine[], title: string): Page {
  const { withoutFactor } = drink.nutrition;
  const notCounted =
    withoutFactor.length > 0 ? ` Not counted, having no factor: ${withoutFactor.join(', ')}.` : '';
  return [
    { kind: 'heading', text: `${title}: ingredients by mass` },
    {
      kind: 'text',
      text: `${lines.map(({ ingredient, eNumber }) => (eNumber ? `${ingredient} (${eNumber})` : ingredient)).join(', ')}.`,
    },
    {
      kind: 'table',
      columns: [column('', 'left'), column('by mass', 'point')],
      rows: lines.map(({ ingredient, massFraction }) => [ingredient, partsText(massFraction)]),
    },
    { kind: 'heading', text: 'Per 100 mL' },
    linesTable(nutritionLines(drink)),
    {
      kind: 'text',
      text: `What a label must say is for local food law and a qualified person.${notCounted}`,
      tone: 'faint',
    },
  ];
}

/** What every substance comes to, heaviest first. */
export function substancesBlocks({ drink }: Mixture): Page {
  return drink ? substancesOf(drink, 'In the finished drink, as dosed') : [];
}

/** The same of every stage, and what its volume rests on. */
export const allStagesBlocks = ({ stages }: Mixture): Page =>
  stages.flatMap((stage): Page => {
    const { densityFrom } = stage;
    const note = densityFrom.measured ? [] : [faint(`Volume by ${densityFrom.words}.`)];
    return [...substancesOf(stage, `In the ${stage.name}`), ...note];
  });

const faint = (text: string): Block => ({ kind: 'text', text, tone: 'faint' });

function substancesOf(stage: ResolvedStage, heading: string): Page {
  const shown = stage.substances.filter(({ role, massGrams }) => role !== 'water' && massGrams > 0);
  return [
    { kind: 'heading', text: heading },
    {
      kind: 'table',
      columns: [
        column('', 'left'),
        column('role', 'left'),
        column('per litre', 'point'),
        column('by mass', 'point'),
      ],
      rows: [...shown]
        .sort((left, right) => right.massGrams - left.massGrams)
        .map(({ name, role, gramsPerLitre, massFraction }) => [
          visible(name),
          role,
          perLitre(gramsPerLitre),
          partsText(massFraction),
        ]),
    },
  ];
}

function perLitre(gramsPerLitre: number): string {
  if (gramsPerLitre >= 1) return `${numberText(gramsPerLitre, 4)} g/L`;
  if (gramsPerLitre >= 1e-3) return `${numberText(gramsPerLitre * 1e3, 4)} mg/L`;
  return `${numberText(gramsPerLitre * 1e6, 4)} ug/L`;
}
