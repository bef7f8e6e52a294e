/** What was measured of the drink beside what is reckoned, and the one slip of the balance that explains a difference. */

import { finishedDrink } from '../calc/drink/finished-drink.ts';
import {
  type Compared,
  compareReadings,
  expectedReadings,
  type ReadingName,
  type Readings,
  slipThatExplains,
} from '../calc/drink/measured.ts';
import type { DrinkConditions } from '../calc/drink/stage-figures.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { BatchCard, MadeCard, ObservationCard, TrialCard } from '../ledger/cards.ts';
import { drinkObservations, volumesOf } from '../ledger/drink-conditions.ts';
import { type ItemPlace, ingredientPlaces, mixtureWith } from '../ledger/item-moves.ts';
import { textUnder } from '../ledger/reading.ts';
import type { Sources } from '../ledger/resolve.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Page } from '../output/view.ts';
import { measuredTolerances } from '../reference/aim-tolerances.ts';
import { citricAcidEquivalents, citricAcidMolarMass } from '../reference/citric-acid.ts';

/** An item that, so much off, would bring every reading within its tolerance. */
export interface ItemSlip extends ItemPlace {
  readonly factor: number;
  /** g in the stage where it is weighed, as written. */
  readonly massGrams: number;
}

export interface MeasuredDrink {
  readonly compared: readonly Compared[];
  /** Smallest error first; empty where all agrees, or no single item explains it. */
  readonly slips: readonly ItemSlip[];
}

/** The newest reading of each kind of any sample of the drink. */
export function readingsOf(card: MadeCard): Readings {
  const seen = drinkObservations(card);
  const ph = seen.findLast((one) => one.ph !== undefined)?.ph;
  const acid = newestAcid(
    card,
    seen.findLast((one) => one.acid),
  );
  const brix = seen.findLast((one) => one.brix !== undefined)?.brix;
  const density = seen.findLast((one) => one.density)?.density;
  const co2 = seen.findLast((one) => one.co2)?.co2;
  return {
    ...(ph === undefined ? {} : { ph }),
    ...(acid === undefined ? {} : { acid }),
    ...(brix === undefined ? {} : { brix }),
    ...(density ? { density: density.inner } : {}),
    ...(co2 ? { co2: volumesOf(co2) } : {}),
  };
}

/** g/L as citric acid: the newest of what was observed and what was titrated into the drink's results. */
function newestAcid(card: MadeCard, observed: ObservationCard | undefined): number | undefined {
  const titrated = card.results.findLast(
    ({ calculator, stage }) => calculator === 'titrate' && stage !== undefined && isSameName(stage, 'drink'),
  );
  const text = titrated && textUnder(titrated.node, 'acid hydrogens');
  const hydrogens = text === undefined ? undefined : parseQuantity(text, ['moles per volume']);
  const isNewer = !observed || (titrated?.at.epochMilliseconds ?? 0) > observed.at.epochMilliseconds;
  if (!hydrogens?.ok || !isNewer) return observed?.acid && observed.acid.inner * 1000;
  return (hydrogens.value.inner * 1000 * citricAcidMolarMass.value) / citricAcidEquivalents.value;
}

export interface MeasuredFrom {
  readonly card: TrialCard | BatchCard;
  readonly mixture: Mixture;
  readonly sources: Sources;
  readonly conditions: DrinkConditions;
}

/** Undefined where nothing was measured of the drink, or the drink can't be reckoned. */
export function measuredDrink(from: MeasuredFrom): MeasuredDrink | undefined {
  const { card, mixture, sources, conditions } = from;
  const readings = readingsOf(card);
  if (Object.keys(readings).length === 0) return undefined;
  const expected = shownBy(mixture, conditions);
  if (!expected) return undefined;
  const compared = compareReadings(readings, expected);
  if (compared.every(({ agrees }) => agrees)) return { compared, slips: [] };
  const slips = ingredientPlaces(card).flatMap((place): readonly ItemSlip[] => {
    const slip = slipThatExplains(compared, (factor) => {
      const other = mixtureWith(card, sources, { place, factor });
      return other && shownBy(other, conditions);
    });
    const stage = mixture.stages[place.stage];
    return slip
      ? [{ ...place, factor: slip.factor, massGrams: stage?.items[place.item]?.massGrams ?? 0 }]
      : [];
  });
  const size = ({ factor }: ItemSlip): number => Math.abs(Math.log(factor));
  return { compared, slips: slips.sort((left, right) => size(left) - size(right)) };
}

