import type { Caution } from '../calc/answer.ts';
import { answered } from '../calc/answered.ts';
import type { Book, BookEntry } from '../calc/book.ts';
import { drinkCautions } from '../calc/drink/drink-cautions.ts';
import { finishedDrink } from '../calc/drink/finished-drink.ts';
import { unknownName } from '../calc/known-name.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { type Equal, equals, type SwapFactor, swapFactor, usualEqual } from '../calc/swap.ts';
import type { Io } from '../io.ts';
import type { StageCard } from '../ledger/cards.ts';
import { drinkConditions, waterTraces } from '../ledger/drink-conditions.ts';
import { editAll } from '../ledger/edit.ts';
import { renameItem, setItemAmount } from '../ledger/edit-item.ts';
import { problemAt } from '../ledger/places.ts';
import { resolveStages } from '../ledger/resolve.ts';
import { fail, ProblemError } from '../problem.ts';
import { neededOption, refuseWithdrawn } from './batch-options.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import {
  designWords,
  type OpenedDesign,
  openDesign,
  type ResolvedDesign,
  resolveDesign,
} from './open-formula.ts';
import { type Here, openHere } from './open-ledger.ts';
import { swapFigures } from './swap-figures.ts';
import { type SwappedItem, swappedItems } from './swap-items.ts';
import { swapEnvelope, swapExplanation, swapPage } from './swap-page.ts';
import { sourceWords } from './worded-sources.ts';

export async function runSwap(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const book = await bookOf(here);
  const design = await openDesign(here, io, call.words[0] ?? '');
  const out = named('out', call, book);
  const into = named('in', call, book);
  refuseWithdrawn('in', into);
  if (out.name === into.name)
    fail('same-ingredient', `--out and --in are both ${out.name}`, 'name another one to come in');
  const equal = typedEqual(call) ?? usualEqual(out, into);
  const factor = answered(swapFactor(out, into, equal));
  const items = swappedItems(design.card.stages, {
    out,
    into,
    factor: factor.factor,
    find: book.find,
    dropGrams: here.bench.drop?.massGrams,
  });
  if (items.length === 0) notThere(design, out, book);
  const resolved = await resolveDesign(here, design, book);
  const after = mixtureAfter(design, resolved, items);
  const conditions = drinkConditions({ bench: here.bench, card: design.card });
  const report = {
    design,
    out,
    into,
    factor,
    items,
    before: swapFigures(resolved.mixture, conditions),
    after: swapFigures(after, conditions),
    cautions: await cautionsOf(here, after, { conditions, factor, into, out }),
    warnings: resolved.warnings,
  };
  const notes = await written({ here, design, call, io, items });
  return {
    exitCode: 0,
    page: swapPage(report),
    json: swapEnvelope(report),
    explained: () => swapExplanation(report, finishedDrink(after, conditions)),
    problems: resolved.warnings,
    notes,
  };
}

function named(option: 'out' | 'in', call: Call, book: Book): BookEntry {
  const typed = neededOption(optionValue(call, option), option, '"citric acid monohydrate"');
  const entry = book.find(typed);
  if (entry) return entry;
  const refusal = unknownName(typed, book);
  return refusal.ok
    ? fail('unknown-ingredient', `--${option}: there is no ${typed}`, 'add it to ingredients.yaml')
    : fail(refusal.fault.code, `--${option}: ${refusal.fault.message}`, refusal.fault.hint);
}

function typedEqual(call: Call): Equal | undefined {
  const typed = optionValue(call, 'equal');
  if (typed === undefined) return undefined;
  return (
    equals.find((one) => one === typed.trim().toLowerCase()) ??
    fail('usage', `--equal: "${typed}" can't be kept equal`, `say ${equals.join(', ')}`)
  );
}

function notThere(design: OpenedDesign, out: BookEntry, book: Book): never {
  const names = design.card.stages.flatMap(({ items }) =>
    items.flatMap(({ name }) => (book.find(name) ? [name] : [])),
  );
  return fail(
    'not-in-design',
    `${out.name} is not weighed into ${designWords(design)}`,
    `name one that is: ${[...new Set(names)].join(', ')}; stages of other trials are changed in their own trial`,
  );
}

