/** Given trials and formulas beside those of this ledger, with the numbers and names that they get here. */

import { normaliseName } from '../../reference/name.ts';
import type { FormulaCard } from '../cards.ts';
import type { Plain } from '../edit-facts.ts';
import type { Ledger } from '../ledger.ts';
import { nameWords, trialFileName } from '../new-files.ts';
import { isSameName, otherStageOf } from '../stage-name.ts';
import { givenFormula, givenTrial } from './given-facts.ts';
import { extras, type Giving } from './giving.ts';
import { type PlainFacts, plainText, textUnderKey } from './plain-lines.ts';
import type { Gift, GivenRecord } from './read-gift.ts';
import type { Clash, Settle, TakenRow } from './take-words.ts';

export interface TakenFile {
  readonly row: TakenRow;
  /** Absent where nothing is written. */
  readonly text: string | undefined;
  readonly replaces: string | undefined;
}

export interface TakenTrials {
  readonly taken: readonly TakenFile[];
  /** Numbers here, by those in the given file. */
  readonly numbers: ReadonlyMap<number, number>;
}

/** The names of ingredients here, by those in the given file. */
export type NamesHere = ReadonlyMap<string, string>;

const asTyped: Pick<Giving, 'with' | 'proseOf' | 'timeOf'> = {
  with: new Set(extras),
  proseOf: (text) => text,
  timeOf: (text) => text,
};

