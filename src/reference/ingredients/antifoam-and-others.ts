/** Antifoam, stimulants and bitters, weighting agents, antioxidants and colours. */

import type { Ingredient } from '../ingredient.ts';
import { molarMass, recalled } from './figure-makers.ts';

const antifoams: readonly Ingredient[] = [
  {
    name: 'antifoam emulsion',
    role: 'antifoam',
    aliases: ['antifoam', 'silicone antifoam emulsion', 'simethicone emulsion'],
    figures: { density: recalled(1, { low: 0.98, high: 1.02, temperatureCelsius: 25 }) },
    notes: [
      'taken as one of 10 per cent active: 100 mg/kg of the emulsion is 10 mg/kg of silicone',
      'emulsions of 20 and 30 per cent are sold too: write your own with what it contains',
      'more than is needed makes haze, an oil ring or spots (from memory)',
    ],
  },
  {
    name: 'simethicone',
    role: 'antifoam',
    aliases: ['polydimethylsiloxane', 'dimethylpolysiloxane', 'silicone antifoam', 'dimeticone'],
    cas: '9006-65-9',
    eNumber: 'E 900',
    figures: { density: recalled(0.97, { temperatureCelsius: 25 }) },
    notes: ['neat; an emulsion works better spread and is what is dosed'],
  },
];

const bitters: readonly Ingredient[] = [
  {
    name: 'caffeine',
    role: 'other',
    aliases: ['caffeine anhydrous'],
    cas: '58-08-2',
    formula: 'C8H10N4O2',
    figures: {
      'molar mass': molarMass(194.194),
      'water solubility': recalled(21_600, { temperatureCelsius: 25 }),
    },
    notes: ['pure caffeine is a poison in spoonfuls: weigh it as a stock solution'],
  },
  {
    name: 'quinine',
    role: 'other',
    aliases: ['quinine base'],
    cas: '130-95-0',
    formula: 'C20H24N2O2',
    figures: { 'molar mass': molarMass(324.424) },
    notes: ['the base, in which published figures for drinks are given; what is sold is mostly a salt of it'],
  },
  {
    name: 'quinine hydrochloride dihydrate',
    role: 'other',
    aliases: ['quinine hydrochloride'],
    cas: '6119-47-7',
    formula: 'C20H24N2O2.HCl.2H2O',
    figures: { 'molar mass': molarMass(396.91) },
    notes: ['1 g holds 0.817 g of quinine'],
  },
  {
    name: 'quinine sulfate dihydrate',
    role: 'other',
    aliases: ['quinine sulfate', 'quinine sulphate'],
    cas: '6119-70-6',
    formula: '2C20H24N2O2.H2SO4.2H2O',
    figures: { 'molar mass': molarMass(782.95) },
    notes: ['1 g holds 0.829 g of quinine'],
  },
];

const weightingAgents: readonly Ingredient[] = [
  {
    name: 'ester gum',
    role: 'oil',
    aliases: ['glycerol ester of wood rosin', 'glyceryl abietate'],
    cas: '8050-30-4',
    eNumber: 'E 445',
    figures: { density: recalled(1.08, { temperatureCelsius: 25 }) },
    notes: ['dissolved in the oil to bring its density near that of the drink'],
  },
  {
    name: 'sucrose acetate isobutyrate',
    role: 'oil',
    searchWords: ['SAIB'],
    cas: '126-13-6',
    eNumber: 'E 444',
    formula: 'C40H62O19',
    figures: { density: recalled(1.146, { temperatureCelsius: 25 }), 'molar mass': molarMass(846.917) },
    notes: ['dissolved in the oil to bring its density near that of the drink'],
  },
];

const protectors: readonly Ingredient[] = [
  {
    name: 'calcium disodium EDTA',
    role: 'other',
    cas: '62-33-9',
    eNumber: 'E 385',
    formula: 'C10H12CaN2Na2O8',
    figures: { 'molar mass': molarMass(374.27) },
  },
  {
    name: 'alpha-tocopherol',
    role: 'other',
    aliases: ['tocopherol', 'vitamin E'],
    cas: '59-02-9',
    eNumber: 'E 307',
    formula: 'C29H50O2',
    figures: { density: recalled(0.95, { temperatureCelsius: 25 }), 'molar mass': molarMass(430.717) },
    notes: ['an antioxidant for the oil phase'],
  },
  {
    name: 'beta-cyclodextrin',
    role: 'other',
    cas: '7585-39-9',
    eNumber: 'E 459',
    formula: 'C42H70O35',
    figures: { 'molar mass': molarMass(1134.987), 'apparent density': recalled(1.6) },
  },
];

const colours: readonly Ingredient[] = [
  {
    name: 'beta-carotene',
    role: 'colour',
    cas: '7235-40-7',
    eNumber: 'E 160a',
    formula: 'C40H56',
    figures: { 'molar mass': molarMass(536.888) },
    notes: ['dissolves in oil; sold for drinks as an emulsion'],
  },
  {
    name: 'caramel colour',
    role: 'colour',
    cas: '8028-89-5',
    eNumber: 'E 150',
    figures: { density: recalled(1.33, { temperatureCelsius: 20 }) },
  },
  {
    name: 'anthocyanin extract',
    role: 'colour',
    aliases: ['anthocyanins', 'grape skin extract'],
    eNumber: 'E 163',
    figures: {},
  },
  { name: 'paprika extract', role: 'colour', aliases: ['paprika oleoresin'], eNumber: 'E 160c', figures: {} },
  {
    name: 'riboflavin',
    role: 'colour',
    aliases: ['vitamin B2'],
    cas: '83-88-5',
    eNumber: 'E 101',
    formula: 'C17H20N4O6',
    figures: { 'molar mass': molarMass(376.369) },
  },
  {
    name: 'curcumin',
    role: 'colour',
    aliases: ['turmeric extract'],
    cas: '458-37-7',
    eNumber: 'E 100',
    formula: 'C21H20O6',
    figures: { 'molar mass': molarMass(368.385) },
  },
];

export const antifoamAndOthers: readonly Ingredient[] = [
  ...antifoams,
  ...bitters,
  ...weightingAgents,
  ...protectors,
  ...colours,
];
