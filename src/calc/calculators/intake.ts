import { defineCalculator } from '../define-calculator.ts';
import { numberField, quantityField, required } from '../fields.ts';
import { loadedIntake, loadIntake } from '../intake/loaded-intake.ts';
import { itemsField, type NamedItem } from '../item-fields.ts';

/**
 * What servings carry, beside the published acceptable daily intakes.
 *
 * Formula   mg a day = concentration x serving x servings; share = that / (figure x body mass)
 * Input     concentrations (mg/L, ppm) or mg in a serving; serving, servings a day, body mass
 * Output    intakes (a row a figure: mg in a serving and a day, mg/kg, share of the figure), servingVolume (mL), bodyMass (kg)
 * Refuses   no body mass, nothing to reckon
 * Source    with each figure; figures from memory say so
 * Example   intake "180 mg/L polysorbate 80" --servings 2 --body "60 kg" -> 7.9 % of 25 mg/kg a day
 */
export const intake = defineCalculator({
  name: 'intake',
  version: 1,
  summary: 'what servings carry, beside published daily intakes',
  about:
    'Type each substance with its concentration in the drink, or as mg in one serving. An acceptable daily intake is a figure for all food of a day, over a life: one drink neither keeps nor breaks it.',
  loads: loadIntake,
  fields: {
    items: itemsField({
      help: 'what is in it, such as "180 mg/L polysorbate 80"',
      accepts: ['mass per volume', 'share', 'mass'],
      placeholder: 'ITEMS',
      positional: true,
    }),
    serving: quantityField({
      help: 'such as 330 mL; 330 mL if left out',
      accepts: ['volume'],
      placeholder: 'VOLUME',
    }),
    servings: numberField({ help: 'how many a day; one if left out' }),
    body: required(
      quantityField({ help: 'mass of the body, such as 60 kg', accepts: ['mass'], placeholder: 'MASS' }),
    ),
  },
  readings: {
    intakes: {
      label: 'intakes',
      columns: {
        substance: { label: '' },
        serving: { label: 'in a serving', unit: 'mg', digits: 3, as: 'nowhere' },
        day: { label: 'in a day', unit: 'mg', digits: 3 },
        perBodyMass: { label: 'a day', unit: 'mg/kg', digits: 3, as: 'nowhere' },
        by: { label: 'by' },
        published: { label: 'published' },
        figure: { label: 'for this body', unit: 'mg', digits: 3, as: 'nowhere' },
        share: { label: 'share of it', unit: '', as: 'percent' },
        fromMemory: { label: 'from memory', as: 'nowhere' },
      },
    },
    servingVolume: { label: 'serving', unit: 'mL' },
    servings: { label: 'servings a day', unit: '', as: 'count' },
    bodyMass: { label: 'body', unit: 'kg' },
  },
  examples: [
    { line: 'intake "180 mg/L polysorbate 80" --servings 2 --body 60 kg', says: 'two bottles a day' },
    { line: 'intake --trial 17 --body 60 kg', says: 'everything in the drink of a trial' },
  ],
  takes: ({ mixture }) => {
    const { drink } = mixture;
    if (!drink) return { why: 'it has no stage named drink' };
    const items = drink.substances
      .filter(({ role, massGrams }) => massGrams > 0 && !plain.includes(role))
      .map(
        ({ name, entry, gramsPerLitre }): NamedItem => ({
          name,
          entry,
          value: undefined,
          quantity: {
            value: gramsPerLitre * 1000,
            unit: 'mg/L',
            dimension: 'mass per volume',
            inner: gramsPerLitre / 1000,
            written: `${gramsPerLitre * 1000} mg/L`,
          },
        }),
      );
    return [{ stage: drink.name, given: { items } }];
  },
  work: (given, working) => loadedIntake()(given, working),
});

/** Of a trial these are left out: no body counts them by a daily figure. */
const plain: readonly string[] = ['water', 'sugar', 'salt', 'oil'];
