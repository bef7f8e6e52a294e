import { fail } from '../../problem.ts';
import { answered } from '../answered.ts';
import { defineCalculator } from '../define-calculator.ts';
import { choiceField, numberField, quantityField, throwField } from '../fields.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Quantity } from '../quantity.ts';
import type { Throw } from '../ratio.ts';
import { type Sugar, type SugarMeasure, type SugarSolution, sugarSolution } from '../solution/sugar.ts';
import { sucroseSolubilityAt, sucroseViscosityAt } from '../solution/sugar-limits.ts';
import { drinkFromThrow } from '../solution/syrup.ts';
import { portionsIn } from '../solution-portions.ts';
import type { Working } from '../working.ts';

const tableKelvin = 293.15;
const sugars: readonly Sugar[] = ['sucrose', 'glucose', 'fructose', 'invert sugar'];

/**
 * Brix, density, grams per litre and refractive index of a sugar solution, each from any other.
 *
 * Formula   ICUMSA density polynomial; g/L = 10 Brix x density; refractive index by ICUMSA
 * Input     one of brix, density, grams per litre, refractive index; temperature; the sugar
 * Output    brix (g per 100 g), density (g/mL), sugarGramsPerLitre, refractiveIndex; viscosity of sucrose (mPa s), the drink
 *           at a throw, the Brix-acid ratio
 * Refuses   none or several of the four; a temperature or strength outside the source
 * Source    ICUMSA SPS-4 (density), SPS-3 (refractive index)
 * Example   brix --brix 65 --temperature 20 C -> density 1.3163
 */
export const brix = defineCalculator({
  name: 'brix',
  version: 1,
  summary: 'Brix, density, sugar per litre and refractive index from each other',
  fields: {
    brix: numberField({ help: 'g of sugar in 100 g', placeholder: 'BRIX' }),
    density: quantityField({
      help: 'such as "1.04 g/mL"',
      accepts: ['mass per volume'],
      usualUnit: 'g/mL',
      placeholder: 'DENSITY',
    }),
    gramsPerLitre: quantityField({
      help: 'sugar per litre, such as "100 g/L"',
      accepts: ['mass per volume'],
      placeholder: 'CONCENTRATION',
    }),
    refractiveIndex: numberField({ help: 'at 589 nm, such as 1.3478', placeholder: 'INDEX' }),
    temperature: quantityField({
      help: 'such as 25 C; 20 C if left out',
      accepts: ['temperature'],
      placeholder: 'TEMP',
    }),
    sugar: choiceField({ help: 'sucrose if left out', choices: sugars }),
    throw: throwField({ help: 'what this makes as a syrup: 1+4 is one part and four of water' }),
    acidity: quantityField({
      help: 'as citric acid, for the Brix-acid ratio, such as "4.5 g/L"',
      accepts: ['mass per volume'],
      placeholder: 'ACIDITY',
    }),
  },
  readings: {
    brix: { label: 'Brix', unit: '' },
    density: { label: 'density', unit: 'g/mL', digits: 6 },
    sugarGramsPerLitre: { label: 'sugar', unit: 'g/L' },
    refractiveIndex: { label: 'refractive index', unit: '', digits: 6 },
    viscosity: { label: 'viscosity', unit: 'mPa s', digits: 3 },
    brixAcidRatio: { label: 'Brix-acid ratio', unit: '' },
    drinkBrix: { label: 'Brix of the drink at that throw', unit: '' },
    drinkGramsPerLitre: { label: 'sugar in it', unit: 'g/L' },
  },
  instead: { density: ['brix'], gramsPerLitre: ['brix'], refractiveIndex: ['brix'] },
  examples: [
    { line: 'brix --brix 65 --temperature 20 C', says: 'a syrup' },
    { line: 'brix --density "1.04 g/mL"', says: 'from a hydrometer' },
    { line: 'brix --brix 45 --throw 1+4', says: 'the drink that a syrup makes' },
  ],
  takes: ({ mixture }) => {
    const { drink } = mixture;
    if (!drink) return { why: 'it has no stage named drink' };
    const sugar = portionsIn(drink).filter(({ entry }) => entry?.record.role === 'sugar');
    const fraction =
      sugar.reduce((sum, one) => sum + (one.quantity?.inner ?? 0), 0) / drink.densityGramsPerMillilitre;
    if (fraction <= 0) return { why: 'there is no sugar in the drink' };
    return [{ stage: drink.name, given: { brix: fraction * 100 } }];
  },
  work: (given, working) => {
    const temperatureKelvin = given.temperature?.inner ?? tableKelvin;
    const sugar = given.sugar ?? 'sucrose';
    const solution = answered(sugarSolution({ sugar, measure: measureOf(given), temperatureKelvin }));
    working.cite('density of sugar solutions', 'icumsa-sucrose-density');
    if (sugar !== 'sucrose') working.cite('density and index of other sugars', 'crc-102');
    working.line(
      'density = that of water + a polynomial in the sugar by mass and the temperature',
      `${trimmedNumber(solution.brix / 100, 5)} of sugar, ${trimmedNumber(temperatureKelvin - 273.15, 4)} C: ${numberText(solution.density, 6)} g/mL`,
    );
    working.line(
      'sugar per litre = 10 x Brix x density',
      `10 x ${trimmedNumber(solution.brix)} x ${trimmedNumber(solution.density)} g/mL = ${numberText(solution.sugarGramsPerLitre, 5)} g/L`,
    );
    const thrown = given.throw && drinkOf(solution.brix, given.throw, { sugar, temperatureKelvin });
    if (sugar === 'sucrose') saturated(solution.brix, temperatureKelvin, working);
    return {
      found: {
        brix: solution.brix,
        density: solution.density,
        sugarGramsPerLitre: solution.sugarGramsPerLitre,
        refractiveIndex: solution.refractiveIndex ?? null,
        viscosity: viscosityOf(sugar, solution.brix, temperatureKelvin),
        brixAcidRatio: ratioOf(solution, given.acidity),
        drinkBrix: thrown?.brix ?? null,
        drinkGramsPerLitre: thrown?.sugarGramsPerLitre ?? null,
      },
    };
  },
});

