import { acidSolubility } from '../../reference/solubility.ts';
import { solubilityAt } from '../drink/solubility-at.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { DrinkAcidity } from './drink.ts';
import { gramsPerMole } from './substance.ts';
import { sucroseSolubilityAt } from './sugar-limits.ts';

const ICE_POINT_KELVIN = 273.15;

export interface Undissolved {
  readonly text: string;
  readonly source: string;
}

/**
 * What was typed and would not all dissolve.
 *
 * Formula   g/L of the acid that has its protons over what dissolves; g of sucrose over that of the saturated water
 * Input     a reckoned litre; temperatureKelvin
 * Output    a sentence with its source for each that is over
 * Source    Food Additives Data Book; CRC Handbook, older editions, for sucrose
 */
export function undissolved(drink: DrinkAcidity, temperatureKelvin: number): readonly Undissolved[] {
  const celsius = Number((temperatureKelvin - ICE_POINT_KELVIN).toFixed(9));
  return [...acidsOver(drink, celsius), ...sucroseOver(drink, temperatureKelvin)];
}

const acids = ['benzoic', 'fumaric'] as const;

function acidsOver({ acids: states, litre }: DrinkAcidity, celsius: number): readonly Undissolved[] {
  return acids.flatMap((acid) => {
    const state = states.find((one) => one.acid === acid);
    const moles = (state?.molality ?? 0) * (state?.undissociated ?? 0) * litre.waterKilograms;
    const grams = moles * (gramsPerMole(`${acid} acid`) ?? 0);
    const holds = solubilityAt(acidSolubility[acid], celsius);
    if (grams <= holds.gramsPerLitre || holds.known === 'at least') return [];
    const memory = holds.fromMemory ? ', from memory' : '';
    const text = `${numberText(grams, 2)} g/L of ${acid} acid would have to dissolve, where about ${numberText(holds.gramsPerLitre, 2)} g/L does at ${trimmedNumber(holds.celsius, 3)} C${memory}: the rest crystallises, and the figures are those of all of it dissolved.`;
    return [{ text, source: acidSolubility[acid].source }];
  });
}

function sucroseOver({ litre }: DrinkAcidity, temperatureKelvin: number): readonly Undissolved[] {
  const grams = litre.grams.find(({ substance }) => substance === 'sucrose')?.grams ?? 0;
  const most = sucroseSolubilityAt({ temperatureKelvin });
  const water = litre.waterKilograms * 1000;
  if (!most.ok || grams / (grams + water) <= most.value) return [];
  const text = `Of ${numberText(grams, 4)} g of sucrose ${numberText((water * most.value) / (1 - most.value), 4)} g dissolves in that water: the rest crystallises in time.`;
  return [{ text, source: 'crc-sucrose-solubility' }];
}
