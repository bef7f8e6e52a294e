/** Acids that are weighed or poured in. Molar masses follow from the formulas. */
import type { AcidSubstances } from './acid-systems.ts';

export const acidSubstances: AcidSubstances = {
  'citric acid': { formula: 'C6H8O7', acids: { citric: 1 }, ions: {} },
  'citric acid monohydrate': { formula: 'C6H8O7.H2O', acids: { citric: 1 }, ions: {} },
  'malic acid': { formula: 'C4H6O5', acids: { malic: 1 }, ions: {} },
  'tartaric acid': { formula: 'C4H6O6', acids: { tartaric: 1 }, ions: {} },
  'lactic acid': { formula: 'C3H6O3', acids: { lactic: 1 }, ions: {} },
  'lactic acid 80 %': { formula: 'C3H6O3', acids: { lactic: 1 }, ions: {}, strength: 0.8 },
  'lactic acid 88 %': { formula: 'C3H6O3', acids: { lactic: 1 }, ions: {}, strength: 0.88 },
  'acetic acid': { formula: 'C2H4O2', acids: { acetic: 1 }, ions: {} },
  'ascorbic acid': { formula: 'C6H8O6', acids: { ascorbic: 1 }, ions: {} },
  'fumaric acid': { formula: 'C4H4O4', acids: { fumaric: 1 }, ions: {} },
  'adipic acid': { formula: 'C6H10O4', acids: { adipic: 1 }, ions: {} },
  'succinic acid': { formula: 'C4H6O4', acids: { succinic: 1 }, ions: {} },
  'gluconic acid': { formula: 'C6H12O7', acids: { gluconic: 1 }, ions: {} },
  'phosphoric acid': { formula: 'H3PO4', acids: { phosphoric: 1 }, ions: {} },
  'phosphoric acid 75 %': { formula: 'H3PO4', acids: { phosphoric: 1 }, ions: {}, strength: 0.75 },
  'phosphoric acid 80 %': { formula: 'H3PO4', acids: { phosphoric: 1 }, ions: {}, strength: 0.8 },
  'phosphoric acid 85 %': { formula: 'H3PO4', acids: { phosphoric: 1 }, ions: {}, strength: 0.85 },
  'carbon dioxide': { formula: 'CO2', acids: { carbonic: 1 }, ions: {} },
  'benzoic acid': { formula: 'C7H6O2', acids: { benzoic: 1 }, ions: {} },
  'sorbic acid': { formula: 'C6H8O2', acids: { sorbic: 1 }, ions: {} },
  'hydrochloric acid': { formula: 'HCl', acids: {}, ions: { chloride: 1 } },
};
