import type { Io } from '../io.ts';
import type { FormulaCard } from '../ledger/cards.ts';
import { openBookOf, sourcesOf } from '../ledger/checks.ts';
import { readLedger } from '../ledger/folder.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { openTimeZone } from '../ledger/times.ts';
import { envelope } from '../output/answer-json.ts';
import { csvText } from '../output/csv.ts';
import { fail, type Problem } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { compositionSheet } from './export-compositions.ts';
import { type Made, observationSheet, resultSheet } from './export-made.ts';
import { csvSheet, type ExportSheet, filledSheet, sheetJson } from './export-sheet.ts';
import { readPort, requireRoot } from './open-ledger.ts';
import { separatorOption } from './separator-option.ts';
import { writeOut } from './write-out.ts';

const kinds = ['observations', 'results', 'compositions'] as const;
type Kind = (typeof kinds)[number];

export async function runExport(call: Call, io: Io): Promise<Outcome> {
  const [typed = '', ...names] = call.words;
  const kind = kindOf(typed);
  const separator = separatorOption(call);
  const ledger = await readLedger(await requireRoot(io), readPort(io));
  const { sheet, problems } = await sheetOf(kind, ledger, names);
  const filled = filledSheet(sheet);
  const text = csvText(csvSheet(filled), {
    ...(separator ? { separator } : {}),
    mark: call.flags.has('bom'),
  });
  const to = optionValue(call, 'to');
  const notes = to === undefined ? [] : [await written(to, text, call, io)];
  const isJson = call.flags.has('json');
  // A page would break lines and make carriage returns visible; the text has been tamed already.
  if (to === undefined && !isJson) io.out(text);
  return {
    exitCode: 0,
    page: [],
    json: envelope({
      schema: 'export@1',
      given: { what: kind, names, ...(to === undefined ? {} : { to }) },
      found: { rows: { value: filled.rows.length, unit: '' }, [kind]: sheetJson(filled) },
      problems,
    }),
    problems,
    notes: [...notes, ...(filled.rows.length === 0 ? [`there are no ${kind} here`] : [])],
  };
}

/** A sheet has no line that says whose it is, so one that is there is never written over without a word. */
async function written(to: string, text: string, call: Call, io: Io): Promise<string> {
  return writeOut({ io, typed: to, text, keepsOurs: true, replace: call.flags.has('replace') });
}

function kindOf(typed: string): Kind {
  const kind = kinds.find((one) => one === typed);
  if (kind) return kind;
  const [near] = nearestNames(typed, kinds, 1);
  return fail(
    'unknown-word',
    `"${typed}" can't be exported`,
    near === undefined ? `say ${kinds.join(', ')}` : `did you mean ${near}?`,
  );
}

async function sheetOf(
  kind: Kind,
  ledger: Ledger,
  names: readonly string[],
): Promise<{ readonly sheet: ExportSheet; readonly problems: readonly Problem[] }> {
  const made = [...ledger.trials, ...ledger.batches];
  const all = kind === 'compositions' ? [...made, ...ledger.formulas] : made;
  const cards = chosen(all, names);
  const unread = ledger.problems.filter(
    ({ severity, place }) =>
      severity === 'error' && (names.length === 0 || cards.some(({ file }) => file === place?.file)),
  );
  const told = unread.map((one): Problem => ({ ...one, severity: 'warning' }));
  const zone = ledger.bench?.timeZone === undefined ? undefined : openTimeZone(ledger.bench.timeZone);
  if (kind === 'compositions') {
    const { ingredients } = await import('../reference/library.ts');
    const sources = sourcesOf(ledger, openBookOf(ledger, ingredients).book);
    const { sheet, problems } = compositionSheet({ cards, ledger, sources });
    return { sheet, problems: [...told, ...problems] };
  }
  const looked = cards.filter((card): card is Made => card.kind !== 'formula');
  const sheet =
    kind === 'results' ? resultSheet({ cards: looked, zone }) : observationSheet({ cards: looked, zone });
  return { sheet, problems: told };
}

type AnyOf = Made | FormulaCard;

const nameOf = (card: AnyOf): string => (card.kind === 'trial' ? String(card.number) : card.name);

const isNamed = (card: AnyOf, name: string): boolean =>
  card.kind === 'trial' && /^\d{1,9}$/u.test(name)
    ? card.number === Number(name)
    : isSameName(nameOf(card), name);

/** Those that are named, or all; a series stands for its trials. */
function chosen<Card extends AnyOf>(cards: readonly Card[], names: readonly string[]): readonly Card[] {
  if (names.length === 0) return cards;
  const found = new Set<Card>();
  for (const name of names) {
    const some = cards.filter(
      (card) =>
        card.file === name ||
        isNamed(card, name) ||
        (card.kind === 'trial' && card.series !== undefined && isSameName(card.series.text, name)),
    );
    if (some.length === 0) noneNamed(cards, name);
    for (const card of some) found.add(card);
  }
  return cards.filter((card) => found.has(card));
}

function noneNamed(cards: readonly AnyOf[], name: string): never {
  const near = nearestNames(name, cards.map(nameOf), 3);
  return fail(
    'unknown-name',
    `there is nothing to export named "${name}"`,
    near.length > 0
      ? `did you mean ${near.join(' or ')}?`
      : 'name a trial by its number, or a series, batch or formula by its name; all if left out',
  );
}
