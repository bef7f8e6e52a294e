/** What a cell says, as the ledger writes it; what is wrong with it is a fault of the cell. */

import { isBareNumber, parseNumber } from '../../calc/number.ts';
import { parseAmount } from '../../calc/parse-amount.ts';
import { parseQuantity } from '../../calc/parse-quantity.ts';
import { type Parsed, parsed, refused } from '../../problem.ts';
import { lookUp } from '../../reference/look-up.ts';
import { nearestNames } from '../../reference/name.ts';
import { looks } from '../cards.ts';
import { readTime, type TimeZone } from '../times.ts';
import { longestCell } from './csv-read.ts';
import { type ColumnPath, observedKinds } from './map-path.ts';

const hidden = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/u;
const highestScore = 5;

/** Without blanks around it, and without the apostrophe that keeps a spreadsheet from reckoning. */
export const plainCell = (text: string): string =>
  text
    .trim()
    .replace(/^'(?=[=+\-@])/u, '')
    .replace(/\r\n?/gu, '\n');

/** The text of a cell that holds something. */
export function cellText(text: string, path: ColumnPath, zone: TimeZone | undefined): Parsed<string> {
  if (text.length > longestCell)
    return refused('cell-too-long', `the cell holds ${text.length} characters`, `keep it to ${longestCell}`);
  const sign = hidden.exec(text)?.[0];
  if (sign !== undefined) {
    const code = sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
    return refused(
      'hidden-sign',
      `a sign that is not seen stands in the cell (U+${code})`,
      'type the cell again',
    );
  }
  if (path.kind === 'item') return itemText(text, path);
  if (path.kind === 'observation') return observedText(text, path);
  if (path.kind !== 'fact' || path.key !== 'made') return parsed(text);
  const time = readTime(text, zone);
  return time.ok ? parsed(text) : time;
}

type Item = Extract<ColumnPath, { readonly kind: 'item' }>;
type Observed = Extract<ColumnPath, { readonly kind: 'observation' }>;

/** A bare number gets the unit of its column; one that is typed with a unit keeps its own. */
const withUnit = (text: string, unit: string | undefined): string =>
  unit !== undefined && isBareNumber(text) ? `${text} ${unit}` : text;

function itemText(text: string, { part, unit }: Item): Parsed<string> {
  if (part === 'lot' || part === 'note') return parsed(text);
  const whole = withUnit(text, unit);
  if (part === 'weighed') {
    const mass = parseQuantity(whole, ['mass']);
    return mass.ok ? parsed(whole) : mass;
  }
  const typed = part === 'made up' && !/^to\s/iu.test(whole) ? `to ${whole}` : whole;
  const amount = parseAmount(typed);
  return amount.ok ? parsed(typed) : amount;
}

function observedText(text: string, { fact, isTaste, unit }: Observed): Parsed<string> {
  const kinds = isTaste ? 'number' : lookUp(observedKinds, fact);
  if (kinds === undefined || kinds === 'words') return parsed(text);
  if (kinds === 'looks') return lookText(text);
  if (kinds !== 'number') {
    const whole = withUnit(text, unit);
    const quantity = parseQuantity(whole, kinds);
    return quantity.ok ? parsed(whole) : quantity;
  }
  const number = parseNumber(text);
  if (!number.ok) return number;
  return isTaste && number.value > highestScore
    ? refused('bad-score', `"${text}" is not a score`, `write a number from 0 to ${highestScore}`)
    : parsed(text);
}

function lookText(text: string): Parsed<string> {
  const words = text.split(/[,;+\n]/u).map((word) => word.trim().toLowerCase());
  const typed = words.filter((word) => word !== '');
  const unknown = typed.find((word) => !looks.some((look) => look === word));
  if (unknown === undefined) return parsed([...new Set(typed)].join(', '));
  const [near] = nearestNames(unknown, looks, 1);
  return refused(
    'unknown-look',
    `"${unknown}" is not a look`,
    near === undefined ? `write ${looks.join(', ')}` : `write ${near}`,
  );
}
