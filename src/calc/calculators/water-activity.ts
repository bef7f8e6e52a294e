import { fail } from '../../problem.ts';
import { lookUp } from '../../reference/look-up.ts';
import { norrishConstants } from '../../reference/solution/water-activity.ts';
import { answered } from '../answered.ts';
import { defineCalculator } from '../define-calculator.ts';
import { quantityField } from '../fields.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import { type PortionItem, portionsField } from '../portions-field.ts';
import { sucroseSolubilityAt } from '../solution/sugar-limits.ts';
import { waterActivity as solve } from '../solution/water-activity.ts';
import { solutionNameOf } from '../solution-portions.ts';
import { share } from '../typed-quantity.ts';

/**
 * Water activity of a mixture.
 *
 * Formula   published model for mixtures from each solute's own constant
 * Input     shares by mass of water and of what is dissolved; temperature
 * Output    waterActivity
 * Refuses   no water; shares above the whole; a strength or temperature outside what the model was compared with
 * Source    Norrish 1966; Ferro Fontan and others; Ross 1975
 * Example   water-activity "65 % sucrose" "35 % water" -> 0.86
 */
export const waterActivity = defineCalculator({
  name: 'water-activity',
  version: 1,
  summary: 'water activity of a mixture',
  about:
    'Type the shares by mass. Without water it is what is left. Water activity alone does not say that something keeps.',
  fields: {
    items: portionsField({ help: 'shares by mass, such as "65 % sucrose" "35 % water"', accepts: ['share'] }),
    temperature: quantityField({
      help: 'such as 20 C; 25 C if left out',
      accepts: ['temperature'],
      placeholder: 'TEMP',
    }),
  },
  readings: {
    waterActivity: { label: 'water activity', unit: '' },
    ross: { label: "by Ross's product", unit: '' },
  },
  examples: [
    { line: 'water-activity "65 % sucrose" "35 % water"', says: 'a syrup' },
    { line: 'water-activity "40 % sucrose" "10 % glycerol"', says: 'the rest is water' },
  ],
  takes: ({ mixture }) => {
    const { drink, stages } = mixture;
    const drinkFirst = [...(drink ? [drink] : []), ...stages.filter((stage) => stage !== drink)];
    return drinkFirst.flatMap((stage) => {
      const items = knownSolutes(stage);
      return items.length > 0 ? [{ stage: stage.name, given: { items } }] : [];
    });
  },
  work: (given, working) => {
    const shares = given.items.map(({ name, entry, quantity }) => ({
      name,
      isWater: entry?.record.role === 'water',
      share: quantity?.inner ?? 0,
    }));
    const dissolved = shares.filter((one) => !one.isWater);
    const solids = dissolved.reduce((sum, one) => sum + one.share, 0);
    const typedWater = shares.filter((one) => one.isWater).reduce((sum, one) => sum + one.share, 0);
    if (dissolved.length === 0)
      fail('missing', 'nothing is dissolved', 'give shares such as "65 % sucrose" "35 % water"');
    if (solids + typedWater > 1 + 1e-6)
      fail(
        'shares-over',
        `the shares come to ${trimmedNumber((solids + typedWater) * 100, 5)} %`,
        'take them down, to 100 % at most together',
      );
    const waterGrams = typedWater > 0 ? typedWater : 1 - solids;
    const found = answered(
      solve({
        waterGrams,
        substances: dissolved.map((one) => ({ substance: one.name, grams: one.share })),
        ...(given.temperature ? { temperatureKelvin: given.temperature.inner } : {}),
      }),
    );
    working.cite('water activity of single solutes', 'norrish-1966', found.fromMemory.length > 0);
    for (const { name } of dissolved) {
      const constant = lookUp(norrishConstants, name);
      if (constant) working.cite(`water activity with ${name}`, constant.source, constant.fromMemory);
    }
    working.line(
      'ln of water activity = ln of the share of water molecules + K x share of solute^2, over the solutes',
      `${dissolved.map(({ name, share }) => `${trimmedNumber(share * 100, 4)} % ${name}`).join(', ')} in ${trimmedNumber(waterGrams * 100, 4)} % water: ${numberText(found.waterActivity, 4)}; as a product of each alone ${numberText(found.byRoss, 4)}`,
    );
    if (found.ideal.length > 0)
      working.caution(
        'no-constant',
        `No constant is known for ${found.ideal.join(', ')}: counted by molecules alone.`,
        'ideal solution',
      );
    const temperatureKelvin = given.temperature?.inner ?? roomKelvin;
    for (const { text, source } of overSaturated(dissolved, { waterGrams, temperatureKelvin }))
      working.caution('falls-out', text, source);
    working.caution(
      'water-activity-and-keeping',
      'Low water activity slows microbes and does not stop all of them; yeasts of sugar syrups grow down to about 0.61. It is no proof that a syrup keeps.',
      'common practice, no source',
    );
    return { found: { waterActivity: found.waterActivity, ross: found.byRoss } };
  },
});

const roomKelvin = 298.15;

/** Sucrose that its water does not hold. */
function overSaturated(
  dissolved: readonly { readonly name: string; readonly share: number }[],
  { waterGrams, temperatureKelvin }: { readonly waterGrams: number; readonly temperatureKelvin: number },
): readonly { readonly text: string; readonly source: string }[] {
  const sucrose = dissolved.find(({ name }) => name === 'sucrose')?.share ?? 0;
  const most = sucroseSolubilityAt({ temperatureKelvin });
  if (!most.ok || sucrose / (sucrose + waterGrams) <= most.value) return [];
  const celsius = trimmedNumber(temperatureKelvin - 273.15, 4);
  const text = `Water holds no more than ${numberText(most.value * 100, 3)} % of sucrose at ${celsius} C: the rest crystallises in time, and the figure is that of all of it dissolved.`;
  return [{ text, source: 'crc-sucrose-solubility' }];
}

/** Solutes whose figures are known, on the water that is there; oils and traces do nothing to it. */
function knownSolutes({ substances }: ResolvedStage): readonly PortionItem[] {
  const counted = substances.filter(
    ({ role, entry, massGrams }) =>
      massGrams > 0 && (role === 'water' || solutionNameOf(entry) !== undefined),
  );
  const all = counted.reduce((sum, { massGrams }) => sum + massGrams, 0);
  if (!counted.some(({ role }) => role === 'water') || counted.every(({ role }) => role === 'water'))
    return [];
  return counted.map(({ name, entry, massGrams }) => ({
    name: solutionNameOf(entry) ?? name,
    entry,
    quantity: share(massGrams / all),
  }));
}
