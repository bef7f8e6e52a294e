/** Water, acids, sugars, water activity: what is used for what, and where it holds. */

import { citricAcidEquivalents, citricAcidMolarMass } from '../citric-acid.ts';
import { acidSystems } from '../solution/acid-constants.ts';
import { daviesModel, debyeHueckel, waterIonProduct, waterPermittivity } from '../solution/activity-model.ts';
import {
  acidOnBrix,
  besideSucrose,
  sucroseIndex,
  sucroseSolubility,
  sucroseViscosity,
  waterIndex,
} from '../solution/sugars.ts';
import { titrationSource } from '../solution/titration.ts';
import { apparentVolumesSource, estimatedVolumes } from '../solution/volumes.ts';
import {
  mixtureLaws,
  norrishConstants,
  norrishValid,
  osmoticCoefficients,
} from '../solution/water-activity.ts';
import { sucroseDensityTable } from '../sucrose-density.ts';
import { waterDensity } from '../water-density.ts';
import type { Shelf } from './use.ts';

const celsius = ({
  lowCelsius,
  highCelsius,
}: {
  readonly lowCelsius: number;
  readonly highCelsius: number;
}) => `${lowCelsius} to ${highCelsius} C`;
const kelvin = (value: number): string => `${Math.round(value - 273.15)} C`;

const inAcid = ['ph', 'adjust', 'drink'] as const;
const acidity = [...inAcid, 'scale', 'correct', 'swap', 'compare', 'history', 'lasts'] as const;
const sugary = [
  'brix',
  'drink',
  'scale',
  'correct',
  'ring',
  'clarity',
  'compare',
  'history',
  'swap',
] as const;

export const solutionShelves: readonly Shelf[] = [
  {
    what: 'density of water',
    of: waterDensity,
    range: `${celsius(waterDensity.valid)}, water free of air at 1 atm`,
    by: ['ph', 'adjust', 'brix', 'drink', 'ring', 'scale', 'correct', 'carbonation'],
    always: [...inAcid, 'ring'],
  },
  {
    what: 'constants of * acid',
    of: acidSystems,
    range: 'no added salt, 0 to 77 C; the effect of salt by the law of activity',
    ranges: {
      lactic: '0 to 50 C, no added salt',
      ascorbic: '25 C; how it changes with temperature was not found',
      gluconic: '25 C; how it changes with temperature was not found',
      sorbic: '25 C; how it changes with temperature was not found',
    },
    by: acidity,
  },
  {
    what: 'activity coefficients',
    of: daviesModel,
    range: `ionic strength up to ${daviesModel.trustedIonicStrength} mol/kg; past ${daviesModel.highestIonicStrength} nothing is answered`,
    by: acidity,
    always: inAcid,
  },
  { what: 'salting out of uncharged acid', of: daviesModel.neutral, by: acidity, always: inAcid },
  {
    what: 'law of activity in water',
    of: debyeHueckel,
    range: '0 to 100 C',
    by: acidity,
    always: inAcid,
  },
  {
    what: 'permittivity of water',
    of: waterPermittivity,
    range: celsius(waterPermittivity.valid),
    by: acidity,
    always: inAcid,
  },
  {
    what: 'ion product of water',
    of: waterIonProduct,
    range: celsius(waterIonProduct.valid),
    by: acidity,
    always: [...inAcid, 'lasts'],
  },
  {
    what: 'molar masses',
    of: { source: 'iupac-atomic-weights' },
    range: 'anywhere',
    by: [...acidity, 'acid', 'titrate', 'water-activity', 'carbonation', 'cost', 'clarity'],
    always: [...inAcid, 'titrate', 'water-activity'],
  },
  {
    what: 'molar mass of anhydrous citric acid',
    of: citricAcidMolarMass,
    range: 'anywhere',
    by: ['acid', 'drink', 'correct'],
  },
  {
    what: 'acid hydrogens of citric acid',
    of: citricAcidEquivalents,
    range: 'titration to pH 8.1 to 8.2',
    by: ['acid', 'drink', 'correct'],
  },
  {
    what: 'acid hydrogens that a titration counts',
    of: { source: titrationSource },
    range: 'titration to pH 8.1 to 8.2; phosphoric acid to pH 9',
    by: ['titrate', 'ph', 'drink'],
    always: ['titrate', 'ph'],
  },
  {
    what: 'density of sugar solutions',
    of: sucroseDensityTable,
    range: `measured from ${celsius(sucroseDensityTable.fitted)} up to 70 % of sucrose; tables follow it from ${celsius(sucroseDensityTable.valid)} up to 85 %`,
    by: sugary,
    always: ['brix'],
  },
  {
    what: 'index of sugar solutions',
    of: sucroseIndex,
    range: 'at 20 C, yellow sodium light, up to 85 % of sucrose; carried to 5 to 40 C',
    by: ['brix', 'clarity', 'drink', 'correct'],
    always: ['brix'],
  },
  { what: 'index of water', of: waterIndex, by: ['brix', 'clarity'], always: ['brix'] },
  {
    what: 'density and index of other sugars',
    of: besideSucrose,
    range: `at 20 C, glucose up to ${100 * besideSucrose.glucose.highMassFraction} %, fructose up to ${100 * besideSucrose.fructose.highMassFraction} %`,
    by: sugary,
  },
  {
    what: 'viscosity of sugar solutions',
    of: sucroseViscosity,
    range: `${celsius(sucroseViscosity.valid)}, up to ${100 * sucroseViscosity.valid.highMassFraction} % of sucrose`,
    by: ['brix', 'ring', 'drink'],
    always: ['brix'],
  },
  {
    what: 'solubility of sucrose',
    of: sucroseSolubility,
    range: celsius(sucroseSolubility.valid),
    by: ['brix', 'drink'],
  },
  {
    what: 'acid on a refractometer',
    of: acidOnBrix,
    range: `up to ${acidOnBrix.highPercent} % of citric acid`,
    by: ['drink', 'correct'],
  },
  {
    what: 'room that * take in water',
    of: { 'dissolved substances': apparentVolumesSource },
    range: 'at 20 C, solutions of 5 % by mass',
    by: acidity,
    always: inAcid,
  },
  {
    what: 'room of substances that were not read',
    of: { source: 'common practice, no source', ...estimatedVolumes },
    by: acidity,
  },
  {
    what: 'water activity with *',
    of: norrishConstants,
    range: `at 25 C, down to a water activity of ${norrishValid.lowWaterActivity}; carried from ${kelvin(norrishValid.lowKelvin)} to ${kelvin(norrishValid.highKelvin)}`,
    by: ['water-activity', 'drink', 'compare', 'history'],
  },
  {
    what: 'water activity of single solutes',
    of: mixtureLaws.norrish,
    range: `at 25 C, down to a water activity of ${norrishValid.lowWaterActivity}; carried from ${kelvin(norrishValid.lowKelvin)} to ${kelvin(norrishValid.highKelvin)}`,
    by: ['water-activity', 'drink', 'compare', 'history'],
    always: ['water-activity'],
  },
  {
    what: 'water activity of a mixture, for comparison',
    of: mixtureLaws.ross,
    by: ['water-activity'],
    always: ['water-activity'],
  },
  {
    what: 'osmotic coefficients of salts (*)',
    of: { 'two ions': osmoticCoefficients.twoIons, 'four ions': osmoticCoefficients.fourIons },
    ranges: { 'two ions': 'up to 5 mol/kg', 'four ions': 'up to 0.97 mol/kg, by freezing points' },
    by: ['water-activity', 'drink'],
  },
];
