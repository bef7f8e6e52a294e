import { answered } from '../answered.ts';
import { defineCalculator } from '../define-calculator.ts';
import { choiceField, quantityField, required } from '../fields.ts';
import { trimmedNumber } from '../number-text.ts';
import { acidFromTitration } from '../solution/titration.ts';

const acids = [
  'citric acid',
  'malic acid',
  'tartaric acid',
  'lactic acid',
  'phosphoric acid',
  'acetic acid',
] as const;

/**
 * From the burette to grams of acid per litre.
 *
 * Formula   g/L = base mol/L x used / sample x M / acid hydrogens
 * Input     strength of the base, volume used, volume of the sample, the acid to give it in
 * Output    gramsPerLitre (g/L), equivalents (mmol/L)
 * Refuses   a sample of nothing
 * Source    arithmetic
 * Example   titrate --base "0.1 mol/L" --used 7.80 mL --sample 10 mL -> 4.995 g/L
 */
export const titrate = defineCalculator({
  name: 'titrate',
  version: 1,
  summary: 'acid per litre from a titration',
  about: 'Shake the CO2 out of the sample first. Titrate with sodium hydroxide to pH 8.1 or 8.2.',
  fields: {
    base: required(
      quantityField({
        help: 'strength of the base, such as "0.1 mol/L"',
        accepts: ['moles per volume'],
        placeholder: 'STRENGTH',
      }),
    ),
    used: required(
      quantityField({ help: 'base used, such as 7.80 mL', accepts: ['volume'], placeholder: 'VOLUME' }),
    ),
    sample: required(
      quantityField({ help: 'sample titrated, such as 10 mL', accepts: ['volume'], placeholder: 'VOLUME' }),
    ),
    as: choiceField({ help: 'the acid to give it in; citric acid if left out', choices: acids }),
  },
  readings: {
    gramsPerLitre: { label: 'titratable acidity', unit: 'g/L' },
    equivalents: { label: 'acid hydrogens', unit: 'mmol/L' },
  },
  examples: [
    { line: 'titrate --base "0.1 mol/L" --used 7.80 mL --sample 10 mL', says: 'as citric acid' },
    {
      line: 'titrate --base "0.1 mol/L" --used 7.80 mL --sample 10 mL --trial 17 --record',
      says: 'written into trial 17, beside what is reckoned for it',
    },
  ],
  takes: ({ mixture }) => ({
    why: 'it works on what the burette says',
    beside: { stage: mixture.drink?.name ?? mixture.stages.at(-1)?.name ?? '', given: {} },
  }),
  work: (given, working) => {
    const acid = given.as ?? 'citric acid';
    const baseMolesPerLitre = given.base.inner * 1000;
    const found = answered(
      acidFromTitration({
        baseMolesPerLitre,
        usedMillilitres: given.used.inner,
        sampleMillilitres: given.sample.inner,
        acid,
      }),
    );
    working.line(
      'acid hydrogens = base x used / sample',
      `${trimmedNumber(baseMolesPerLitre)} mol/L x ${given.used.written} / ${given.sample.written} = ${trimmedNumber(found.equivalentsPerLitre * 1000)} mmol/L`,
    );
    working.line(
      'acid = acid hydrogens / those of one molecule x molar mass',
      `${trimmedNumber(found.equivalentsPerLitre * 1000)} mmol/L as ${acid} = ${trimmedNumber(found.gramsPerLitre)} g/L`,
    );
    working.cite('molar masses', 'iupac-atomic-weights');
    working.caution(
      'degas',
      'CO2 counts as acid: shake or warm it out of the sample before it is titrated.',
      'common practice, no source',
    );
    working.caution(
      'lye',
      'Sodium hydroxide burns skin and eyes: goggles and gloves, and add it to water, never water to it.',
      'common practice, no source',
    );
    return { found: { gramsPerLitre: found.gramsPerLitre, equivalents: found.equivalentsPerLitre * 1000 } };
  },
});
