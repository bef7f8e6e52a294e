/** Makes a calculator of its definition: reads the inputs, runs the arithmetic, puts the units on. */

import { type Fault, fail, isProblemError, type Problem, ProblemError } from '../problem.ts';
import type { Answer, Entry, Facts, Row } from './answer.ts';
import {
  type Calculator,
  type Definition,
  type Fields,
  type FiledAnswer,
  type Given,
  optionName,
  type PlainEntry,
  type PlainFound,
  type Reading,
  type Readings,
  type Taken,
  type TypedInputs,
} from './calculator.ts';
import type { Field, FieldData } from './fields.ts';
import { startWorking } from './working.ts';

export function defineCalculator<const F extends Fields>(definition: Definition<F>): Calculator {
  const { name, version, fields, readings } = definition;

  const file = (inputs: TypedInputs, taken: Taken<F> | undefined): FiledAnswer => {
    const given = readInputs(fields, inputs, givingWay(definition, inputs, taken?.given ?? {}));
    const { working, record } = startWorking();
    const worked = definition.work(given, working);
    const answer: Answer = {
      calculator: name,
      version,
      given: shownInputs(fields, given),
      found: withUnits(worked.found, readings),
      working: record.lines,
      cautions: record.cautions,
      sources: record.citations,
      problems: entriesOf(fields, given).flatMap(([, field, value]) => field.remarks?.(value) ?? []),
      attention: worked.attention ?? false,
      ...(worked.lead === undefined ? {} : { lead: worked.lead }),
    };
    return {
      answer,
      stage: taken?.stage,
      basis: [`${name}@${version}`, ...inputBasis(fields, given), ...record.basis],
    };
  };

  return {
    name,
    version,
    summary: definition.summary,
    about: definition.about ?? '',
    fields,
    readings,
    examples: definition.examples,
    ...(definition.loads ? { loads: definition.loads } : {}),
    answer: (inputs) => {
      if (!inputs.picture) return file(inputs, undefined);
      const taken = definition.takes(inputs.picture);
      const first = isList(taken) ? taken[0] : taken.beside;
      if (first) return file(inputs, first);
      return typedAlone(definition, isList(taken) ? undefined : taken.why, inputs, () =>
        file(inputs, undefined),
      );
    },
    answerTrial: (picture, book) => {
      const taken = definition.takes(picture);
      if (!isList(taken)) return { why: taken.why };
      return { answers: taken.map((one) => file({ typed: {}, book, picture }, one)) };
    },
  };
}

function isList<F>(value: ReturnType<Definition<F>['takes']>): value is readonly Taken<F>[] {
  return Array.isArray(value);
}

/** A trial that gives nothing: what is typed may be whole without it; else it is said what is missing, and why. */
function typedAlone<F>(
  { name }: Definition<F>,
  why: string | undefined,
  { typed }: TypedInputs,
  answer: () => FiledAnswer,
): FiledAnswer {
  const nothing = `${name} finds nothing in the trial to work on${why === undefined ? '' : `: ${why}`}`;
  if (Object.values(typed).every((texts) => texts.length === 0))
    return fail('not-in-trial', nothing, 'give the inputs as options');
  try {
    return answer();
  } catch (thrown) {
    if (!isProblemError(thrown) || thrown.problems.some(({ code }) => code !== 'missing')) throw thrown;
    const missing = thrown.problems.map(({ message }) => message).join(', ');
    return fail('not-in-trial', nothing, `give the rest as options: ${missing}`);
  }
}

/** The inputs of the trial without those in whose stead something is typed. */
function givingWay<F extends Fields>(
  { instead = {} }: Definition<F>,
  { typed }: TypedInputs,
  taken: Partial<Given<F>>,
): Partial<Given<F>> {
  const left: Partial<Given<F>> = { ...taken };
  for (const [key, others] of Object.entries<readonly (keyof F & string)[] | undefined>(instead))
    if ((typed[key] ?? []).length > 0) for (const other of others ?? []) delete left[other];
  return left;
}

/** The typed inputs over those of the trial; every fault of every field at once. */
function readInputs<F extends Fields>(fields: F, inputs: TypedInputs, taken: Partial<Given<F>>): Given<F> {
  const values: Record<string, unknown> = { ...taken };
  const problems: Problem[] = [];
  for (const [key, field] of Object.entries(fields)) {
    const texts = inputs.typed[key] ?? [];
    if (texts.length === 0 && key in values) continue;
    const result = field.read(texts, { book: inputs.book });
    if (result.ok) values[key] = result.value;
    else problems.push(fieldProblem(key, field, result.fault));
  }
  if (problems.length > 0) throw new ProblemError(problems);
  if (!isComplete(fields, values)) throw new Error('a field was neither read nor refused');
  return values;
}

function fieldProblem(key: string, field: FieldData, fault: Fault): Problem {
  const name = field.positional ? field.placeholder : `--${optionName(key)}`;
  const before = field.positional ? '' : `${name}: `;
  const message = fault.code === 'missing' ? `${name} is needed` : `${before}${fault.message}`;
  return {
    code: fault.code,
    severity: 'error',
    message,
    hint: fault.code === 'missing' ? field.help : fault.hint,
  };
}

function isComplete<F extends Fields>(fields: F, values: unknown): values is Given<F> {
  return typeof values === 'object' && values !== null && Object.keys(fields).every((key) => key in values);
}

function entriesOf<F extends Fields>(
  fields: F,
  given: Given<F>,
): readonly (readonly [string, Field<unknown>, unknown])[] {
  const values = new Map<string, unknown>(Object.entries(given));
  return Object.entries(fields).map(([key, field]) => [key, field, values.get(key)]);
}

function shownInputs<F extends Fields>(fields: F, given: Given<F>): Facts {
  const shown: Record<string, Facts[string]> = {};
  for (const [key, field, value] of entriesOf(fields, given)) {
    const facts = field.show(value);
    if (facts !== undefined && !(Array.isArray(facts) && facts.length === 0)) shown[key] = facts;
  }
  return shown;
}

function inputBasis<F extends Fields>(fields: F, given: Given<F>): readonly string[] {
  return entriesOf(fields, given)
    .map(([key, field, value]) => `${key}: ${field.basis(value)}`)
    .filter((text) => !text.endsWith(': '));
}

function withUnits(found: PlainFound, readings: Readings): Facts {
  const facts: Record<string, Facts[string]> = {};
  for (const [key, value] of Object.entries(found)) {
    const reading = readings[key];
    if (!reading) throw new Error(`"${key}" is found but has no reading`);
    facts[key] = isRows(value)
      ? value.map((row) => rowWithUnits(row, reading.columns ?? {}))
      : entry(value, reading, key);
  }
  return facts;
}

function rowWithUnits(row: Readonly<Record<string, PlainEntry>>, columns: Readings): Row {
  const cells = Object.entries(row).map(([key, value]): readonly [string, Entry] => {
    const reading = columns[key];
    if (!reading) throw new Error(`"${key}" stands in a list but has no reading`);
    return [key, entry(value, reading, key)];
  });
  return Object.fromEntries(cells);
}

function entry(value: PlainEntry, reading: Reading, key: string): Entry {
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (value !== null && !Number.isFinite(value)) {
    return fail(
      'not-finite',
      `${reading.label} comes to no number`,
      'check the amounts: one of them is zero, or far too large or small',
    );
  }
  if (reading.unit === undefined) throw new Error(`the number "${key}" has no unit`);
  return { value, unit: reading.unit };
}

function isRows(value: PlainFound[string]): value is readonly Readonly<Record<string, PlainEntry>>[] {
  return Array.isArray(value);
}
