/** HLB, droplets, light, rising and keeping: what is used for what, and where it holds. */

import { ratioMap, surfaceLoad, swollenMicelle } from '../droplet.ts';
import { hlbRangesCite } from '../hlb-ranges.ts';
import {
  esterActivation,
  esterConstants,
  keepingCelsius,
  polysorbateHydrolysis,
  sucroseInversion,
} from '../kinetics.ts';
import {
  crowded,
  hazeBands,
  meterPath,
  nephelometer,
  singleScattering,
  usualWavelength,
  usualWidth,
} from '../light.ts';
import {
  carrierIndex,
  emulsifierDensity,
  emulsifierIndex,
  indexIncrementsSource,
  otherIncrement,
} from '../refraction.ts';
import {
  centrifugeFactor,
  countsAsStable,
  hindered,
  limonene,
  matchAccuracy,
  oilExpansion,
  ripeningStop,
  riseFactor,
  usualHeight,
  waterViscosity,
} from '../settling.ts';
import { stressCycles } from '../stress-cycles.ts';
import { causeWords } from '../why-causes.ts';
import type { Shelf } from './use.ts';

const keeping = `${keepingCelsius.low} to ${keepingCelsius.high} C`;

export const emulsionShelves: readonly Shelf[] = [
  {
    what: 'gas constant, Boltzmann constant, standard gravity',
    of: { source: 'general-knowledge', locator: 'exact SI and standard values', fromMemory: true },
    range: 'anywhere',
    by: ['ring', 'why', 'lasts', 'ph', 'adjust', 'drink', 'carbonation'],
    always: ['ring', 'lasts', 'ph', 'adjust', 'drink', 'carbonation'],
  },
  {
    what: 'what an HLB is fit for',
    of: hlbRangesCite,
    range: 'HLB 3 to 18, non-ionic emulsifiers',
    by: ['hlb'],
  },
  {
    what: 'HLB of one molecule',
    of: { source: 'griffin-1954', fromMemory: true },
    range: 'non-ionic emulsifiers, HLB 0 to 20: esters of polyols, or chains of oxyethylene (from memory)',
    by: ['hlb-of'],
  },
  {
    what: 'HLB of a blend: shares add up',
    of: { source: 'griffin-1949' },
    range: 'non-ionic emulsifiers, HLB 0 to 20 (from memory)',
    by: ['hlb', 'emulsifier', 'ladder', 'series'],
    always: ['hlb'],
  },
  {
    what: 'surface load of polysorbate, mg/m2',
    of: surfaceLoad,
    range: 'small-molecule emulsifiers, 1 to 2 mg/m2',
    by: ['coat', 'why'],
  },
  {
    what: 'size of a micelle with oil in it',
    of: swollenMicelle,
    range: 'polysorbates with oils of small molecules; 1.5 times either way',
    by: ['coat', 'why', 'compare'],
  },
  { what: 'map of emulsifier per oil', of: ratioMap, range: ratioMap.systems, by: ['coat'] },
  {
    what: 'scattering of spheres',
    of: singleScattering,
    range: 'clear round droplets far apart, oil to 1 % by volume',
    by: ['clarity', 'why'],
  },
  {
    what: 'light to the side of 1 NTU, 1/(m sr)',
    of: nephelometer,
    range: `white light or ${usualWavelength.meterLow} to ${usualWavelength.meterHigh} nm; two times either way`,
    by: ['clarity', 'why', 'compare'],
  },
  {
    what: 'what is seen',
    of: hazeBands,
    range: 'two times either way; a dark ground sees far more',
    by: ['clarity', 'why'],
  },
  {
    what: 'wavelength and widths where none is given',
    of: { usualWavelength, meterPath, usualWidth },
    by: ['clarity', 'why'],
  },
  { what: 'when droplets are crowded', of: crowded, by: ['clarity'] },
  { what: 'index of emulsifiers', of: emulsifierIndex, range: 'polysorbates as supplied', by: ['clarity'] },
  {
    what: 'density of emulsifiers',
    of: emulsifierDensity,
    range: 'polysorbates as supplied',
    by: ['clarity'],
  },
  { what: 'index of carriers', of: carrierIndex, by: ['clarity'] },
  {
    what: 'what acids and salts add to the index',
    of: indexIncrementsSource,
    range: 'at 20 C, solutions of 5 or 10 % by mass',
    by: ['clarity'],
  },
  { what: 'index of other acids and salts', of: otherIncrement, by: ['clarity'] },
  {
    what: 'viscosity of water',
    of: waterViscosity,
    range: `${waterViscosity.valid.lowCelsius} to ${waterViscosity.valid.highCelsius} C`,
    by: ['ring', 'why'],
  },
  { what: 'how citrus oils expand', of: oilExpansion, range: 'd-limonene, 20 to 25 C', by: ['ring'] },
  {
    what: 'hindered rising',
    of: hindered,
    range: `oil up to ${100 * hindered.highest} % by volume`,
    by: ['ring', 'why'],
  },
  { what: 'rising that counts as stable', of: countsAsStable, by: ['ring'] },
  { what: 'what a reckoned time is good for', of: riseFactor, by: ['ring'] },
  { what: 'height where none is given', of: usualHeight, by: ['ring', 'why'] },
  { what: 'volumes of oils added', of: matchAccuracy, by: ['ring'] },
  {
    what: 'insoluble oil that stops ripening',
    of: ripeningStop,
    range: 'the emulsions of citrus oil that were published',
    by: ['ring'],
  },
  { what: 'molar volume and tension of limonene', of: limonene, by: ['ring'] },
  { what: 'times gravity in a centrifuge', of: centrifugeFactor, range: 'anywhere', by: ['ring'] },
  {
    what: 'hydrolysis of *, 25 C',
    of: esterConstants,
    range: `at 25 C, dilute in water; carried to ${keeping} by the energy of activation`,
    by: ['lasts'],
  },
  {
    what: 'energy of activation of aliphatic esters, kJ/mol',
    of: esterActivation,
    range: `given as ${esterActivation.low} to ${esterActivation.high}, ordinary aliphatic esters in acid`,
    by: ['lasts'],
  },
  {
    what: 'inversion of sucrose',
    of: sucroseInversion,
    range: `${sucroseInversion.sure.lowCelsius} to ${sucroseInversion.sure.highCelsius} C, pH ${sucroseInversion.sure.lowPh} to ${sucroseInversion.sure.highPh}; carried to ${keeping} and pH ${sucroseInversion.highPh}`,
    by: ['lasts'],
  },
  {
    what: 'hydrolysis of polysorbate',
    of: polysorbateHydrolysis,
    range: 'a class of esters in acid at 25 C; only ever a range',
    by: ['lasts'],
  },
  {
    what: 'losses that are told in words: oil that shields citral',
    of: { source: 'mei-2010' },
    by: ['lasts'],
  },
  { what: 'cycle of warm and cold: *', of: stressCycles, by: ['observe', 'due', 'show', 'why'] },
  { what: 'what a look can mean: *', of: causeWords, by: ['why'] },
];
