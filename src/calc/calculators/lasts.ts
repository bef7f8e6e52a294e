import type { Given } from '../calculator.ts';
import { defineCalculator } from '../define-calculator.ts';
import { numberField, quantityField } from '../fields.ts';
import { conditionsField, planField, stagesField } from '../keeping/conditions-field.ts';
import { ownLossesField } from '../keeping/own-data.ts';
import { substanceField } from '../keeping/substance-field.ts';
import { late } from '../late.ts';

const keeping = late(async () => import('../keeping/work-lasts.ts'));

export const lastsFields = {
  substance: substanceField({ help: 'what is lost: an ester, sucrose, a polysorbate' }),
  ph: numberField({ help: 'of the drink or syrup, at its temperature', placeholder: 'PH' }),
  temperature: quantityField({
    help: 'such as 4 C; 25 C if left out',
    accepts: ['temperature'],
    placeholder: 'TEMP',
  }),
  against: conditionsField({ help: 'other conditions to compare with, such as "ph 2.7, 22 C"' }),
  after: quantityField({
    help: 'what is left after so long, such as 90 d',
    accepts: ['time'],
    placeholder: 'TIME',
  }),
  loss: quantityField({
    help: 'time until so much is lost; 10 % if left out',
    accepts: ['share'],
    placeholder: 'SHARE',
  }),
  plan: planField({ help: 'storage, such as "4 wk at 22 C, 26 wk at 4 C"' }),
  stage: stagesField({ help: 'another stage beside it, such as "syrup: ph 1.9, 22 C"' }),
  sugar: quantityField({
    help: 'sugar by mass, for its own inversion; 10 % if left out',
    accepts: ['share'],
    placeholder: 'SHARE',
  }),
  measured: ownLossesField({
    help: 'your own figure, "82 % left after 30 d at 40 C"; two at different temperatures tell all',
  }),
  activation: numberField({
    help: 'energy of activation in kJ/mol, with one measurement of your own',
    placeholder: 'KJ',
  }),
};

export type LastsFields = typeof lastsFields;
export type LastsGiven = Given<LastsFields>;

/**
 * How long esters, sugar and emulsifier last, and how much slower they go under other conditions.
 *
 * Formula   first order; k = kA aH + kN + kB aOH with Arrhenius; sucrose log10 k = 16.91 + log10(rho - c) - 5670/T - pH
 * Input     a substance; pH and temperature; other conditions or stages; a time, a loss, a plan of storage; own figures
 * Output    halfLifeDays, remaining, rateRatio (rate here over rate against), daysToLoss; a row a stage and a leg
 * Refuses   a substance without constants, by name; a pH or temperature outside them
 * Source    Mabey and Mill 1978; Taft; Church, Pankow and Tratnyek 1999; Vukov 1965; Bates and others 1973
 * Example   lasts "ethyl acetate" --ph 3 -> halfLifeDays 72.9
 */
export const lasts = defineCalculator({
  name: 'lasts',
  version: 1,
  summary: 'how long esters, sugar and emulsifier last at a pH and a temperature',
  about:
    'The comparison of two conditions is surer than either. Esters inside droplets are shielded, so the loss is at most this. An acid syrup is harder on esters than its drink; a syrup without acid, or cold, is what keeps. What no source gives a constant for (aromatic esters, citral, limonene) is refused by name: give your own figure with --measured.',
  loads: keeping.load,
  fields: lastsFields,
  readings: {
    substance: { label: 'substance' },
    halfLifeDays: { label: 'half is lost in', unit: 'd', digits: 3 },
    halfLifeLow: { label: 'half is lost, soonest', unit: 'd', digits: 2 },
    halfLifeHigh: { label: 'half is lost, latest', unit: 'd', digits: 2 },
    lossShare: { label: 'loss asked about', unit: '', as: 'percent' },
    daysToLoss: { label: 'so much is lost in', unit: 'd', digits: 3 },
    daysToLossLow: { label: 'so much lost, soonest', unit: 'd', digits: 2 },
    daysToLossHigh: { label: 'so much lost, latest', unit: 'd', digits: 2 },
    remaining: { label: 'left', unit: '', as: 'percent' },
    remainingLow: { label: 'left, low end', unit: '', as: 'percent' },
    remainingHigh: { label: 'left, high end', unit: '', as: 'percent' },
    rateRatio: { label: 'times as fast here as there', unit: '', digits: 3 },
    rateRatioLow: { label: 'times as fast, low end', unit: '', digits: 2 },
    rateRatioHigh: { label: 'times as fast, high end', unit: '', digits: 2 },
    activation: { label: 'energy of activation', unit: 'kJ/mol', digits: 3 },
    legs: {
      label: 'storage',
      columns: {
        leg: { label: 'storage' },
        lost: { label: 'lost in it', unit: '', as: 'percent' },
        remaining: { label: 'left after it', unit: '', as: 'percent' },
      },
    },
    stages: {
      label: 'stages',
      columns: {
        stage: { label: 'stage' },
        ph: { label: 'pH', unit: '', digits: 3 },
        temperature: { label: 'at', unit: 'C', digits: 2 },
        halfLifeDays: { label: 'half is lost in', unit: 'd', digits: 3 },
        remaining: { label: 'left', unit: '', as: 'percent' },
        rateRatio: { label: 'times as fast', unit: '', digits: 2 },
        note: { label: '' },
      },
    },
  },
  examples: [
    {
      line: 'lasts "ethyl butyrate" --ph 3.1 --temperature 4 C --against "ph 2.7, 22 C"',
      says: 'what a higher pH and a fridge give',
    },
    {
      line: 'lasts sucrose --ph 2.8 --temperature 22 C --after 90 d',
      says: 'how much sugar is left after three months',
    },
    {
      line: 'lasts "methyl anthranilate" --measured "95 % left after 30 d at 40 C" --activation 66 --temperature 22 C',
      says: 'a figure of your own, carried to the shelf',
    },
  ],
  takes: (picture) => keeping.get().lastsOfTrial(picture),
  work: (given, working) => keeping.get().workLasts(given, working),
});
