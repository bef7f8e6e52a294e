import type { Given } from '../calculator.ts';
import { defineCalculator } from '../define-calculator.ts';
import { numberField, quantityField, ratioField } from '../fields.ts';
import { itemsField, namesField } from '../item-fields.ts';
import { late } from '../late.ts';

const coating = late(async () => import('../coating/work-coat.ts'));

export const coatFields = {
  oil: itemsField({
    help: 'the oil, such as "2 g sweet orange oil", or "4 % sweet orange oil" of the batch',
    accepts: ['mass', 'volume', 'share'],
    placeholder: 'OIL',
    positional: true,
  }),
  droplet: quantityField({
    help: 'diameter to cover, such as 100 nm',
    accepts: ['length'],
    placeholder: 'SIZE',
  }),
  batch: quantityField({ help: 'of emulsion, such as 50 g', accepts: ['mass'], placeholder: 'MASS' }),
  ratio: ratioField({ help: 'oil to emulsifier as it is meant, such as 1:3', placeholder: 'OIL:EMULSIFIER' }),
  emulsifier: namesField({ help: 'polysorbate 80 if left out' }),
  load: numberField({ help: 'surface load in mg/m2; 2 if left out', placeholder: 'LOAD' }),
  oilDensity: quantityField({
    help: 'of the oil, where none is known',
    accepts: ['mass per volume'],
    placeholder: 'DENSITY',
  }),
};

export type CoatFields = typeof coatFields;
export type CoatGiven = Given<CoatFields>;

/**
 * The least emulsifier that covers droplets of a size, and what a ratio makes of an oil.
 *
 * Formula   m = 6 Gamma V_oil / d; swollen micelle d = 2 (3 (v_tail + n v_oil)/a + shell); map by emulsifier per oil
 * Input     oil (g, mL or share of the batch), droplet size, batch, ratio oil : emulsifier
 * Output    emulsifierMass (g), fraction (of the batch); with a ratio the map, the droplet estimate and what it covers (nm)
 * Refuses   no oil; an oil without density; a droplet of nothing or above 1 mm; no droplet and no ratio
 * Source    McClements, Food Emulsions; Tanford 1980; Rao and McClements 2011
 * Example   coat "4 % sweet orange oil" --batch 50 g --droplet 100 nm -> emulsifierMass 0.285
 */
export const coat = defineCalculator({
  name: 'coat',
  version: 1,
  summary: 'the least emulsifier for a droplet size, and what a ratio makes',
  about:
    'Enough to cover is needed and is not enough alone: micelles take emulsifier too. The map is a first guess for the ladder, found for lemon oil and polysorbate 80 with heat; which size a machine or a stirrer makes is not said, since the same way of making gave sizes four to six times apart between laboratories.',
  loads: coating.load,
  fields: coatFields,
  readings: {
    emulsifierMass: { label: 'least emulsifier', unit: 'g', digits: 3 },
    emulsifierLow: { label: 'emulsifier, low end', unit: 'g', digits: 2 },
    emulsifierHigh: { label: 'emulsifier, high end', unit: 'g', digits: 2 },
    fraction: { label: 'of the emulsion', unit: '', as: 'percent' },
    emulsifierPerOil: { label: 'emulsifier per oil', unit: '', digits: 3 },
    smallestCovered: { label: 'smallest droplet it covers', unit: 'nm', digits: 2 },
    map: { label: 'published map' },
    dropletEstimate: { label: 'droplet, all oil in micelles', unit: 'nm', digits: 2 },
    dropletLow: { label: 'droplet, low end', unit: 'nm', digits: 2 },
    dropletHigh: { label: 'droplet, high end', unit: 'nm', digits: 2 },
  },
  examples: [
    {
      line: 'coat "4 % sweet orange oil" --batch 50 g --droplet 100 nm',
      says: 'the least that covers 100 nm droplets',
    },
    { line: 'coat "2 g sweet orange oil" --ratio 1:3', says: 'what one part to three is likely to make' },
  ],
  takes: (picture) => coating.get().coatOfTrial(picture),
  work: (given, working) => coating.get().workCoat(given, working),
});
