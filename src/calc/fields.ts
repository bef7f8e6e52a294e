/**
 * The inputs of a calculator as data: what may be typed, what it becomes, how it is echoed. Options, help,
 * JSON and completion are all made from these.
 */

import { type Parsed, type Problem, parsed, refused } from '../problem.ts';
import type { Entry, Row } from './answer.ts';
import type { Book } from './book.ts';
import { isBareNumber, parseNumber } from './number.ts';
import { trimmedNumber } from './number-text.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Dimension, Quantity } from './quantity.ts';
import { parseRatio, parseThrow, type Ratio, type Throw } from './ratio.ts';
import { amountMended } from './usual-unit.ts';

export interface FieldContext {
  readonly book: Book;
}

export interface FieldData {
  /** What stands for the value in help: `MASS`, `ITEM`. */
  readonly placeholder: string;
  readonly help: string;
  readonly many: boolean;
  readonly required: boolean;
  /** True where the value is an amount, so that `--batch 50 g` may be typed without quotes. */
  readonly isAmount: boolean;
  /** Typed alone, without a value. */
  readonly isFlag?: boolean;
  /** Typed without an option name, as the words after the command. */
  readonly positional: boolean;
  /** The only words that it may be. */
  readonly choices?: readonly string[];
  /** What it names, where its placeholder does not tell. */
  readonly takes?: readonly 'ingredient'[];
}

export interface Field<T> extends FieldData {
  readonly read: (texts: readonly string[], context: FieldContext) => Parsed<T>;
  // Methods, not properties, so that a field of any T stands in a list of fields.
  show(value: T): Entry | readonly Row[] | readonly string[] | undefined;
  /** What the value comes to in inner units, for the mark that tells a stale answer. */
  basis(value: T): string;
  /** What the person should know of how it was read. */
  remarks?(value: T): readonly Problem[];
}

export interface FieldWords {
  readonly help: string;
  readonly placeholder?: string;
  readonly positional?: boolean;
}

/** Ten digits, so that the last bits of a double don't make an answer look stale. */
export const steady = (value: number): string => value.toPrecision(10);

export const leaf = (quantity: Quantity): Entry => ({ value: quantity.value, unit: quantity.unit });

export function fieldOfOne<T>(
  words: FieldWords & { readonly placeholder: string; readonly isAmount: boolean },
  readOne: (text: string, context: FieldContext) => Parsed<T>,
  show: (value: T) => Entry,
  basis: (value: T) => string,
): Field<T | undefined> {
  return {
    placeholder: words.placeholder,
    help: words.help,
    many: false,
    required: false,
    isAmount: words.isAmount,
    positional: words.positional ?? false,
    read: (texts, context) => {
      const [text, second] = texts;
      if (second !== undefined) {
        return refused('given-twice', `"${text}" and "${second}" are both given`, 'give it once');
      }
      return text === undefined ? parsed(undefined) : readOne(text, context);
    },
    show: (value) => (value === undefined ? undefined : show(value)),
    basis: (value) => (value === undefined ? '' : basis(value)),
  };
}

/** A field that the answer can't do without. */
export function required<T>(field: Field<T | undefined>): Field<T> {
  return {
    ...field,
    required: true,
    read: (texts, context) => {
      const result = field.read(texts, context);
      if (!result.ok) return result;
      if (result.value === undefined)
        return refused('missing', 'nothing is given', `give ${field.placeholder}`);
      return parsed(result.value);
    },
  };
}

interface QuantityWords extends FieldWords {
  readonly accepts: readonly Dimension[];
  /** The unit that a bare number has, where the trade says none: volumes of CO2. */
  readonly bareUnit?: string;
  /** The unit to show to who typed none, where another than the first of its kind is meant. */
  readonly usualUnit?: string;
}

export function quantityField(words: QuantityWords): Field<Quantity | undefined> {
  const { bareUnit, usualUnit, accepts } = words;
  return fieldOfOne<Quantity>(
    { placeholder: 'AMOUNT', ...words, isAmount: true },
    (text) => {
      const read = parseQuantity(
        bareUnit && isBareNumber(text.trim()) ? `${text} ${bareUnit}` : text,
        accepts,
      );
      if (read.ok || read.fault.code !== 'no-unit') return read;
      if (usualUnit === undefined)
        return { ok: false, fault: amountMended(read.fault, text, words.help, accepts) };
      return { ok: false, fault: { ...read.fault, hint: `write ${text.trim()} ${usualUnit}` } };
    },
    leaf,
    (quantity) => `${steady(quantity.inner)} ${quantity.dimension}`,
  );
}

export function numberField(words: FieldWords & { readonly signed?: boolean }): Field<number | undefined> {
  return fieldOfOne<number>(
    { placeholder: 'NUMBER', ...words, isAmount: false },
    (text) => parseNumber(text, { signed: words.signed ?? false }),
    (value) => ({ value, unit: '' }),
    steady,
  );
}

/** One word of a few. */
export function choiceField<Choice extends string>(
  words: FieldWords & { readonly choices: readonly Choice[] },
): Field<Choice | undefined> {
  const field = fieldOfOne<Choice>(
    { placeholder: 'NAME', ...words, help: `${words.help}: ${words.choices.join(', ')}`, isAmount: false },
    (text) => {
      const choice = words.choices.find((one) => one === text.trim().toLowerCase());
      return choice === undefined
        ? refused(
            'unknown-choice',
            `"${text}" is not a word that is known here`,
            `say ${words.choices.join(', ')}`,
          )
        : parsed(choice);
    },
    (choice) => choice,
    (choice) => choice,
  );
  return { ...field, choices: words.choices };
}

export function ratioField(words: FieldWords): Field<Ratio | undefined> {
  return fieldOfOne<Ratio>(
    { placeholder: 'A:B', ...words, isAmount: false },
    (text) => parseRatio(text),
    (ratio) => `${trimmedNumber(ratio.left)}:${trimmedNumber(ratio.right)}`,
    (ratio) => steady(ratio.left / ratio.right),
  );
}

export function throwField(words: FieldWords): Field<Throw | undefined> {
  return fieldOfOne<Throw>(
    { placeholder: '1+N', ...words, isAmount: false },
    (text) => parseThrow(text),
    (value) => value.written,
    (value) => `${value.waterParts / value.syrupParts}`,
  );
}

export function several<T>(
  words: FieldWords & { readonly placeholder: string; readonly isAmount: boolean },
  readOne: (text: string, context: FieldContext) => Parsed<T>,
  show: (values: readonly T[]) => readonly Row[] | readonly string[],
  basis: (value: T) => string,
): Field<readonly T[]> {
  return {
    placeholder: words.placeholder,
    help: words.help,
    many: true,
    required: false,
    isAmount: words.isAmount,
    positional: words.positional ?? false,
    read: (texts, context) => {
      const values: T[] = [];
      for (const text of texts) {
        const one = readOne(text, context);
        if (!one.ok) return one;
        values.push(one.value);
      }
      return parsed(values);
    },
    show,
    basis: (values) => values.map(basis).join('; '),
  };
}
