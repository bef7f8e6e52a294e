/** Protons that an acid gives off up to pH 8.1 or 8.2, by which titratable acidity is turned into grams. */

export const titrationAcids: Readonly<
  Record<string, { readonly formula: string; readonly protons: number }>
> = {
  'citric acid': { formula: 'C6H8O7', protons: 3 },
  'citric acid monohydrate': { formula: 'C6H8O7.H2O', protons: 3 },
  'malic acid': { formula: 'C4H6O5', protons: 2 },
  'tartaric acid': { formula: 'C4H6O6', protons: 2 },
  'lactic acid': { formula: 'C3H6O3', protons: 1 },
  'acetic acid': { formula: 'C2H4O2', protons: 1 },
  // To pH 9; at pH 8.2 it has given off about 1.9.
  'phosphoric acid': { formula: 'H3PO4', protons: 2 },
  'fumaric acid': { formula: 'C4H4O4', protons: 2 },
  'adipic acid': { formula: 'C6H10O4', protons: 2 },
  'succinic acid': { formula: 'C4H6O4', protons: 2 },
  'ascorbic acid': { formula: 'C6H8O6', protons: 1 },
};

export const titrationSource = 'citrus-titration';
