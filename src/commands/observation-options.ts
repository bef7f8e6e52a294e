/** What can be observed, as options: one for each fact of an observation. */

import type { Dimension } from '../calc/quantity.ts';
import type { OptionSpec } from './command.ts';

export interface ObservedFact {
  /** The option; the key in the file is the same with spaces for dashes. */
  readonly name: string;
  readonly placeholder: string;
  readonly help: string;
  /** An amount of one of these kinds; `number` for a plain number; left out for text. */
  readonly accepts?: readonly (Dimension | 'number')[];
  /** The unit to offer where none is typed. */
  readonly unit?: string;
  /** The only words that it may be. */
  readonly words?: readonly string[];
  /** What it names, for completion. */
  readonly takes?: OptionSpec['takes'];
  readonly many?: boolean;
}

export const observedFacts: readonly ObservedFact[] = [
  {
    name: 'look',
    placeholder: 'LOOK',
    help: 'clear, bluish, hazy, cloudy, specks, ring, sediment, gel or broken; several with commas',
    many: true,
  },
  {
    name: 'temperature',
    placeholder: 'TEMP',
    help: 'temperature of the sample, such as 21 C',
    accepts: ['temperature'],
    unit: 'C',
  },
  { name: 'turbidity', placeholder: 'NTU', help: 'such as 3.2 NTU', accepts: ['turbidity'] },
  { name: 'droplet', placeholder: 'SIZE', help: 'droplet diameter, such as 45 nm', accepts: ['length'] },
  { name: 'ph', placeholder: 'PH', help: 'such as 3.05', accepts: ['number'] },
  {
    name: 'acid',
    placeholder: 'ACID',
    help: 'titratable acid as citric, such as "4.6 g/L"',
    accepts: ['mass per volume'],
  },
  { name: 'brix', placeholder: 'BRIX', help: 'such as 9.2', accepts: ['number'] },
  {
    name: 'density',
    placeholder: 'DENSITY',
    help: 'such as "1.036 g/mL"',
    accepts: ['mass per volume'],
    unit: 'g/mL',
  },
  { name: 'mass', placeholder: 'MASS', help: 'of the sample, such as 49.2 g', accepts: ['mass'] },
  { name: 'co2', placeholder: 'VOLUMES', help: 'such as 3.4 vol', accepts: ['carbonation'] },
  {
    name: 'head',
    placeholder: 'HEIGHT',
    help: 'height of the foam, such as 18 mm',
    accepts: ['length'],
    unit: 'mm',
  },
  {
    name: 'head-life',
    placeholder: 'TIME',
    help: 'until the foam is gone, such as 40 s',
    accepts: ['time'],
    unit: 's',
  },
  { name: 'taste', placeholder: 'WORD=SCORE', help: 'such as soapy=2, from 0 to 5', many: true },
  { name: 'served', placeholder: 'HOW', help: 'how it was tasted', takes: [] },
  { name: 'against', placeholder: 'WHAT', help: 'what it was tasted against', takes: ['trial'] },
  {
    name: 'blind',
    placeholder: 'yes|no',
    help: 'yes where the taster did not know which was which',
    words: ['yes', 'no'],
  },
  { name: 'smell', placeholder: 'TEXT', help: 'in your own words' },
  { name: 'colour', placeholder: 'TEXT', help: 'in your own words' },
  { name: 'viewed', placeholder: 'HOW', help: 'against what, in which light', takes: [] },
  { name: 'photo', placeholder: 'FILE', help: 'a picture; copied into photos/ unless it is in the ledger' },
  { name: 'by', placeholder: 'WHO', help: 'who looked' },
  { name: 'note', placeholder: 'TEXT', help: 'anything else' },
  { name: 'ended', placeholder: 'WHY', help: 'why looking stops: spilled, drunk, mould …' },
];

export const observationOptions: readonly OptionSpec[] = observedFacts.map((fact) => ({
  name: fact.name,
  placeholder: fact.placeholder,
  help: fact.help,
  many: fact.many ?? false,
  isAmount: fact.accepts !== undefined,
  ...(fact.takes ? { takes: fact.takes } : {}),
  ...(fact.words ? { choices: fact.words } : {}),
}));
