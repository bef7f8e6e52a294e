import { fail } from '../../problem.ts';
import { titrationAcids } from '../../reference/solution/titration.ts';
import { answered } from '../answered.ts';
import { defineCalculator } from '../define-calculator.ts';
import { choiceField, numberField, quantityField } from '../fields.ts';
import { numberText } from '../number-text.ts';
import { benchWaterShare, times, waterShare } from '../portions-beside.ts';
import { portionsField, portionsOf } from '../portions-field.ts';
import { acidEaten, alkalinityPortion } from '../solution/alkalinity.ts';
import { citeAcids } from '../solution/cite-acids.ts';
import { drinkAcidity } from '../solution/drink.ts';
import { undissolved } from '../solution/undissolved.ts';
import { portionsIn } from '../solution-portions.ts';

const roomKelvin = 298.15;

/** mol of acid per kg of water: the malic acid series is met to 10 %; at 50 % it is 0.4 of pH off. */
const mostCompared = 1;

/**
 * pH of a solution as a meter reads it, its ionic strength, and its titratable acidity.
 *
 * Formula   charge balance over all weak acids and bases, activity coefficients by Davies
 * Input     concentrations (mol/kg of water, mol/L, g/L, share by mass), temperature, pressure of CO2, alkalinity of the water
 * Output    ph, ionicStrength (mol/kg), titratableAsCitric (g/L, to pH 8.2)
 * Refuses   a substance without acid data, a temperature outside the constants, more than dissolves
 * Source    the constants of each acid; Davies 1962
 * Example   ph "0.05 mol/kg potassium dihydrogen citrate" -> 3.78 at 25 C
 */
export const ph = defineCalculator({
  name: 'ph',
  version: 1,
  summary: 'pH and titratable acidity of a solution',
  about:
    'Type each substance with its concentration: g/L, mol/L, mol/kg (of water), mg/L or % by mass. What is not said is pure water at 25 C. In real drinks and juices allow 0.2 of pH.',
  fields: {
    items: portionsField({ help: 'what is dissolved, such as "4.5 g/L citric acid"' }),
    temperature: quantityField({
      help: 'such as 20 C; 25 C if left out, of a trial that of the bench',
      accepts: ['temperature'],
      placeholder: 'TEMP',
    }),
    co2: quantityField({
      help: 'pressure of CO2 over it, such as "1 atm"',
      accepts: ['pressure'],
      placeholder: 'PRESSURE',
    }),
    as: choiceField({
      help: 'the acid to give titratable acidity in, beside citric acid',
      choices: Object.keys(titrationAcids),
    }),
    endPoint: numberField({ help: 'of the titration, 8.1 or 8.2; 8.2 if left out', placeholder: 'PH' }),
    alkalinity: quantityField({
      help: 'of the water, such as "120 mg/L as CaCO3"',
      accepts: ['alkalinity'],
      placeholder: 'ALKALINITY',
    }),
  },
  readings: {
    ph: { label: 'pH', unit: '' },
    ionicStrength: { label: 'ionic strength', unit: 'mol/kg' },
    titratableAsCitric: { label: 'titratable acidity as citric acid', unit: 'g/L' },
    titratable: { label: 'the same in the acid named', unit: 'g/L' },
  },
  examples: [
    {
      line: 'ph "4.5 g/L citric acid" "0.6 g/L trisodium citrate dihydrate" "100 g/L sucrose"',
      says: 'a sweet, buffered drink',
    },
    { line: 'ph water --co2 "1 atm"', says: 'carbonated water' },
  ],
  takes: ({ mixture, alkalinity, temperature }) => {
    const { drink } = mixture;
    if (!drink) return { why: 'it has no stage named drink' };
    const items = portionsIn(drink);
    const own = alkalinity && times(alkalinity, benchWaterShare(drink));
    const water = {
      ...(own && own.inner > 0 ? { alkalinity: own } : {}),
      ...(temperature ? { temperature } : {}),
    };
    if (items.length === 0)
      return { why: 'nothing in the drink moves its pH', beside: { stage: drink.name, given: water } };
    return [{ stage: drink.name, given: { items, ...water } }];
  },
  work: (given, working) => {
    const temperatureKelvin = given.temperature?.inner ?? roomKelvin;
    const hard = given.alkalinity?.inner ?? 0;
    if (given.items.length === 0 && !given.co2 && hard === 0)
      fail(
        'missing',
        'nothing is dissolved',
        'type such as "4.5 g/L citric acid"; or water, for water alone',
      );
    const dissolved = portionsOf(given.items);
    const water = {
      milligramsPerLitreAsCalciumCarbonate: hard,
      waterShare: hard > 0 ? waterShare(dissolved, temperatureKelvin) : 1,
    };
    const still = {
      portions: [...dissolved, ...(hard > 0 ? [alkalinityPortion(water)] : [])],
      temperatureKelvin,
      ...(given.endPoint === undefined ? {} : { endPoint: given.endPoint }),
      ...(given.as === undefined ? {} : { asAcid: given.as }),
    };
    const carbonated = given.co2 ? { ...still, partialPressureCarbonDioxidePascal: given.co2.inner } : still;
    const drink = answered(drinkAcidity(carbonated));
    const { titratableAsCitric } = drink;
    citeAcids(drink.acids, working);
    working.cite('activity coefficients', 'davies-1962');
    working.line(
      'pH = -log10 of the activity of H+, where all charges add up to nothing',
      `-log10(${drink.hydrogenMolality.toExponential(4)} mol/kg x activity coefficient) = ${numberText(drink.ph, 5)}`,
    );
    working.line(
      'ionic strength = sum of molality x charge squared / 2',
      `${numberText(drink.ionicStrength, 5)} mol/kg`,
    );
    working.line(
      `titratable acidity: base up to pH ${given.endPoint ?? 8.2}, as citric acid / 3`,
      `${numberText(titratableAsCitric, 5)} g/L`,
    );
    if (hard > 0) {
      const eaten = acidEaten(water);
      working.caution(
        'alkalinity',
        `The alkalinity of the water takes ${numberText(eaten, 2)} g/L of citric acid.`,
        'arithmetic',
      );
    }
    for (const { text, source } of undissolved(drink, temperatureKelvin))
      working.caution('falls-out', text, source);
    const strength = drink.acids.reduce(
      (sum, { acid, molality }) => (acid === 'carbonic' ? sum : sum + molality),
      0,
    );
    if (strength > mostCompared)
      working.caution(
        'beyond-tables',
        `${numberText(strength, 2)} mol/kg of acid is stronger than what this was compared with (malic acid to 10 %): it may stand tenths of pH too high, and perhaps not all dissolves.`,
        'food-additives-data-book',
      );
    working.caution(
      'ph-accuracy',
      'Computed for the substances named. A real drink or juice has buffers of its own: allow 0.2 of pH, and measure before you rely on it. What keeps a drink needs a validated process, not a number.',
      'common practice, no source',
    );
    return {
      found: {
        ph: drink.ph,
        ionicStrength: drink.ionicStrength,
        titratableAsCitric,
        titratable: given.as === undefined ? null : drink.titratable,
      },
    };
  },
});
