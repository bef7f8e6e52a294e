/** Readings of a person's own meter: `30 nm, 60 mg/L, 1.1 NTU`. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { type Field, several } from '../fields.ts';
import { parseQuantity } from '../parse-quantity.ts';
import type { Quantity } from '../quantity.ts';

export interface OwnReading {
  readonly droplet: Quantity;
  /** Of the oil; that of the answer where it is left out. */
  readonly dose: Quantity | undefined;
  readonly turbidity: Quantity;
  /** NTU that the model has for it, where it was taken in another drink than the one of the answer. */
  readonly modelled?: number;
}

/**
 * Input     a droplet size, the dose of oil where it is another one, and what the meter showed, with commas
 * Refuses   what lacks a size or a reading, or says one of them twice
 * Example   parseOwnReading('30 nm, 1.1 NTU')
 */
export function parseOwnReading(text: string): Parsed<OwnReading> {
  const found: Partial<Record<'droplet' | 'dose' | 'turbidity', Quantity>> = {};
  for (const part of text.split(/,|;/u)) {
    const quantity = parseQuantity(part, ['length', 'mass per volume', 'share', 'turbidity']);
    if (!quantity.ok) return quantity;
    const { dimension } = quantity.value;
    const key = dimension === 'length' ? 'droplet' : dimension === 'turbidity' ? 'turbidity' : 'dose';
    if (found[key])
      return refused(
        'given-twice',
        `"${text}" says the ${key} twice`,
        'give one reading at a time: "30 nm, 1.1 NTU"',
      );
    found[key] = quantity.value;
  }
  const { droplet, dose, turbidity } = found;
  if (droplet && turbidity) return parsed({ droplet, dose, turbidity });
  return refused(
    'incomplete-reading',
    `"${text.trim()}" lacks ${droplet ? 'what the meter showed' : 'the size of the droplets'}`,
    'write both, such as "30 nm, 1.1 NTU", with the dose of oil between them where it is another one',
  );
}

export const ownReadingsField = ({ help }: { readonly help: string }): Field<readonly OwnReading[]> =>
  several<OwnReading>(
    { help, placeholder: 'READING', isAmount: false },
    parseOwnReading,
    (readings) => readings.map(written),
    written,
  );

const written = ({ droplet, dose, turbidity }: OwnReading): string =>
  [droplet, dose, turbidity].flatMap((one) => (one ? [one.written] : [])).join(', ');
