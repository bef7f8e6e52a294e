/** What every stage holds of every pure substance, a line each. */

import type { FormulaCard } from '../ledger/cards.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { problemAt } from '../ledger/places.ts';
import { type Resolution, resolveStages, resolveTrial, type Sources } from '../ledger/resolve.ts';
import type { Problem } from '../problem.ts';
import type { Made } from './export-made.ts';
import type { ExportRow, ExportSheet } from './export-sheet.ts';

export interface CompositionExport {
  readonly cards: readonly (Made | FormulaCard)[];
  readonly ledger: Ledger;
  readonly sources: Sources;
}

/** What can't be worked out is left out, and its problems are told. */
export function compositionSheet({ cards, ledger, sources }: CompositionExport): {
  readonly sheet: ExportSheet;
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [];
  const rows = cards
    .filter(({ isSound, stages }) => isSound && stages.length > 0)
    .flatMap((card) => {
      const resolution = card.kind === 'trial' ? resolveTrial(card, sources) : resolveStages(card, sources);
      problems.push(...problemsOf(card.file, ledger, resolution));
      return rowsOf(card, resolution);
    });
  return {
    sheet: {
      columns: [
        { key: 'kind', head: 'kind' },
        { key: 'of', head: 'number or name' },
        { key: 'title', head: 'title' },
        { key: 'stage', head: 'stage' },
        { key: 'substance', head: 'substance' },
        { key: 'role', head: 'role' },
        { key: 'mass', head: 'mass', unit: 'g' },
        { key: 'massFraction', head: 'by mass', unit: 'g/g' },
        { key: 'perLitre', head: 'per litre', unit: 'g/L' },
      ],
      rows,
    },
    problems,
  };
}

function problemsOf(file: string, ledger: Ledger, { found }: Resolution): readonly Problem[] {
  const source = ledger.documents.get(file)?.source;
  if (!source) return [];
  return found
    .filter(({ finding }) => finding.severity !== 'warning')
    .map(({ finding, span }) => ({ ...problemAt(source, finding, span), severity: 'warning' as const }));
}

const rowsOf = (card: Made | FormulaCard, { mixture }: Resolution): readonly ExportRow[] =>
  (mixture?.stages ?? []).flatMap((stage) =>
    stage.substances.map((one) => ({
      kind: card.kind,
      of: card.kind === 'trial' ? card.number : card.name,
      title: card.title,
      stage: stage.name,
      substance: one.name,
      role: one.role,
      mass: one.massGrams,
      massFraction: one.massFraction,
      perLitre: one.gramsPerLitre,
    })),
  );
