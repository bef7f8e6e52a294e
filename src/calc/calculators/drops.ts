import { fail } from '../../problem.ts';
import { dropperError, fewestDrops, mostDrops } from '../../reference/drops.ts';
import type { TrialPicture } from '../calculator.ts';
import { defineCalculator } from '../define-calculator.ts';
import { numberField, quantityField, required } from '../fields.ts';
import type { ResolvedItem, ResolvedStage } from '../mixture/picture.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Quantity } from '../quantity.ts';
import { roundStrengthFor } from '../round-strength.ts';
import { slipsOfDrops } from '../slip-guard/quick-slips.ts';
import { grams, share } from '../typed-quantity.ts';
import type { Working } from '../working.ts';

/**
 * Drops of a stock dilution for a trace of a very strong aroma compound, or what a number of drops comes to.
 *
 * Formula   m_solute = w_target m;  m_stock = m_solute / w_stock;  drops = m_stock / m_drop
 * Input     target (mass fraction) or drops; mass or volume of drink; stock strength; mass of a drop
 * Output    soluteMass, stockMass (g), drops, wholeDrops, achieved (ppb), deviation, uncertainty, adviceStrength
 * Refuses   a stock no stronger than the target; neither or both of target and drops
 * Source    arithmetic; a dropper is good to 15 per cent at best, USP 32 <1101>
 * Example   drops --target 0.5 ppb --in 6 kg --stock 10 ppm --drop 0.021 g -> stockMass 0.0003, drops 0.01429
 */
export const drops = defineCalculator({
  name: 'drops',
  version: 1,
  summary: 'drops of a stock dilution for parts per billion in the drink',
  about:
    'Shares are by mass and as dosed: what is lost to the air or the cap is not counted. One drop of a stock that is too strong is the whole dose and more; the answer then says which strength to make.',
  fields: {
    target: quantityField({
      help: 'what the drink shall hold, such as 0.5 ppb',
      accepts: ['share'],
      placeholder: 'SHARE',
    }),
    drops: numberField({ help: 'a number of drops instead, to see what it comes to' }),
    in: required(
      quantityField({
        help: 'the drink, such as 6 L or 6 kg',
        accepts: ['volume', 'mass'],
        placeholder: 'AMOUNT',
      }),
    ),
    density: quantityField({
      help: 'density of the drink; 1 g/mL where it is not given',
      accepts: ['mass per volume'],
      placeholder: 'DENSITY',
    }),
    stock: required(
      quantityField({
        help: 'strength of the stock, such as 10 ppm; in a ledger its name, or what suits of the shelf if left out',
        accepts: ['share'],
        placeholder: 'SHARE',
      }),
    ),
    drop: required(
      quantityField({
        help: 'mass of one drop of it, such as 0.021 g; of a stock of the shelf its own',
        accepts: ['mass'],
        placeholder: 'MASS',
      }),
    ),
    division: quantityField({
      help: 'division of the balance, where the stock is weighed and not dropped',
      accepts: ['mass'],
      placeholder: 'MASS',
    }),
  },
  readings: {
    soluteMass: { label: 'compound in the drink', unit: 'g' },
    stockMass: { label: 'stock', unit: 'g' },
    drops: { label: 'drops, exactly', unit: '' },
    wholeDrops: { label: 'whole drops', unit: '', as: 'count' },
    achieved: { label: 'whole drops come to, as dosed', unit: 'ppb' },
    deviation: { label: 'off the target by', unit: '', as: 'percent' },
    uncertainty: { label: 'no better than, plus or minus', unit: '', as: 'percent' },
    adviceStrength: { label: 'stock that makes it 5 to 20 drops', unit: '', as: 'parts' },
  },
  examples: [
    {
      line: 'drops --target 0.5 ppb --in 6 L --stock 10 ppm --drop 0.021 g',
      says: 'how many drops, and whether the stock suits',
    },
    { line: 'drops --drops 3 --in 6 L --stock 10 ppm --drop 0.021 g', says: 'what three drops come to' },
  ],
  instead: { target: ['drops'], drops: ['target'] },
  takes: stocksInDrink,
  work: (given, working) => {
    const drinkGrams = massOfDrink(given.in, given.density, working);
    const stock = given.stock.inner;
    const dropGrams = given.drop.inner;
    if (stock <= 0 || stock > 1)
      return fail(
        'out-of-range',
        `"${given.stock.written}" is no strength of a stock`,
        'give a strength such as 10 ppm or 0.1 %',
      );
    if (dropGrams <= 0)
      return fail(
        'not-positive',
        `a drop of ${given.drop.written} weighs nothing`,
        'weigh 20 drops and divide: --drop 0.021 g',
      );
    const exact = exactDrops(given.target, given.drops, { drinkGrams, stock, dropGrams }, working);
    const whole = Math.round(exact);
    const stockGrams = exact * dropGrams;
    const solute = stockGrams * stock;
    const target = solute / drinkGrams;
    for (const { code, text, source } of slipsOfDrops(target)) working.caution(code, text, source);
    const achieved = (whole * dropGrams * stock) / drinkGrams;
    const strength = roundStrengthFor({
      soluteGrams: solute,
      dropGrams,
      present: stock,
      fewest: fewestDrops.value,
      most: mostDrops.value,
    });
    working.cite('what a dropper is good for', `${dropperError.source}#${dropperError.locator}`);
    const uncertainty = given.division ? (0.5 * given.division.inner) / stockGrams : dropperError.value;
    const few = exact < fewestDrops.value;
    return {
      ...(few ? { lead: tooFew(exact, strength) } : {}),
      found: {
        soluteMass: solute,
        stockMass: stockGrams,
        drops: exact,
        wholeDrops: whole,
        achieved: achieved * 1e9,
        deviation: achieved / target - 1,
        uncertainty,
        adviceStrength: strength,
      },
    };
  },
});

