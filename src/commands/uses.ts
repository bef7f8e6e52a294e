/** Everything that holds an ingredient or a lot. */

import type { Book } from '../calc/book.ts';
import type { Io } from '../io.ts';
import { openBookOf, sourcesOf } from '../ledger/checks.ts';
import { readLedger } from '../ledger/folder.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { envelope } from '../output/answer-json.ts';
import { leafText, partsText } from '../output/leaf-text.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import type { Call, Outcome } from './command.ts';
import { readPort, requireRoot } from './open-ledger.ts';
import { type Use, usesOf } from './uses-amounts.ts';
import { wantedOf } from './uses-wanted.ts';

export async function runUses(call: Call, io: Io): Promise<Outcome> {
  const root = await requireRoot(io);
  const { ingredients } = await import('../reference/library.ts');
  const ledger = await readLedger(root, readPort(io));
  const { book } = openBookOf(ledger, ingredients);
  const words = call.words.join(' ').trim();
  const wanted = wantedOf(words, ledger, book) ?? unknown(words, ledger, book);
  const uses = usesOf({ ledger, book, wanted, sources: sourcesOf(ledger, book) });
  const others = [...wanted.entries].filter((name) => name !== book.find(words)?.name);
  return {
    exitCode: uses.length === 0 ? 1 : 0,
    page: [...usesPage(words, uses), ...othersPage(others, uses)],
    json: envelope({
      schema: 'uses@1',
      given: { words },
      found: { counted: [...wanted.entries], uses: uses.map(useJson) },
    }),
    problems: unreadProblems(ledger),
    explained: async () => (await import('./explain-bench.ts')).usesExplanation(uses),
  };
}

function unknown(words: string, ledger: Ledger, book: Book): never {
  const near = [...book.nearest(words, 3), ...nearestNames(words, lotsOf(ledger), 2)].slice(0, 3);
  const hint =
    near.length > 0
      ? `did you mean ${near.join(' or ')}?`
      : 'name an ingredient or a lot, such as "lot 2231"';
  return fail('unknown-ingredient', `nothing is known by "${words}"`, hint, 1);
}

const lotsOf = (ledger: Ledger): readonly string[] => [
  ...(ledger.ingredients?.ingredients ?? []).flatMap(({ lot }) => lot ?? []),
  ...[...ledger.trials, ...ledger.batches, ...ledger.formulas].flatMap(({ stages }) =>
    stages.flatMap(({ items }) => items.flatMap(({ lot }) => lot ?? [])),
  ),
];

/** What could not be read was not searched. */
const unreadProblems = ({ unread }: Ledger) =>
  unread.map((file) => ({
    code: 'not-searched',
    severity: 'warning' as const,
    message: `${file} can't be read and was not searched`,
    hint: 'neckring check says why',
  }));

function usesPage(words: string, uses: readonly Use[]): Page {
  if (uses.length === 0) return [{ kind: 'text', text: visible(`Nothing here holds ${words}.`) }];
  return [
    { kind: 'heading', text: visible(words) },
    {
      kind: 'table',
      columns: [
        { head: 'in', align: 'left' },
        { head: 'amount', align: 'point' },
        { head: 'in the drink', align: 'point' },
        { head: 'file', align: 'left' },
      ],
      rows: uses.map((use) => [
        visible(`${use.kind} ${use.name}`),
        amountText(use),
        use.gramsPerLitre === null ? '' : perLitreText(use.gramsPerLitre),
        visible(use.file),
      ]),
    },
  ];
}

const amountText = ({ massGrams, share }: Use): string => {
  if (massGrams !== null) return leafText({ value: massGrams, unit: 'g' });
  return share === null ? '?' : partsText(share);
};

function perLitreText(gramsPerLitre: number): string {
  if (gramsPerLitre >= 1) return leafText({ value: gramsPerLitre, unit: 'g/L' });
  if (gramsPerLitre >= 1e-3) return leafText({ value: gramsPerLitre * 1e3, unit: 'mg/L' });
  return leafText({ value: gramsPerLitre * 1e6, unit: 'ug/L' });
}

function othersPage(others: readonly string[], uses: readonly Use[]): Page {
  if (others.length === 0 || uses.length === 0) return [];
  return [{ kind: 'text', text: visible(`Counted as it: ${others.join(', ')}.`), tone: 'faint' }];
}

const useJson = (use: Use): object => ({
  kind: use.kind,
  name: use.name,
  file: use.file,
  mass: { value: use.massGrams, unit: 'g' },
  gramsPerLitre: { value: use.gramsPerLitre, unit: 'g/L' },
  share: { value: use.share, unit: '' },
});
