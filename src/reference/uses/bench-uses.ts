/** Weighing, drops, cautions, usual bands, people and law: what is used for what. */

import { aimTolerances, measuredTolerances } from '../aim-tolerances.ts';
import { moreFoamWithMore } from '../antifoam-figures.ts';
import {
  caffeineServing,
  corrosiveAcid,
  flammableBelowCelsius,
  handling,
  lossWorthAWord,
  nearlyNeat,
  processReasons,
  warmFromKelvin,
} from '../cautions.ts';
import { largestDilution } from '../dilution.ts';
import {
  acidFood,
  benzene,
  erosion,
  fermentable,
  glycerolAdvice,
  sensitiveGroups,
} from '../drink-keeping.ts';
import { softDrinkWater } from '../drink-water.ts';
import { dropperError, fewestDrops, mostDrops, usualDrop } from '../drops.ts';
import {
  activeInAntifoamEmulsion,
  aroundUseLevel,
  droppedTargets,
  emulsifierPerOilBand,
  farOutside,
  gramsPerLitreOfOneVolume,
  slipFactors,
  usualBands,
} from '../usual-bands.ts';
import { minimumWeightRule } from '../weighing.ts';
import { practice } from './method-uses.ts';
import type { Shelf } from './use.ts';

const stages = ['drink', 'reckon', 'scale', 'check'] as const;

export const benchShelves: readonly Shelf[] = [
  {
    what: 'what a dropper is good for',
    of: dropperError,
    range: 'a calibrated dropper in normal use',
    by: ['drops', 'dilute', 'stocks'],
  },
  {
    what: 'fewest and most drops to count',
    of: { least: fewestDrops, most: mostDrops },
    by: ['drops', 'dilute'],
  },
  { what: 'mass of a usual drop', of: usualDrop, by: ['dropper'] },
  { what: 'largest dilution a step', of: largestDilution, by: ['dilute', 'scale'] },
  {
    what: 'the 0.10 % rule of the pharmacopoeia',
    of: minimumWeightRule,
    range: 'a balance whose readings repeat to less than 0.41 of a division counts as 0.41',
    by: ['dilute', 'scale'],
  },
  {
    what: 'what an aim allows on both sides',
    of: { ...practice, ...aimTolerances },
    by: ['drink', 'reckon', 'check'],
  },
  { what: 'how near a reading of * must lie', of: measuredTolerances, by: ['drink', 'reckon', 'correct'] },
  { what: 'usual * in a drink', of: usualBands, range: 'soft drinks', by: stages },
  { what: 'usual emulsifier for the oil', of: emulsifierPerOilBand, by: stages },
  {
    what: 'when a figure looks like a slip',
    of: { far: farOutside, slip: slipFactors, use: aroundUseLevel },
    by: stages,
  },
  { what: 'shares that are counted in drops', of: droppedTargets, by: ['drops'] },
  { what: 'silicone in an antifoam emulsion', of: activeInAntifoamEmulsion, by: ['series', 'drink'] },
  { what: 'more foam with more antifoam', of: moreFoamWithMore, by: ['series'] },
  {
    what: 'grams of CO2 in a volume',
    of: gramsPerLitreOfOneVolume,
    range: 'by definition, 0 C and 1 atm',
    by: ['check', 'reckon'],
  },
  {
    what: 'caffeine at once',
    of: caffeineServing,
    range: 'adults',
    by: ['drink', 'intake', 'scale', 'reckon'],
  },
  { what: 'handling: *', of: handling, by: ['ingredient', 'dilute', 'scale', 'weigh', 'reckon'] },
  { what: 'when something counts as neat', of: nearlyNeat, by: ['dilute', 'scale', 'reckon'] },
  { what: 'when an acid is corrosive', of: corrosiveAcid, by: ['scale', 'reckon'] },
  { what: 'what is named as flammable', of: flammableBelowCelsius, by: ['scale', 'reckon'] },
  { what: 'when a stage counts as warm', of: warmFromKelvin, by: ['reckon', 'check'] },
  { what: 'a loss worth a word', of: lossWorthAWord, by: ['reckon', 'check'] },
  { what: 'order of the steps: *', of: processReasons, by: ['reckon', 'check'] },
  {
    what: 'acid foods',
    of: acidFood,
    range: 'foods without gas, pH and water activity together',
    by: ['drink'],
  },
  { what: 'acid and teeth', of: erosion, range: '379 drinks as opened', by: ['drink'] },
  { what: 'sugar that can ferment', of: fermentable, by: ['drink'] },
  { what: 'benzoate with ascorbic acid', of: benzene, by: ['drink', 'check'] },
  { what: 'people who must take care', of: sensitiveGroups.map((one) => one), by: ['drink', 'give'] },
  { what: 'glycerol and children', of: glycerolAdvice, range: 'slush drinks', by: ['drink'] },
  { what: '* of water for soft drinks', of: softDrinkWater, range: 'carbonated soft drinks', by: ['drink'] },
];
