/** A number with its unit, as a person typed it and as the arithmetic uses it. */

/**
 * What a unit measures, with the inner unit in which `Quantity.inner` counts:
 * mass g, volume mL, count 1 (drops, parts), shares 0 to 1, mass per volume g/mL, volume per volume mL/mL,
 * moles per volume mol/mL, moles per mass mol/g, temperature K, time s, pressure Pa, length m,
 * turbidity NTU, stirring rpm, carbonation volumes of CO2, alkalinity mg/L as CaCO3,
 * price per mass currency/g, price per volume currency/mL.
 */
export type Dimension =
  | 'mass'
  | 'volume'
  | 'drops'
  | 'parts'
  | 'share'
  | 'share w/v'
  | 'share v/v'
  | 'mass per volume'
  | 'volume per volume'
  | 'moles per volume'
  | 'moles per mass'
  | 'temperature'
  | 'time'
  | 'pressure'
  | 'length'
  | 'turbidity'
  | 'stirring'
  | 'carbonation'
  | 'alkalinity'
  | 'price per mass'
  | 'price per volume';

export interface Quantity {
  /** The number as typed, in `unit`. */
  readonly value: number;
  /** The canonical symbol of the unit, such as `g`, `mL`, `ppm`, `% w/v`, `g/L`. */
  readonly unit: string;
  readonly dimension: Dimension;
  /** The same in the inner unit of the dimension. */
  readonly inner: number;
  /** The text as typed, spaces trimmed. */
  readonly written: string;
}

/** How much of an item goes into a stage. */
export interface Amount {
  readonly quantity: Quantity;
  /** `to 50 g`: make up to this much of the stage. */
  readonly makeUp: boolean;
  /** `4.5 g/L in drink`: counted in the finished drink, not in the stage where it is weighed. */
  readonly inDrink: boolean;
  readonly written: string;
}
