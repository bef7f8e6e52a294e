/** Cautions that come with what a stage holds, and where they are from. */

import { fattyOils } from './ingredients/fatty-oils.ts';

export const caffeineServing = {
  /** mg of caffeine a serving; above it a yes is asked for. */
  milligrams: 200,
  /** mL, where no serving is aimed at. */
  servingMillilitres: 330,
  source: 'EFSA 2015, scientific opinion on caffeine: single doses of 200 mg, as quoted',
} as const;

export const handling = {
  'pure-caffeine': {
    text: 'pure, a teaspoon is some 3 g, and grams are dangerous; make a weak stock solution, label it, and dose that',
    source: 'US FDA, consumer advice on pure powdered caffeine, 2014 to 2018, as reported',
  },
  'pure-quinine': {
    text: 'neat, milligrams of it count, and some people must keep away from it; dose it from a weak stock solution and name it on the label',
    source: 'US FDA, 21 CFR 172.575, declared on the label; handling: common practice, no source',
  },
  'neat-potent-aroma': {
    text: 'handled neat or nearly so: open it once, small, in a hood and a closed vial, and go down by at most about 1:100 a step',
    source: 'common practice, no source',
  },
  'concentrated-acid': {
    text: 'concentrated acid: acid into water, never water into acid, with the eyes covered',
    source: 'common practice, no source',
  },
  'strong-base': {
    text: 'caustic: a little at a time into cold water, with the eyes covered',
    source: 'common practice, no source',
  },
  'flammable-near-heat': {
    text: 'warm it in a water bath below the flash point, with no flame, spark or open element near: the face of a hot plate is far hotter than the liquid on it',
    source:
      'general laboratory practice (from memory); hazard statements H226 and P210 of a supplier sheet on d-limonene',
  },
} as const;

export type HandlingCode = keyof typeof handling;

/** Mass fractions: from here up an ingredient counts as neat; a stock of a potent compound already does from far less. */
export const nearlyNeat = {
  neat: 0.5,
  potent: 0.01,
  source: 'common practice, no source',
  fromMemory: true,
} as const;

export const quinineSalts: readonly string[] = [
  'quinine',
  'quinine hydrochloride dihydrate',
  'quinine sulfate dihydrate',
];

/** From this mass fraction up these acids are corrosive. */
export const corrosiveAcid = {
  value: 0.25,
  names: ['phosphoric acid', 'lactic acid', 'acetic acid'],
  source: 'specific limit of phosphoric acid, Regulation 1272/2008',
  fromMemory: true,
} as const;

export const strongBases: readonly string[] = ['sodium hydroxide', 'potassium hydroxide'];

/** C; a liquid that catches fire below it is named when its stage is warmed. */
export const flammableBelowCelsius = { value: 93, source: 'common practice, no source' } as const;

/** Fats, waxes and heavy paraffins, whose flash points lie far above that (from memory). */
export const slowToBurn: readonly string[] = [
  ...fattyOils.map(({ name }) => name),
  'MCT oil',
  'liquid paraffin',
  'mineral oil',
  'lanolin',
  'beeswax',
  'paraffin wax',
  'carnauba wax',
  'petrolatum',
  'ester gum',
  'sucrose acetate isobutyrate',
];

/** K; from here up a stage counts as warm. */
export const warmFromKelvin = { value: 313.15, source: 'common practice, no source' } as const;

/** The share that may boil off or stay behind before it is worth a word. */
export const lossWorthAWord = { value: 0.02, source: 'common practice, no source' } as const;

/** Why the order of the steps matters. */
export const processReasons = {
  'preservative-after-acid': {
    reason:
      'its acid is set free at once and may fall out as crystals: dissolve it first, then bring in the acid as a solution',
    source: "preservative seller's sheet, potassium sorbate; common practice",
  },
  'aroma-heated': {
    reason:
      'what is smelled at parts per billion boils off and changes when it is hot: bring it in when the stage is cool',
    source: 'common practice, no source',
  },
  'antifoam-before-shear': {
    reason: 'high shear breaks its droplets up, and it stops working: bring it in afterwards',
    source: 'common practice, no source',
  },
  'emulsion-into-hot': {
    reason: 'heat takes it past its clouding temperature and may break it: let the syrup cool first',
    source: 'common practice, no source',
  },
  'made-up-warm': {
    reason: 'it shrinks as it cools: make it up at bench temperature, or to a mass',
    source: 'calculated from the density of water, Kell 1975',
  },
  'loss-on-heating': {
    reason: 'the shares are then higher than planned: weigh water back, or heat it covered',
    source: 'common practice, no source',
  },
  'weighs-more': {
    reason: 'look for an item that was not written down, or a tare',
    source: 'conservation of mass',
  },
} as const;

export type ProcessCode = keyof typeof processReasons;
