/**
 * The units that may be typed, each by its exact definition.
 *
 * The inner unit of a dimension is g, mL, 1 (drops, parts), mass fraction, g/mL, mL/mL, mol/mL, mol/g, K, s, Pa, m,
 * NTU, rpm, volumes of CO2, mg/L as CaCO3. A typed value becomes (value + offset) * times / per of it. `times` and
 * `per` are whole numbers (decimal definitions multiplied out), so no factor is rounded.
 *
 * Source    NIST SP 811 (2008), appendix B.8 and its notes: pound 0.453 592 37 kg, inch 0.0254 m, US gallon
 *           231 in3, pound-force 4.448 221 615 260 5 N, atmosphere 101 325 Pa; UK gallon 4.546 09 L.
 *           From memory; the whole table is checked against GNU units in the tests.
 * Source    metric teaspoon 5 mL, tablespoon 15 mL, cup 250 mL: common practice, no source.
 */

export interface UnitFactor {
  /** The one way in which the unit is printed. */
  readonly symbol: string;
  readonly dimension: string;
  readonly times: number;
  readonly per: number;
  /** Added to the typed value first: the zero of the Celsius and Fahrenheit scales. */
  readonly offset?: number;
  /** Other spellings that people type, with the same meaning. */
  readonly spellings?: readonly string[];
}