/** Only that of sucrose is known. */
function viscosityOf(sugar: Sugar, brix: number, temperatureKelvin: number): number | null {
  const viscosity = sucroseViscosityAt({ massFraction: brix / 100, temperatureKelvin });
  return sugar === 'sucrose' && viscosity.ok ? viscosity.value : null;
}

/** Brix over % of acid by mass. */
function ratioOf({ brix, density }: SugarSolution, acidity: Quantity | undefined): number | null {
  if (!acidity || acidity.inner <= 0) return null;
  return brix / ((acidity.inner / density) * 100);
}

const drinkOf = (
  syrupBrix: number,
  { waterParts, syrupParts }: Throw,
  around: { readonly sugar: Sugar; readonly temperatureKelvin: number },
): SugarSolution => answered(drinkFromThrow({ ...around, syrupBrix, waterParts: waterParts / syrupParts }));

function saturated(brix: number, temperatureKelvin: number, working: Working): void {
  const most = sucroseSolubilityAt({ temperatureKelvin });
  if (!most.ok || brix <= most.value * 100) return;
  working.caution(
    'falls-out',
    `No more than ${numberText(most.value * 100, 3)} Brix of sucrose stays dissolved at ${trimmedNumber(temperatureKelvin - 273.15, 4)} C: the rest crystallises in time.`,
    'crc-sucrose-solubility',
  );
}

interface Measures {
  readonly brix: number | undefined;
  readonly density: Quantity | undefined;
  readonly gramsPerLitre: Quantity | undefined;
  readonly refractiveIndex: number | undefined;
}

function measureOf({ brix, density, gramsPerLitre, refractiveIndex }: Measures): SugarMeasure {
  const measures: SugarMeasure[] = [
    ...(brix === undefined ? [] : [{ kind: 'brix', value: brix } as const]),
    ...(density ? [{ kind: 'density', value: density.inner } as const] : []),
    ...(gramsPerLitre ? [{ kind: 'grams per litre', value: gramsPerLitre.inner * 1000 } as const] : []),
    ...(refractiveIndex === undefined ? [] : [{ kind: 'refractive index', value: refractiveIndex } as const]),
  ];
  const [first, second] = measures;
  if (first && !second) return first;
  return fail(
    first ? 'given-twice' : 'missing',
    first ? `${measures.length} measures are given` : 'no measure is given',
    'give one of --brix, --density, --grams-per-litre, --refractive-index',
  );
}
