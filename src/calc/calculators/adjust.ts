import { fail, type Parsed } from '../../problem.ts';
import { answered } from '../answered.ts';
import type { BookEntry } from '../book.ts';
import { defineCalculator } from '../define-calculator.ts';
import { numberField, quantityField } from '../fields.ts';
import { namesField } from '../item-fields.ts';
import { numberText } from '../number-text.ts';
import { benchWaterShare, besideAcids, times, waterShare } from '../portions-beside.ts';
import { type PortionItem, portionOptionField, portionsField, portionsOf } from '../portions-field.ts';
import type { Quantity } from '../quantity.ts';
import { type Adjustment, doseForPh } from '../solution/adjust.ts';
import { acidAndSalt, raisePh } from '../solution/adjust-pair.ts';
import { alkalinityPortion } from '../solution/alkalinity.ts';
import { citeAcids } from '../solution/cite-acids.ts';
import { swapAcid } from '../solution/swap-acid.ts';

const roomKelvin = 298.15;
const usualAcid = 'citric acid';
const usualSalt = 'trisodium citrate dihydrate';

/**
 * How much acid and salt a drink needs.
 *
 * Formula   the equilibrium and its titration, solved backwards; equal sourness: acid molecules and H+ as many per litre
 * Input     what else is in the drink; a target pH, a target acidity, or an acid to take another for
 * Output    doses (g/L), ph, titratableAsCitric (g/L), sodium (mg/100 mL), possible
 * Refuses   no target; what the equilibrium refuses. Where no mixture does it: the nearest, and exit code 1
 * Source    the constants of each acid; Da Conceicao Neta and others 2007 for sourness
 * Example   adjust --acidity "4.5 g/L" --ph 3 -> 4.51 g/L citric acid, 1.16 g/L trisodium citrate dihydrate
 */
export const adjust = defineCalculator({
  name: 'adjust',
  version: 1,
  summary: 'how much acid and salt for a pH and an acidity, or one acid for another',
  about:
    'With --acidity and --ph it finds acid and salt for both. With --ph alone, the acid. With --instead-of and --ph it raises the pH with the least change of sourness; with --instead-of and --acid, another acid as sour. With --trial it takes the rest of the drink, without its acids and salts, and the water of the bench.',
  fields: {
    items: portionsField({ help: 'what else is in the drink, such as "100 g/L sucrose"' }),
    acidity: quantityField({
      help: 'titratable acidity wanted, as citric acid, such as "4.5 g/L"',
      accepts: ['mass per volume'],
      placeholder: 'ACIDITY',
    }),
    ph: numberField({ help: 'the pH wanted', placeholder: 'PH' }),
    acid: namesField({ help: `the acid to use; ${usualAcid} if left out` }),
    salt: namesField({ help: `the salt to use; ${usualSalt} if left out` }),
    insteadOf: portionOptionField({ help: 'the acid that is in it now, such as "4.5 g/L citric acid"' }),
    alkalinity: quantityField({
      help: 'of the water, such as "120 mg/L as CaCO3"',
      accepts: ['alkalinity'],
      placeholder: 'ALKALINITY',
    }),
    temperature: quantityField({
      help: 'such as 20 C; 25 C if left out, of a trial that of the bench',
      accepts: ['temperature'],
      placeholder: 'TEMP',
    }),
  },
  readings: {
    doses: {
      label: 'doses',
      columns: { substance: { label: 'put in' }, gramsPerLitre: { label: 'per litre', unit: 'g/L' } },
    },
    ph: { label: 'pH', unit: '' },
    titratableAsCitric: { label: 'titratable acidity as citric acid', unit: 'g/L' },
    sodium: { label: 'sodium per 100 mL', unit: 'mg' },
    possible: { label: 'can be done' },
  },
  examples: [
    { line: 'adjust --acidity "4.5 g/L" --ph 3', says: 'acid and salt for both' },
    {
      line: 'adjust --instead-of "4.5 g/L citric acid" --acid "malic acid"',
      says: 'malic acid as sour as the citric acid',
    },
    {
      line: 'adjust --trial 17 --acidity "4.5 g/L" --ph 3.1',
      says: 'for the sugar and the water of trial 17',
    },
  ],
  takes: ({ mixture, alkalinity, temperature }) => {
    const why = 'it needs a target';
    const { drink } = mixture;
    if (!drink) return { why };
    const water = alkalinity && times(alkalinity, benchWaterShare(drink));
    return {
      why,
      beside: {
        stage: drink.name,
        given: {
          items: besideAcids(drink),
          ...(water && water.inner > 0 ? { alkalinity: water } : {}),
          ...(temperature ? { temperature } : {}),
        },
      },
    };
  },
  work: (given, working) => {
    const adjustment = answered(adjustmentFor(given));
    const { doses, drink } = adjustment.possible ? adjustment : adjustment.nearest;
    working.cite('sourness', 'neta-2007');
    working.cite('activity coefficients', 'davies-1962');
    citeAcids(drink.acids, working);
    const put = doses.map(
      ({ substance, gramsPerLitre }) => `${numberText(gramsPerLitre, 5)} g/L of ${substance}`,
    );
    working.line(
      'acid and salt such that all charges add up to nothing at what is wanted',
      `with ${put.join(' and ')}: pH ${numberText(drink.ph, 4)}, ${numberText(drink.titratableAsCitric, 4)} g/L as citric acid`,
    );
    working.line(
      'sourness = acid molecules with a hydrogen to give + H+',
      `${numberText(drink.sourness * 1000, 4)} mmol/L`,
    );
    working.caution(
      'taste-it',
      'Equal sourness is a published relation, not a tongue: taste it against the control. Sugar, salt and aroma shift it.',
      'neta-2007',
    );
    return {
      ...(adjustment.possible
        ? {}
        : { lead: `No mixture does it: ${adjustment.reason}. This comes nearest.`, attention: true }),
      found: {
        doses: doses.map(({ substance, gramsPerLitre }) => ({ substance, gramsPerLitre })),
        ph: drink.ph,
        titratableAsCitric: drink.titratableAsCitric,
        sodium: drink.sodiumMilligramsPer100Millilitres,
        possible: adjustment.possible,
      },
    };
  },
});