/** What the drink of a mixture is reckoned to show. */
export function shownBy(mixture: Mixture, conditions: DrinkConditions): Readings | undefined {
  const drink = finishedDrink(mixture, conditions);
  return drink.ok ? expectedReadings(drink.value) : undefined;
}

const units: Readonly<Record<ReadingName, string>> = {
  ph: '',
  acid: 'g/L',
  brix: '',
  density: 'g/mL',
  co2: 'vol',
};
const labels: Readonly<Record<ReadingName, string>> = {
  ph: 'pH',
  acid: 'acid as citric',
  brix: 'Brix, refractometer',
  density: 'density',
  co2: 'CO2',
};

export function measuredBlocks(measured: MeasuredDrink | undefined): Page {
  if (!measured) return [];
  return [
    { kind: 'heading', text: 'Measured beside reckoned' },
    {
      kind: 'table',
      columns: [
        { head: '', align: 'left' },
        { head: 'measured', align: 'point' },
        { head: 'reckoned', align: 'point' },
        { head: 'allow', align: 'point' },
        { head: '', align: 'left' },
      ],
      rows: measured.compared.map((one) => [
        labels[one.reading],
        figureText(one.reading, one.measured),
        one.computed === undefined ? '-' : figureText(one.reading, one.computed),
        trimmedNumber(one.tolerance, 2),
        one.computed === undefined ? 'measured only' : one.agrees ? 'agrees' : 'DIFFERS',
      ]),
    },
    ...slipSentences(measured).map((text) => ({ kind: 'text', text }) as const),
  ];
}

function figureText(reading: ReadingName, value: number): string {
  const text = reading === 'ph' ? value.toFixed(2) : numberText(value, reading === 'density' ? 5 : 3);
  return units[reading] === '' ? text : `${text} ${units[reading]}`;
}

/** What one slip would explain a difference, in a sentence; none where all agrees. */
export function slipSentences({ compared, slips }: MeasuredDrink): readonly string[] {
  if (compared.every(({ agrees }) => agrees)) return [];
  const [first, ...others] = slips;
  if (!first)
    return [
      'No single item, weighed wrong, explains all of it: look at the readings first (gas driven off? meter set?).',
    ];
  const more = others.slice(0, 2).map((one) => `or ${changeWords(one)}`);
  return [`One slip would explain all of it: ${[changeWords(first), ...more].join(', ')}.`];
}

/** `12 % less citric acid (3.96 g for 4.5 g)` */
function changeWords({ name, factor, massGrams, isMakeUp }: ItemSlip): string {
  const percent = trimmedNumber(Math.abs(factor - 1) * 100, 2);
  const sense = `${percent} % ${factor < 1 ? 'less' : 'more'}`;
  if (isMakeUp) return `made up to ${sense} with ${name}`;
  return `${sense} ${name} (${numberText(massGrams * factor, 3)} g for ${numberText(massGrams, 3)} g)`;
}

export function measuredJson(measured: MeasuredDrink | undefined): Readonly<Record<string, unknown>> {
  return {
    measured: (measured?.compared ?? []).map((one) => ({
      reading: one.reading,
      measured: { value: one.measured, unit: units[one.reading] },
      reckoned: { value: one.computed ?? null, unit: units[one.reading] },
      tolerance: { value: one.tolerance, unit: units[one.reading] },
      agrees: one.agrees,
      source: measuredTolerances[one.reading].source,
    })),
    explainedBy: (measured?.slips ?? []).map((one) => ({
      item: one.name,
      factor: { value: one.factor, unit: '' },
      mass: { value: one.massGrams * one.factor, unit: 'g' },
      planned: { value: one.massGrams, unit: 'g' },
    })),
  };
}
