/** A new stock on the shelf, from what is typed or from what was weighed. */

import type { Book, BookEntry } from '../calc/book.ts';
import { parseChain } from '../calc/dilution/check-chain.ts';
import { parseItemText } from '../calc/item-text.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import { partsWords } from '../calc/parts-words.ts';
import type { Io } from '../io.ts';
import { edit } from '../ledger/edit.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { ingredientsFile } from '../ledger/folder.ts';
import { addIngredient, newBookText } from '../ledger/ingredient-edit.ts';
import { readText } from '../ledger/open-file.ts';
import { openOwnBook } from '../ledger/own-book.ts';
import { readIngredientsCard } from '../ledger/read-ingredients.ts';
import { hasFileIn, withSchemaLine } from '../ledger/schema-files.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, ProblemError } from '../problem.ts';
import { quantityOption, refuseWithdrawn, someOption } from './batch-options.ts';
import { day } from './batch-words.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import { type Here, openHere } from './open-ledger.ts';

export async function runStocksNew(call: Call, io: Io): Promise<Outcome> {
  const [, name = '', ...more] = call.words;
  if (name.trim() === '' || more.length > 0)
    fail(
      'usage',
      name === '' ? 'the stock has no name' : `"${more.join(' ')}" is left over`,
      'stocks new "cassis 4 ppm" --contains "4 ppm cassis thiol" --in "propylene glycol"',
    );
  const here = await openHere(io);
  const book = await bookOf(here);
  const facts = await withArithmetic(() => factsOf(call, io, here, book));
  let diff: readonly string[] = [];
  const { ingredients } = await import('../reference/library.ts');
  const make = async () => {
    const isThere = here.port.sizeOf(`${here.root}/${ingredientsFile}`) !== undefined;
    const before = isThere ? textNow(here.root, ingredientsFile, io) : undefined;
    const after =
      before === undefined
        ? withSchemaLine(hasFileIn(here), 'ingredients', newBookText(name, facts))
        : withStock(before, name, facts);
    refuseFaults(after, here, ingredients);
    diff = changedLines(before ?? '', after);
    return [{ path: ingredientsFile, before, after }];
  };
  const isDry = call.flags.has('dry-run');
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  return {
    exitCode: 0,
    page: [{ kind: 'lines', lines: diff }],
    json: envelope({ schema: 'stocks-new@1', given: { name }, found: { name, file: ingredientsFile } }),
    notes: [`${isDry ? 'would write' : 'wrote'} ${name} to ${ingredientsFile}`],
  };
}

function withStock(before: string, name: string, facts: readonly Fact[]): string {
  const edited = edit(ingredientsFile, before, addIngredient(name, facts));
  if (!edited.ok) throw new ProblemError(edited.problems);
  return edited.text;
}

/** What the new text says must be a stock that can be worked out. */
function refuseFaults(text: string, here: Here, builtIn: Parameters<typeof openOwnBook>[0]): void {
  const read = readText(ingredientsFile, text, (document) => readIngredientsCard(document, here.settings));
  const faults = [...read.problems, ...openOwnBook(builtIn, read.card, read.document.source).problems()];
  const errors = faults.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new ProblemError(errors);
}

function factsOf(call: Call, io: Io, here: Here, book: Book): readonly Fact[] {
  const from = optionValue(call, 'from');
  const typed = call.values['contains'] ?? [];
  if (from === undefined && typed.length === 0)
    fail(
      'missing',
      'nothing is said of what it contains',
      'give --contains "100 ppm cassis thiol", or --from "2 g cassis stock in 100 g"',
    );
  if (from !== undefined && typed.length > 0)
    fail('given-twice', 'both --from and --contains are given', 'give what was weighed, or what it contains');
  const made = from === undefined ? typedContents(typed, call, book) : weighedContents(from, call, book);
  const optional = (key: string, text: string | undefined): readonly Fact[] =>
    text === undefined ? [] : [[key, text]];
  return [
    ['contains', made.contains],
    ...optional('drop', someOption(call, 'drop', ['mass'])?.written),
    ...optional('left', quantityOption(call, 'left', ['mass', 'volume'])?.written ?? made.left),
    ['made', optionValue(call, 'made') ?? day(io.now(), here.settings.zone)],
    ...optional('keep', someOption(call, 'keep', ['time'])?.written),
    ...optional('source', made.source),
    ...optional('note', optionValue(call, 'note')),
  ];
}

