/** Bottles and kegs that are filled with a dose and carbonated water. */

import { type Parsed, parsed } from '../../problem.ts';
import { isWater } from '../density/blend.ts';
import { densityModel } from '../density/estimate.ts';
import type { Mixture, ResolvedItem } from '../mixture/picture.ts';
import { ingredientDensity } from '../mixture/term.ts';
import { type Carbonation, carbonationAtVolumes } from '../solution/carbonation.ts';

export interface FillPart {
  readonly name: string;
  readonly grams: number;
  /** Absent where its density is not known. */
  readonly millilitres: number | undefined;
  readonly isWater: boolean;
}

export interface WaterGas {
  /** Volumes of CO2 in the drink. */
  readonly drinkVolumes: number;
  /** What the water brings for it, the rest being still. */
  readonly water: Carbonation;
  /** The drink at rest at the same temperature. */
  readonly drink: Carbonation;
  readonly temperatureKelvin: number;
}

export interface Filling {
  /** mL of drink in one. */
  readonly millilitres: number;
  readonly grams: number;
  readonly parts: readonly FillPart[];
  /** Absent where no CO2 is aimed at. */
  readonly gas: WaterGas | undefined;
}

export interface FillInput {
  readonly mixture: Mixture;
  readonly millilitres: number;
  readonly carbonDioxideVolumes: number | undefined;
  /** Of the water when it is carbonated. */
  readonly waterKelvin: number;
  /** Of the bench. */
  readonly benchKelvin: number;
}

/**
 * One bottle.
 *
 * Formula   part = share in the drink x V rho; CO2 of the water = v V / V(water)
 * Input     a mixture with a drink; mL of drink in the bottle; volumes of CO2 in the drink; the temperatures
 * Output    g and mL of every part; volumes, g/L and gauge pressure of the water and of the drink
 * Refuses   CO2 that the equations do not cover
 * Source    conservation of mass; Weiss 1974 and Carroll and others 1991 for the pressure
 * Example   330 mL of 1+4 at 3.5 volumes -> 66 mL of syrup, 264 mL of water at 4.375 volumes
 */
export function fillingOf(given: FillInput): Parsed<Filling | undefined> {
  const { mixture, millilitres, carbonDioxideVolumes: volumes, waterKelvin } = given;
  const { drink } = mixture;
  if (!drink) return parsed(undefined);
  const grams = millilitres * drink.densityGramsPerMillilitre;
  const waterAt = largestWater(drink.items);
  const parts = drink.items.map((item, place): FillPart => {
    const mass = (item.massGrams / drink.massGrams) * grams;
    const density = densityOf(item, given);
    return {
      name: item.name,
      grams: mass,
      millilitres: density === undefined ? undefined : mass / density,
      isWater: place === waterAt,
    };
  });
  const filling = { millilitres, grams, parts };
  const water = parts[waterAt]?.millilitres;
  if (volumes === undefined || !(volumes > 0) || water === undefined)
    return parsed({ ...filling, gas: undefined });
  const inWater = carbonationAtVolumes({
    volumes: (volumes * millilitres) / water,
    temperatureKelvin: waterKelvin,
  });
  if (!inWater.ok) return inWater;
  const inDrink = carbonationAtVolumes({ volumes, temperatureKelvin: waterKelvin });
  if (!inDrink.ok) return inDrink;
  const gas: WaterGas = {
    drinkVolumes: volumes,
    water: inWater.value,
    drink: inDrink.value,
    temperatureKelvin: waterKelvin,
  };
  return parsed({ ...filling, gas });
}

function largestWater(items: readonly ResolvedItem[]): number {
  const waters = items.filter(({ source }) => source.kind === 'ingredient' && isWater(source.entry));
  const largest = waters.toSorted((one, other) => other.massGrams - one.massGrams)[0];
  return largest ? items.indexOf(largest) : -1;
}

function densityOf({ source }: ResolvedItem, { mixture, benchKelvin }: FillInput): number | undefined {
  if (source.kind === 'ingredient') return ingredientDensity(source.entry, densityModel(benchKelvin));
  if (source.kind === 'other trial') return source.stage.densityGramsPerMillilitre;
  return mixture.stages.find(({ name }) => name === source.stage)?.densityGramsPerMillilitre;
}