interface Wanted {
  readonly items: readonly PortionItem[];
  readonly acidity: Quantity | undefined;
  readonly ph: number | undefined;
  readonly acid: readonly BookEntry[];
  readonly salt: readonly BookEntry[];
  readonly insteadOf: PortionItem | undefined;
  readonly alkalinity: Quantity | undefined;
  readonly temperature: Quantity | undefined;
}

function adjustmentFor(given: Wanted): Parsed<Adjustment> {
  const { acidity, ph, insteadOf } = given;
  const temperatureKelvin = given.temperature?.inner ?? roomKelvin;
  const dissolved = portionsOf(given.items);
  const hard = given.alkalinity?.inner ?? 0;
  const water = {
    milligramsPerLitreAsCalciumCarbonate: hard,
    waterShare: hard > 0 ? waterShare(dissolved, temperatureKelvin) : 1,
  };
  const base = {
    portions: [...dissolved, ...(hard > 0 ? [alkalinityPortion(water)] : [])],
    temperatureKelvin,
  };
  const acid = nameOf(given.acid, usualAcid, '--acid');
  const salt = nameOf(given.salt, usualSalt, '--salt');
  if (insteadOf) {
    const from = { substance: insteadOf.name, gramsPerLitre: gramsPerLitreOf(insteadOf) };
    if (ph !== undefined)
      return raisePh({ base, acid: from.substance, gramsPerLitre: from.gramsPerLitre, salt, ph });
    if (given.acid.length > 0) return swapAcid({ base, from, to: acid });
    return fail(
      'missing',
      '--instead-of alone does not say what to reach',
      'add --ph 3 to raise the pH, or --acid "malic acid" to take another acid',
    );
  }
  if (ph === undefined)
    return fail(
      'missing',
      '--ph is needed',
      'give --ph 3, with --acidity "4.5 g/L" for acid and salt together',
    );
  if (acidity) return acidAndSalt({ base, acid, salt, ph, titratable: acidity.inner * 1000 });
  return doseForPh({ base, substance: acid, ph });
}

function nameOf(entries: readonly BookEntry[], usual: string, option: string): string {
  const [first, second] = entries;
  if (second) return fail('given-twice', `${option} is given more than once`, 'give it once');
  return first?.name ?? usual;
}

function gramsPerLitreOf({ name, quantity }: PortionItem): number {
  if (quantity?.dimension === 'mass per volume') return quantity.inner * 1000;
  return fail(
    'wrong-kind',
    `${name} is not given in g/L`,
    'give it per litre, such as "4.5 g/L citric acid"',
  );
}