interface Made {
  readonly contains: readonly Fact[];
  readonly left: string | undefined;
  readonly source: string | undefined;
}

/** `100 ppm cassis thiol`, each a line, and the rest. */
function typedContents(typed: readonly string[], call: Call, book: Book): Made {
  const contents = typed.map((text): Fact => {
    const item = parseItemText(text, (name) => book.find(name) !== undefined);
    if (!item.ok) return fail(item.fault.code, `--contains: ${item.fault.message}`, item.fault.hint);
    const { name, quantity } = item.value;
    if (!quantity || (quantity.dimension !== 'share' && quantity.dimension !== 'mass per volume'))
      return fail(
        'wrong-kind',
        `--contains: "${text}" says no strength`,
        'give a share by mass, such as "100 ppm cassis thiol"',
      );
    return [known(name, 'contains', book), quantity.written];
  });
  return { contains: [...contents, restOf(call, book)], left: undefined, source: undefined };
}

/** `2 g cassis stock in 100 g`: the pure substances at their new strengths. */
function weighedContents(typed: string, call: Call, book: Book): Made {
  const [, taken = '', total = ''] = /^(.+)\s+in\s+(.+?)$/iu.exec(typed.trim()) ?? [];
  const item = parseItemText(taken, (name) => book.find(name) !== undefined);
  if (total === '' || !item.ok || !item.value.quantity)
    return fail(
      'not-a-step',
      `--from: "${typed}" is not a step`,
      'write "2 g cassis stock in 100 g": taken, and made up to',
    );
  const step = parseChain(`${item.value.quantity.written} in ${total}`);
  if (!step.ok) return fail(step.fault.code, `--from: ${step.fault.message}`, step.fault.hint);
  const entry = book.find(known(item.value.name, 'from', book));
  const [{ takeGrams, totalGrams } = { takeGrams: 0, totalGrams: 1 }] = step.value;
  const rest = restOf(call, book);
  const contents = (entry ? substancesOf(entry, item.value.name) : [])
    .filter(({ entry: one }) => one.name !== book.find(rest[0])?.name)
    .map(({ name, share }): Fact => [name, partsWords((share * takeGrams) / totalGrams, 7)]);
  return {
    contains: [...contents, rest],
    left: total.trim(),
    source: `${trimmedNumber(takeGrams)} g of ${item.value.name} made up to ${trimmedNumber(totalGrams)} g`,
  };
}

/** A pure substance goes by the name that was typed for it; one with figures in its name by a word for it. */
function substancesOf(entry: BookEntry, typed: string) {
  return entry.composition.map(({ substance, massFraction }) => ({
    entry: substance,
    name: substance.name === entry.name ? typed : shortName(substance),
    share: massFraction,
  }));
}

const shortName = ({ name, record }: BookEntry): string =>
  (/\d/.test(name) ? record.aliases?.[0] : undefined) ?? name;

function restOf(call: Call, book: Book): readonly [string, 'rest'] {
  const solvent = optionValue(call, 'in');
  if (solvent === undefined)
    return fail(
      'missing',
      '--in is needed',
      'give what the stock is made in, such as --in "propylene glycol"',
    );
  return [known(solvent, 'in', book), 'rest'];
}

function known(name: string, option: string, book: Book): string {
  const entry = book.find(name);
  refuseWithdrawn(option, entry);
  if (entry) return name.trim();
  const near = book.nearest(name, 3).join(', ');
  return fail(
    'unknown-ingredient',
    `--${option}: "${name}" is not an ingredient that is known`,
    near === '' ? 'neckring ingredient WORDS finds the names' : `did you mean ${near}?`,
  );
}