/** `emulsion of 13` and `trial 13` inside a sentence, with the numbers that they have here. */
function renumberedIn(text: string, trials: Gift['trials'], numbers: ReadonlyMap<number, number>): string {
  const stages = trials.flatMap(({ card }) => card.stages.map(({ name }) => `${name} of`));
  const heads = [...new Set([...stages, 'trial'])].map((word) =>
    word.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`),
  );
  const mention = new RegExp(
    String.raw`(?<![\p{L}\d])((?:${heads.join('|')})(?: trial)? )(\d{1,9})(?!\d)`,
    'giu',
  );
  return text.replace(mention, (all, head: string, digits: string) => {
    const number = numbers.get(Number(digits));
    return number === undefined ? all : `${head}${number}`;
  });
}

interface Numbering {
  readonly trials: Gift['trials'];
  readonly names: NamesHere;
  readonly numbers: ReadonlyMap<number, number>;
}

/** How names and numbers of the given file read here. */
function givingHere({ trials, names, numbers }: Numbering): Giving {
  return {
    ...asTyped,
    proseOf: (text) => renumberedIn(text, trials, numbers),
    nameOf: (name) => {
      const known = names.get(normaliseName(name));
      const other = known === undefined ? otherStageOf(name) : undefined;
      const number = other && numbers.get(other.trial);
      return other && number !== undefined ? `${other.stage} of ${number}` : (known ?? name);
    },
    numberOf: (number) => numbers.get(number),
  };
}

const asHere: Giving = { ...asTyped, nameOf: (name) => name, numberOf: (number) => number };

/** What makes two records the same: the recipe, and the title. */
const recipeOf = (facts: PlainFacts): string =>
  JSON.stringify(facts.filter(([key]) => key === 'title' || key === 'stages' || key === 'aim').map(inOrder));

const inOrder = ([key, value]: readonly [string, Plain]): Plain => ({ map: [[key, value]] });

/** Trials that use each other come first; each is new, or the one that is here. */
export function takeTrials(gift: Gift, ledger: Ledger, names: NamesHere, firstNumber: number): TakenTrials {
  const numbers = new Map<number, number>();
  const taken: TakenFile[] = [];
  const giving = givingHere({ trials: gift.trials, names, numbers });
  let next = firstNumber;
  const there = new Map(
    ledger.trials.map((card): [string, number] => [
      recipeOf(givenTrial(card.root, card.number, asHere)),
      card.number,
    ]),
  );
  for (const { card, root } of byUse(gift.trials)) {
    const same = there.get(recipeOf(givenTrial(root, next, giving)));
    const number = same ?? next;
    numbers.set(card.number, number);
    const facts = givenTrial(root, number, giving);
    const given = String(card.number);
    if (same !== undefined) {
      taken.push({
        row: row('trial', given, String(same), 'here already'),
        text: undefined,
        replaces: undefined,
      });
      continue;
    }
    next += 1;
    const file = `trials/${trialFileName(number, textUnderKey(facts, 'title'))}`;
    taken.push({
      row: { ...row('trial', given, String(number), 'new'), file },
      text: plainText(facts),
      replaces: undefined,
    });
  }
  return { taken, numbers };
}

const row = (kind: TakenRow['kind'], given: string, here: string, how: TakenRow['how']): TakenRow => ({
  kind,
  given,
  here,
  how,
});

type GivenTrial = Gift['trials'][number];

/** Those that are used before those that use them; within a circle in the order of the file. */
function byUse(trials: readonly GivenTrial[]): readonly GivenTrial[] {
  const byNumber = new Map(trials.map((one): [number, GivenTrial] => [one.card.number, one]));
  const done = new Set<GivenTrial>();
  const onTheWay = new Set<GivenTrial>();
  const visit = (one: GivenTrial): void => {
    if (done.has(one) || onTheWay.has(one)) return;
    onTheWay.add(one);
    for (const { items } of one.card.stages)
      for (const { name } of items) {
        const used = byNumber.get(otherStageOf(name)?.trial ?? 0);
        if (used) visit(used);
      }
    done.add(one);
  };
  for (const one of trials) visit(one);
  return [...done];
}

interface FormulasHere extends Numbering {
  readonly ledger: Ledger;
  readonly settle: Settle;
}

export function takeFormulas(
  given: readonly GivenRecord<FormulaCard>[],
  here: FormulasHere,
): { readonly taken: readonly TakenFile[]; readonly clashes: readonly Clash[] } {
  const clashes: Clash[] = [];
  const files = new Set([...here.ledger.documents.keys()].map((file) => file.toLowerCase()));
  const taken = given.flatMap((one): readonly TakenFile[] => {
    const found = takenFormula(one, here, files);
    if ('clash' in found) {
      clashes.push(found.clash);
      return [];
    }
    if (found.row.file !== undefined) files.add(found.row.file.toLowerCase());
    return [found];
  });
  return { taken, clashes };
}

function takenFormula(
  { card, root }: GivenRecord<FormulaCard>,
  here: FormulasHere,
  files: ReadonlySet<string>,
): TakenFile | { readonly clash: Clash } {
  const { ledger, settle } = here;
  const giving = givingHere(here);
  const factsNamed = (name: string): PlainFacts => givenFormula(root, name, giving);
  const given = card.name;
  const isSame = (mine: FormulaCard): boolean =>
    recipeOf(givenFormula(mine.root, mine.name, asHere)) === recipeOf(factsNamed(mine.name));
  const hereAlready = (mine: FormulaCard): TakenFile => ({
    row: row('formula', given, mine.name, 'here already'),
    text: undefined,
    replaces: undefined,
  });
  const fresh = (name: string, how: TakenRow['how']): TakenFile => ({
    row: { ...row('formula', given, name, how), file: freeFile(name, files) },
    text: plainText(factsNamed(name)),
    replaces: undefined,
  });
  const formulaNamed = (name: string): FormulaCard | undefined =>
    ledger.formulas.find((one) => isSameName(one.name, name));
  const mine = formulaNamed(given);
  if (!mine) return fresh(given, 'new');
  if (isSame(mine)) return hereAlready(mine);
  const clash: Clash = {
    kind: 'formula',
    name: given,
    text: `the formula "${mine.name}" in ${mine.file} is another one`,
  };
  const way = settle(clash);
  if (way === undefined) return { clash };
  if (way === 'mine') return { ...hereAlready(mine), row: row('formula', given, mine.name, 'mine kept') };
  if (way === 'theirs')
    return {
      row: { ...row('formula', given, mine.name, 'replaced'), file: mine.file },
      text: plainText(factsNamed(mine.name)),
      replaces: mine.file,
    };
  for (let count = 2; ; count += 1) {
    const there = formulaNamed(`${given} ${count}`);
    if (!there) return fresh(`${given} ${count}`, 'renamed');
    if (isSame(there)) return hereAlready(there);
  }
}

function freeFile(name: string, files: ReadonlySet<string>): string {
  const words = nameWords(name) || 'formula';
  for (let count = 1; ; count += 1) {
    const file = `formulas/${words}${count === 1 ? '' : `-${count}`}.yaml`;
    if (!files.has(file.toLowerCase())) return file;
  }
}
