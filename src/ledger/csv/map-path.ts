/** Where the cells of a column go, in the words of the mapping file. */

import { amountKinds } from '../../calc/parse-amount.ts';
import { parseQuantity } from '../../calc/parse-quantity.ts';
import type { Dimension } from '../../calc/quantity.ts';
import { type Parsed, parsed, refused } from '../../problem.ts';
import { lookUp } from '../../reference/look-up.ts';
import { nearestNames } from '../../reference/name.ts';

/** Facts of a trial, in the order in which they are written. */
export const factKeys = ['title', 'made', 'by', 'why', 'series', 'concluded', 'note'] as const;
export type FactKey = (typeof factKeys)[number];

export const itemParts = ['amount', 'made up', 'weighed', 'lot', 'note'] as const;
export type ItemPart = (typeof itemParts)[number];

/** What may be observed, with the kinds of its figure; `words` and `number` are no quantities. */
export const observedKinds: Readonly<Record<string, readonly Dimension[] | 'looks' | 'number' | 'words'>> = {
  look: 'looks',
  temperature: ['temperature'],
  turbidity: ['turbidity'],
  droplet: ['length'],
  ph: 'number',
  acid: ['mass per volume', 'moles per volume', 'share'],
  brix: 'number',
  density: ['mass per volume'],
  mass: ['mass'],
  co2: ['carbonation', 'mass per volume'],
  head: ['length'],
  'head life': ['time'],
  smell: 'words',
  colour: 'words',
  viewed: 'words',
  by: 'words',
  note: 'words',
  ended: 'words',
};

export type ColumnPath =
  | { readonly kind: 'left out' }
  | { readonly kind: 'fact'; readonly key: FactKey }
  | { readonly kind: 'step'; readonly stage: string }
  | {
      readonly kind: 'item';
      readonly stage: string;
      readonly item: string;
      readonly part: ItemPart;
      readonly unit: string | undefined;
    }
  | {
      readonly kind: 'observation';
      /** A key of `observedKinds`, or the word of a taste. */
      readonly fact: string;
      readonly isTaste: boolean;
      readonly unit: string | undefined;
      readonly ageSeconds: number;
    };

export const pathHint =
  'write title, made, stages.emulsion.water in g, "stages.emulsion, process", observations look at 7 d, or leave out';

/**
 * One path.
 *
 * Example   parsePath('stages.emulsion.sweet orange oil in g') is the item of a stage, its cells in g
 */
export function parsePath(typed: string): Parsed<ColumnPath> {
  const text = typed.trim().replace(/\s+/gu, ' ');
  if (/^(?:leave out|left out)$/iu.test(text)) return parsed({ kind: 'left out' });
  const fact = factKeys.find((key) => key === text.toLowerCase());
  if (fact) return parsed({ kind: 'fact', key: fact });
  if (/^stages?\./iu.test(text)) return stagePath(text);
  if (/^observations? /iu.test(text)) return observationPath(text);
  if (/^(?:trial|number)$/iu.test(text))
    return refused(
      'bad-path',
      `"${text}" can't be told`,
      'trials get the next free numbers; map the old one to note',
    );
  const [near] = nearestNames(text, factKeys, 1);
  return refused('bad-path', `"${text}" is no path`, near === undefined ? pathHint : `did you mean ${near}?`);
}

function stagePath(text: string): Parsed<ColumnPath> {
  const [, stage = '', , rest = ''] = /^stages?\.([^.,]+)(\.(.+)|, ?process)$/iu.exec(text) ?? [];
  if (stage.trim() === '')
    return refused(
      'bad-path',
      `"${text}" names no item`,
      'write stages.STAGE.ITEM, or "stages.STAGE, process"',
    );
  if (rest === '') return parsed({ kind: 'step', stage: stage.trim() });
  const [, named = '', tail] = /^(.*?)(?:, ?(made up|weighed|lot|note))?$/iu.exec(rest) ?? [];
  const part = itemParts.find((one) => one === tail?.toLowerCase()) ?? 'amount';
  const { item, unit } = withUnit(named, part);
  if (item === '') return refused('bad-path', `"${text}" names no item`, 'write stages.STAGE.ITEM');
  if (unit !== undefined && (part === 'lot' || part === 'note'))
    return refused('bad-path', `"${text}": a ${part} has no unit`, `leave out "in ${unit}"`);
  return parsed({ kind: 'item', stage: stage.trim(), item, part, unit });
}

/** `sweet orange oil in g`; what is no unit of an amount belongs to the name. */
function withUnit(
  named: string,
  part: ItemPart,
): { readonly item: string; readonly unit: string | undefined } {
  const [, item = '', unit = ''] = /^(.+) in (.+)$/iu.exec(named) ?? [];
  const kinds: readonly Dimension[] =
    part === 'weighed' ? ['mass'] : part === 'made up' ? ['mass', 'volume'] : amountKinds;
  const drinkUnit = unit.replace(/ in drink$/iu, '');
  if (unit !== '' && parseQuantity(`1 ${drinkUnit}`, kinds).ok) return { item: item.trim(), unit };
  // `citric acid in g/L in drink`: the last "in" belongs to the unit.
  const [, first = '', second = ''] = /^(.+?) in (.+ in drink)$/iu.exec(named) ?? [];
  if (second !== '' && parseQuantity(`1 ${second.replace(/ in drink$/iu, '')}`, kinds).ok)
    return { item: first.trim(), unit: second };
  return { item: named.trim(), unit: undefined };
}

function observationPath(text: string): Parsed<ColumnPath> {
  const [, what = '', age = ''] = /^observations? (.+?) at (.+)$/iu.exec(text) ?? [];
  if (age === '')
    return refused(
      'bad-path',
      `"${text}" says not when`,
      'write how long after the make: observations look at 7 d',
    );
  const time = parseQuantity(age, ['time']);
  if (!time.ok) return refused('bad-path', `"${text}": ${time.fault.message}`, time.fault.hint);
  const [, named = '', unit] = /^(.+?)(?: in (.+))?$/iu.exec(what) ?? [];
  const taste = /^taste (.+)$/iu.exec(named)?.[1];
  const fact = taste ?? named.toLowerCase();
  const kinds = taste === undefined ? lookUp(observedKinds, fact) : 'number';
  if (!Object.hasOwn(observedKinds, fact) && taste === undefined) {
    const known = Object.keys(observedKinds);
    const [near] = nearestNames(fact, known, 1);
    const hint = near === undefined ? `say ${known.join(', ')} or taste WORD` : `did you mean ${near}?`;
    return refused('bad-path', `"${fact}" can't be observed`, hint);
  }
  if (unit !== undefined && (typeof kinds === 'string' || !parseQuantity(`1 ${unit}`, kinds).ok))
    return refused(
      'bad-path',
      `"${unit}" is no unit of "${fact}"`,
      'leave it out, or write the unit of the cells',
    );
  return parsed({
    kind: 'observation',
    fact,
    isTaste: taste !== undefined,
    unit,
    ageSeconds: time.value.inner,
  });
}