function tooFew(exact: number, strength: number): string {
  const share =
    strength >= 1e-6 ? `${trimmedNumber(strength * 1e6, 3)} ppm` : `${trimmedNumber(strength * 1e9, 3)} ppb`;
  return `${numberText(exact, 3)} drops are too few to count: one more or less is ${numberText(100 / Math.max(exact, 1e-12), 2)} % of the dose. Make a stock of ${share}, or weigh it.`;
}

function massOfDrink(amount: Quantity, density: Quantity | undefined, working: Working): number {
  if (amount.inner <= 0)
    return fail('not-positive', `"${amount.written}" is no drink`, 'give --in above zero, such as 6 L');
  if (amount.dimension === 'mass') return amount.inner;
  const gramsPerMillilitre = density?.inner ?? 1;
  if (!density) {
    working.cite('density of the drink', 'taken as 1 g/mL, none was given');
    working.caution(
      'density-taken',
      `${amount.written} is taken as ${massWritten(amount.inner)}: give the mass, or --density.`,
      'no density was given',
    );
  }
  const mass = amount.inner * gramsPerMillilitre;
  working.line(
    'mass of drink = volume x density',
    `${amount.written} x ${trimmedNumber(gramsPerMillilitre)} g/mL = ${trimmedNumber(mass)} g`,
  );
  return mass;
}

const massWritten = (grams: number): string =>
  grams < 1000 ? `${trimmedNumber(grams, 6)} g` : `${trimmedNumber(grams / 1000, 6)} kg`;

interface Situation {
  readonly drinkGrams: number;
  readonly stock: number;
  readonly dropGrams: number;
}

function exactDrops(
  target: Quantity | undefined,
  count: number | undefined,
  at: Situation,
  working: Working,
): number {
  if (target && count !== undefined)
    return fail(
      'given-twice',
      'both --target and --drops are given',
      'give the target, or the number of drops',
    );
  if (count !== undefined) {
    if (count <= 0) return fail('not-positive', 'no drops are given', 'give --drops 1 or more');
    const share = (count * at.dropGrams * at.stock) / at.drinkGrams;
    working.line(
      'share = drops x mass of a drop x strength / mass of drink',
      `${trimmedNumber(count)} x ${trimmedNumber(at.dropGrams)} g x ${trimmedNumber(at.stock)} / ${trimmedNumber(at.drinkGrams)} g = ${trimmedNumber(share * 1e9)} ppb`,
    );
    return count;
  }
  if (!target)
    return fail('missing', 'neither --target nor --drops is given', 'give --target 0.5 ppb, or --drops 3');
  if (target.inner <= 0)
    return fail('not-positive', 'the target is nothing', 'give --target above zero, such as 0.5 ppb');
  if (target.inner >= at.stock)
    return fail(
      'out-of-range',
      `the target of ${target.written} is no weaker than the stock`,
      'check the units: ppm is a thousand times ppb',
    );
  const stockGrams = (target.inner * at.drinkGrams) / at.stock;
  working.line(
    'stock = target x mass of drink / strength',
    `${target.written} x ${trimmedNumber(at.drinkGrams)} g / ${trimmedNumber(at.stock)} = ${trimmedNumber(stockGrams)} g`,
  );
  working.line(
    'drops = stock / mass of a drop',
    `${trimmedNumber(stockGrams)} g / ${trimmedNumber(at.dropGrams)} g = ${trimmedNumber(stockGrams / at.dropGrams)}`,
  );
  return stockGrams / at.dropGrams;
}

/** Every stock of a potent compound that stands as an item of the drink. */
function stocksInDrink({ mixture, dropGrams }: TrialPicture) {
  const { drink } = mixture;
  if (!drink) return { why: 'it has no stage named drink' };
  const taken = drink.items.flatMap((item) => stockTaken(item, drink, dropGrams));
  if (taken.length > 0) return taken;
  return {
    why: 'no stock of a potent aroma compound goes into the drink',
    beside: {
      stage: drink.name,
      given: { in: grams(drink.massGrams), ...(dropGrams === undefined ? {} : { drop: grams(dropGrams) }) },
    },
  };
}

function stockTaken(item: ResolvedItem, drink: ResolvedStage, benchDropGrams: number | undefined) {
  if (item.source.kind !== 'ingredient') return [];
  const { entry } = item.source;
  const potent = entry.composition.find((one) => one.substance.record.potent);
  const drop = entry.dropGrams ?? benchDropGrams;
  if (!potent || potent.massFraction >= 1 || drop === undefined || item.massGrams <= 0) return [];
  return [
    {
      stage: drink.name,
      given: {
        drops: item.massGrams / drop,
        in: grams(drink.massGrams),
        stock: share(potent.massFraction),
        drop: grams(drop),
      },
    },
  ];
}
