import { fail } from '../../problem.ts';
import { citricAcidEquivalents, citricAcidMolarMass } from '../../reference/citric-acid.ts';
import type { BookEntry } from '../book.ts';
import { defineCalculator } from '../define-calculator.ts';
import { quantityField, throwField } from '../fields.ts';
import { itemsField, type NamedItem } from '../item-fields.ts';
import { trimmedNumber } from '../number-text.ts';
import type { Quantity } from '../quantity.ts';
import type { Throw } from '../ratio.ts';
import { throwInWords } from '../ratio-words.ts';
import { grams, litres } from '../typed-quantity.ts';
import type { Working } from '../working.ts';

/**
 * Acid per litre of finished drink, and the same as anhydrous citric acid by equivalents.
 *
 * Formula   c = m / V;  n = c / M;  as citric = sum(n z) M_citric / 3
 * Input     acids as masses, or a target concentration; the volume of drink, or a syrup with its throw
 * Output    acids (g, g/L, mmol/L), totalGramsPerLitre, titratableAsCitric (g/L), drinkVolume (L)
 * Refuses   no volume of drink; an acid without molar mass or equivalents
 * Source    equivalents by definition; molar masses from each acid's record
 * Example   acid --acid "40 g citric acid" --drink 8 L -> totalGramsPerLitre 5
 */
export const acid = defineCalculator({
  name: 'acid',
  version: 1,
  summary: 'acid per litre of finished drink, and as citric acid',
  about:
    'Acid counts in grams per litre of the finished drink, not of the syrup. Give the acids with the volume of drink, or of syrup and its throw; or a target, to get the mass to weigh.',
  fields: {
    acid: itemsField({
      help: 'an acid as weighed, such as "18 g citric acid"; may be given several times',
      accepts: ['mass'],
    }),
    target: itemsField({
      help: 'an acid as wanted in the drink, such as "4.5 g/L citric acid"',
      accepts: ['mass per volume'],
    }),
    drink: quantityField({ help: 'volume of finished drink', accepts: ['volume'], placeholder: 'VOLUME' }),
    syrup: quantityField({
      help: 'volume of syrup that holds the acid; needs --throw',
      accepts: ['volume'],
      placeholder: 'VOLUME',
    }),
    throw: throwField({ help: '1+4: one part of syrup and four of water make five of drink' }),
  },
  readings: {
    acids: {
      label: 'acids',
      columns: {
        acid: { label: 'acid' },
        mass: { label: 'mass', unit: 'g' },
        gramsPerLitre: { label: 'in the drink', unit: 'g/L' },
        millimolesPerLitre: { label: 'in moles', unit: 'mmol/L' },
      },
    },
    totalGramsPerLitre: { label: 'all acids as weighed', unit: 'g/L' },
    titratableAsCitric: { label: 'as anhydrous citric acid', unit: 'g/L' },
    drinkVolume: { label: 'finished drink', unit: 'L' },
  },
  examples: [
    { line: 'acid --acid "40 g citric acid" --drink 8 L', says: 'what a weighed acid comes to in the drink' },
    {
      line: 'acid --target "4.5 g/L citric acid" --syrup 0.8 L --throw 1+4',
      says: 'what to weigh into a syrup',
    },
  ],
  instead: { target: ['acid'], syrup: ['drink'] },
  takes: ({ mixture }) => {
    const { drink } = mixture;
    if (!drink) return { why: 'it has no stage named drink' };
    const acids = drink.substances
      .filter((one) => one.role === 'acid')
      .map((one) => ({ name: one.name, entry: one.entry, quantity: grams(one.massGrams), value: undefined }));
    const volume = litres(drink.volumeMillilitres / 1000);
    if (acids.length === 0)
      return {
        why: 'there is no acid in the drink',
        beside: { stage: drink.name, given: { drink: volume } },
      };
    return [{ stage: drink.name, given: { acid: acids, drink: volume } }];
  },
  work: (given, working) => {
    const volumeLitres = drinkVolumeLitres(given, working);
    const weighed = given.acid.map((item) => ({ item, massGrams: item.quantity.inner }));
    const wanted = given.target.map((item) => ({
      item,
      massGrams: item.quantity.inner * 1000 * volumeLitres,
    }));
    const all = [...weighed, ...wanted];
    if (all.length === 0)
      fail('missing', 'no acid is given', 'give --acid "18 g citric acid" or --target "4.5 g/L citric acid"');
    const citric = {
      molarMass: working.constant('molar mass of anhydrous citric acid', citricAcidMolarMass),
      equivalents: working.constant('acid hydrogens of citric acid', citricAcidEquivalents),
    };
    const acids = all.map(({ item, massGrams }) => {
      const { molarMass, equivalents } = acidFigures(item, working);
      const gramsPerLitre = massGrams / volumeLitres;
      working.line(
        `${item.name} = mass / volume of drink`,
        `${trimmedNumber(massGrams)} g / ${trimmedNumber(volumeLitres)} L = ${trimmedNumber(gramsPerLitre)} g/L`,
      );
      return { item, massGrams, gramsPerLitre, millimoles: (1000 * gramsPerLitre) / molarMass, equivalents };
    });
    const milliequivalents = acids.reduce((sum, one) => sum + one.millimoles * one.equivalents, 0);
    const asCitric = (milliequivalents / 1000 / citric.equivalents) * citric.molarMass;
    working.line(
      'as citric = sum of moles x acid hydrogens / 3 x molar mass of citric acid',
      `${trimmedNumber(milliequivalents)} mmol/L / 3 x ${citric.molarMass} g/mol = ${trimmedNumber(asCitric)} g/L`,
    );
    return {
      ...(given.throw ? { lead: throwInWords(given.throw) } : {}),
      found: {
        acids: acids.map((one) => ({
          acid: one.item.name,
          mass: one.massGrams,
          gramsPerLitre: one.gramsPerLitre,
          millimolesPerLitre: one.millimoles,
        })),
        totalGramsPerLitre: acids.reduce((sum, one) => sum + one.gramsPerLitre, 0),
        titratableAsCitric: asCitric,
        drinkVolume: volumeLitres,
      },
    };
  },
});