export const unitFactors = [
  { symbol: 'ng', dimension: 'mass', times: 1, per: 1e9, spellings: ['nanogram', 'nanograms'] },
  { symbol: 'ug', dimension: 'mass', times: 1, per: 1e6, spellings: ['mcg', 'microgram', 'micrograms'] },
  { symbol: 'mg', dimension: 'mass', times: 1, per: 1000, spellings: ['milligram', 'milligrams'] },
  { symbol: 'g', dimension: 'mass', times: 1, per: 1, spellings: ['gram', 'grams', 'gramme', 'grammes'] },
  { symbol: 'kg', dimension: 'mass', times: 1000, per: 1, spellings: ['kilogram', 'kilograms'] },
  { symbol: 't', dimension: 'mass', times: 1e6, per: 1, spellings: ['tonne', 'tonnes'] },
  { symbol: 'lb', dimension: 'mass', times: 45359237, per: 1e5, spellings: ['lbs', 'pound', 'pounds'] },
  { symbol: 'oz av', dimension: 'mass', times: 45359237, per: 16e5, spellings: ['oz avdp', 'av oz'] },

  {
    symbol: 'uL',
    dimension: 'volume',
    times: 1,
    per: 1000,
    spellings: ['ul', 'mcL', 'microlitre', 'microlitres'],
  },
  {
    symbol: 'mL',
    dimension: 'volume',
    times: 1,
    per: 1,
    spellings: ['ml', 'cc', 'cm3', 'millilitre', 'millilitres'],
  },
  { symbol: 'cL', dimension: 'volume', times: 10, per: 1, spellings: ['cl', 'centilitre', 'centilitres'] },
  { symbol: 'dL', dimension: 'volume', times: 100, per: 1, spellings: ['dl', 'decilitre', 'decilitres'] },
  {
    symbol: 'L',
    dimension: 'volume',
    times: 1000,
    per: 1,
    spellings: ['l', 'litre', 'litres', 'liter', 'liters'],
  },
  { symbol: 'hL', dimension: 'volume', times: 1e5, per: 1, spellings: ['hl', 'hectolitre', 'hectolitres'] },
  { symbol: 'm3', dimension: 'volume', times: 1e6, per: 1 },
  { symbol: 'US tsp', dimension: 'volume', times: 492892159375, per: 1e11 },
  { symbol: 'US tbsp', dimension: 'volume', times: 1478676478125, per: 1e11 },
  { symbol: 'US fl oz', dimension: 'volume', times: 295735295625, per: 1e10, spellings: ['US floz'] },
  { symbol: 'US cup', dimension: 'volume', times: 2365882365, per: 1e7, spellings: ['US cups'] },
  { symbol: 'US pint', dimension: 'volume', times: 473176473, per: 1e6, spellings: ['US pt', 'US pints'] },
  { symbol: 'US qt', dimension: 'volume', times: 946352946, per: 1e6, spellings: ['US quart', 'US quarts'] },
  {
    symbol: 'US gal',
    dimension: 'volume',
    times: 3785411784,
    per: 1e6,
    spellings: ['US gallon', 'US gallons'],
  },
  {
    symbol: 'imp fl oz',
    dimension: 'volume',
    times: 284130625,
    per: 1e7,
    spellings: ['imp floz', 'UK fl oz'],
  },
  { symbol: 'imp pint', dimension: 'volume', times: 56826125, per: 1e5, spellings: ['imp pt', 'UK pint'] },
  { symbol: 'imp qt', dimension: 'volume', times: 11365225, per: 1e4, spellings: ['imp quart', 'UK quart'] },
  { symbol: 'imp gal', dimension: 'volume', times: 454609, per: 100, spellings: ['imp gallon', 'UK gal'] },
  { symbol: 'metric tsp', dimension: 'volume', times: 5, per: 1 },
  { symbol: 'metric tbsp', dimension: 'volume', times: 15, per: 1 },
  { symbol: 'metric cup', dimension: 'volume', times: 250, per: 1, spellings: ['metric cups'] },

  { symbol: 'drops', dimension: 'drops', times: 1, per: 1, spellings: ['drop'] },
  { symbol: 'parts', dimension: 'parts', times: 1, per: 1, spellings: ['part'] },

  {
    symbol: '%',
    dimension: 'share',
    times: 1,
    per: 100,
    spellings: ['% w/w', '%w/w', 'percent', 'per cent'],
  },
  { symbol: 'ppm', dimension: 'share', times: 1, per: 1e6 },
  { symbol: 'ppb', dimension: 'share', times: 1, per: 1e9 },
  { symbol: 'ppt', dimension: 'share', times: 1, per: 1e12 },
  { symbol: 'g/kg', dimension: 'share', times: 1, per: 1000 },
  { symbol: 'mg/kg', dimension: 'share', times: 1, per: 1e6 },
  { symbol: 'ug/kg', dimension: 'share', times: 1, per: 1e9 },
  { symbol: 'ng/kg', dimension: 'share', times: 1, per: 1e12 },
  { symbol: '% w/v', dimension: 'share w/v', times: 1, per: 100, spellings: ['%w/v'] },
  { symbol: '% v/v', dimension: 'share v/v', times: 1, per: 100, spellings: ['%v/v'] },

  { symbol: 'g/mL', dimension: 'mass per volume', times: 1, per: 1 },
  { symbol: 'mg/mL', dimension: 'mass per volume', times: 1, per: 1000 },
  { symbol: 'kg/L', dimension: 'mass per volume', times: 1, per: 1 },
  { symbol: 'kg/m3', dimension: 'mass per volume', times: 1, per: 1000 },
  { symbol: 'g/L', dimension: 'mass per volume', times: 1, per: 1000 },
  { symbol: 'mg/L', dimension: 'mass per volume', times: 1, per: 1e6 },
  { symbol: 'ug/L', dimension: 'mass per volume', times: 1, per: 1e9 },
  { symbol: 'ng/L', dimension: 'mass per volume', times: 1, per: 1e12 },
  { symbol: 'mL/L', dimension: 'volume per volume', times: 1, per: 1000 },
  { symbol: 'uL/L', dimension: 'volume per volume', times: 1, per: 1e6 },
  { symbol: 'mol/L', dimension: 'moles per volume', times: 1, per: 1000 },
  { symbol: 'mmol/L', dimension: 'moles per volume', times: 1, per: 1e6 },
  { symbol: 'mol/kg', dimension: 'moles per mass', times: 1, per: 1000 },
  { symbol: 'mmol/kg', dimension: 'moles per mass', times: 1, per: 1e6 },

  {
    symbol: 'C',
    dimension: 'temperature',
    times: 1,
    per: 1,
    offset: 273.15,
    spellings: ['°C', 'degC', '° C'],
  },
  {
    symbol: 'F',
    dimension: 'temperature',
    times: 5,
    per: 9,
    offset: 459.67,
    spellings: ['°F', 'degF', '° F'],
  },
  { symbol: 'K', dimension: 'temperature', times: 1, per: 1 },

  { symbol: 's', dimension: 'time', times: 1, per: 1, spellings: ['sec', 'secs', 'second', 'seconds'] },
  { symbol: 'min', dimension: 'time', times: 60, per: 1, spellings: ['mins', 'minute', 'minutes'] },
  { symbol: 'h', dimension: 'time', times: 3600, per: 1, spellings: ['hr', 'hrs', 'hour', 'hours'] },
  { symbol: 'd', dimension: 'time', times: 86400, per: 1, spellings: ['day', 'days'] },
  { symbol: 'wk', dimension: 'time', times: 604800, per: 1, spellings: ['wks', 'week', 'weeks'] },

  { symbol: 'Pa', dimension: 'pressure', times: 1, per: 1 },
  { symbol: 'kPa', dimension: 'pressure', times: 1000, per: 1 },
  { symbol: 'mbar', dimension: 'pressure', times: 100, per: 1 },
  { symbol: 'bar', dimension: 'pressure', times: 1e5, per: 1 },
  { symbol: 'psi', dimension: 'pressure', times: 44482216152605, per: 6451600000 },
  { symbol: 'atm', dimension: 'pressure', times: 101325, per: 1 },

  { symbol: 'nm', dimension: 'length', times: 1, per: 1e9 },
  { symbol: 'um', dimension: 'length', times: 1, per: 1e6, spellings: ['micron', 'microns'] },
  { symbol: 'mm', dimension: 'length', times: 1, per: 1000 },
  { symbol: 'cm', dimension: 'length', times: 1, per: 100 },
  { symbol: 'm', dimension: 'length', times: 1, per: 1 },

  { symbol: 'NTU', dimension: 'turbidity', times: 1, per: 1 },
  { symbol: 'rpm', dimension: 'stirring', times: 1, per: 1 },
  { symbol: 'vol', dimension: 'carbonation', times: 1, per: 1, spellings: ['vols', 'volumes'] },
  { symbol: 'mg/L as CaCO3', dimension: 'alkalinity', times: 1, per: 1 },
] as const satisfies readonly UnitFactor[];