function mixtureAfter(
  design: OpenedDesign,
  { sources }: ResolvedDesign,
  items: readonly SwappedItem[],
): Mixture {
  const { card } = design;
  const stages = card.stages.map((stage): StageCard => {
    const swapped = items.filter((one) => one.stage === stage.name);
    if (swapped.length === 0) return stage;
    const { density: _, weighs: __, ...kept } = stage;
    return {
      ...kept,
      items: stage.items.map((item, index) => swapped.find((one) => one.index === index)?.after ?? item),
    };
  });
  const number = card.kind === 'trial' ? card.number : undefined;
  const { mixture, found } = resolveStages({ stages, number }, sources);
  if (mixture) return mixture;
  throw new ProblemError(found.map(({ finding, span }) => problemAt(design.document.source, finding, span)));
}

interface After {
  readonly conditions: ReturnType<typeof drinkConditions>;
  readonly factor: SwapFactor;
  readonly out: BookEntry;
  readonly into: BookEntry;
}

/** What falls out of the new drink, and what an equal figure does not make equal. */
async function cautionsOf(
  here: Here,
  mixture: Mixture,
  { conditions, factor, into, out }: After,
): Promise<readonly Caution[]> {
  const { sources } = await import('../reference/kept-sources.ts');
  const drink = mixture.drink ? finishedDrink(mixture, conditions) : undefined;
  const found = drink?.ok
    ? drinkCautions(drink.value, waterTraces(here.bench)).filter(({ code }) =>
        ['falls-out', 'near-solubility', 'no-acid-data'].includes(code),
      )
    : [];
  const roles = [out, into].map(({ record }) => record.role);
  const more: Caution[] = [
    ...(roles.includes('emulsifier') || roles.includes('oil')
      ? [
          caution(
            'try-again',
            'Another lot, fold or emulsifier breaks at another ratio: make a beaker and watch it before a batch.',
          ),
        ]
      : []),
    ...(roles[0] !== roles[1]
      ? [caution('other-role', `${into.name} is ${roles[1]}, ${out.name} ${roles[0]}: is this meant?`)]
      : []),
    ...(factor.equal === 'flavour'
      ? [
          caution(
            'fold',
            'Fold counts what was concentrated, not what is smelled: taste it against the control.',
          ),
        ]
      : []),
    ...(factor.equal === 'acidity' && out.record.role === 'acid'
      ? [
          caution(
            'sourness',
            'Equal acid to titrate is neither equal pH nor equally sour: taste it against the control.',
          ),
        ]
      : []),
  ];
  return [...found, ...more].map((one) => ({ ...one, source: sourceWords(one.source, sources) }));
}

const caution = (code: string, text: string): Caution => ({
  code,
  text,
  source: 'common practice, no source',
});

interface Writing {
  readonly here: Here;
  readonly design: OpenedDesign;
  readonly call: Call;
  readonly io: Io;
  readonly items: readonly SwappedItem[];
}

async function written({ here, design, call, io, items }: Writing): Promise<readonly string[]> {
  if (!call.flags.has('write') && !call.flags.has('dry-run'))
    return design.card.kind === 'formula' ? ['nothing written; --write puts this into the formula'] : [];
  if (design.card.kind === 'trial')
    fail(
      'not-a-formula',
      `trial ${design.card.number} is what was made, and stays as it is`,
      `begin a new one: neckring new --from ${design.card.number}`,
    );
  const { file } = design;
  const edited = (before: string): string => {
    const changes = items.flatMap(({ stage, index, after }) => {
      const path = ['stages', stage];
      return [setItemAmount(path, index, after.amount.written), renameItem(path, index, after.name)];
    });
    const made = editAll(file, before, changes);
    if (!made.ok) throw new ProblemError(made.problems);
    return made.text;
  };
  if (call.flags.has('dry-run')) {
    const before = textNow(here.root, file, io);
    return [`would write ${file}`, ...changedLines(before, edited(before))];
  }
  await landHere(here.root, call, io, async () => {
    const before = textNow(here.root, file, io);
    return [{ path: file, before, after: edited(before) }];
  });
  return [`wrote ${file}`];
}