interface DrinkGiven {
  readonly drink: Quantity | undefined;
  readonly syrup: Quantity | undefined;
  readonly throw: Throw | undefined;
}

/** The drink itself, or what the syrup makes at its throw. */
export function drinkVolumeLitres(given: DrinkGiven, working: Working): number {
  const { drink, syrup } = given;
  if (drink && syrup) fail('given-twice', 'both --drink and --syrup are given', 'give one of them');
  if (drink) return positiveLitres(drink);
  if (!syrup)
    return fail('missing', 'no volume of drink is given', 'give --drink 4 L, or --syrup 0.8 L --throw 1+4');
  if (!given.throw)
    return fail('missing', '--syrup needs --throw', 'give --throw 1+4: one part of syrup and four of water');
  const { syrupParts, waterParts } = given.throw;
  const times = (syrupParts + waterParts) / syrupParts;
  const volume = positiveLitres(syrup) * times;
  working.line(
    'drink = syrup x (parts of syrup + parts of water) / parts of syrup',
    `${syrup.written} x ${trimmedNumber(times)} = ${trimmedNumber(volume)} L`,
  );
  return volume;
}

function positiveLitres(volume: Quantity): number {
  if (volume.inner <= 0)
    fail('not-positive', `"${volume.written}" is no drink`, 'give a volume above zero, such as 4 L');
  return volume.inner / 1000;
}

function acidFigures(
  item: NamedItem,
  working: Working,
): { readonly molarMass: number; readonly equivalents: number } {
  const entry: BookEntry | undefined = item.entry;
  if (!entry)
    return fail(
      'unknown-ingredient',
      `"${item.name}" is not known`,
      'acid needs its molar mass: add it to ingredients.yaml',
    );
  const molarMass = working.figure(entry, 'molar mass');
  const equivalents = working.figure(entry, 'acid equivalents');
  if (molarMass !== undefined && equivalents !== undefined) return { molarMass, equivalents };
  return fail(
    'no-figure',
    `${entry.name} has no ${molarMass === undefined ? 'molar mass' : 'acid equivalents'}`,
    `name an acid, or add the figure under ${entry.name} in ingredients.yaml`,
  );
}
