/** Substances of the pH standards that nobody drinks. */
import type { AcidSubstances } from './acid-systems.ts';

export const standardSubstances: AcidSubstances = {
  'potassium tetroxalate dihydrate': {
    formula: 'KH3C4O8.2H2O',
    acids: { oxalic: 2 },
    ions: { potassium: 1 },
    standardOnly: true,
  },
  'oxalic acid': { formula: 'C2H2O4', acids: { oxalic: 1 }, ions: {}, standardOnly: true },
  'oxalic acid dihydrate': { formula: 'C2H2O4.2H2O', acids: { oxalic: 1 }, ions: {}, standardOnly: true },
  'potassium hydrogen phthalate': {
    formula: 'KC8H5O4',
    acids: { phthalic: 1 },
    ions: { potassium: 1 },
    standardOnly: true,
  },
  'borax decahydrate': {
    formula: 'Na2B4O7.10H2O',
    acids: { boric: 4 },
    ions: { sodium: 2 },
    standardOnly: true,
  },
  'boric acid': { formula: 'H3BO3', acids: { boric: 1 }, ions: {}, standardOnly: true },
};

export const standardAliases: Readonly<Record<string, string>> = {
  'potassium tetroxalate': 'potassium tetroxalate dihydrate',
  borax: 'borax decahydrate',
  'sodium tetraborate decahydrate': 'borax decahydrate',
};

const names = new Set([...Object.keys(standardSubstances), ...Object.keys(standardAliases)]);

/** A substance that is known for setting a pH meter and is no food. */
export const isMeterStandard = (name: string): boolean => names.has(name.toLowerCase());
