/** Checks of what goes into stages: names, other trials' stages, and whether a stage can be solved. */

import type { Problem } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import type { FileCard, StageCard } from './cards.ts';
import { type Check, type CheckContext, found } from './check.ts';
import { ingredientsFile } from './folder.ts';
import { brokenTrial, type StagesOf, stageFaults } from './resolve.ts';

/** Unknown ingredients, loops, stages that can't be solved. Files with errors of their own are left out. */
export const checkMixtures: Check = (context) => {
  const { trials, formulas, batches } = context.ledger;
  return [...trials, ...formulas, ...batches].flatMap((card) => stageProblems(context, card));
};

/** Of a file with errors of its own only the names are looked at: what it comes to would be wrong anyway. */
function stageProblems(context: CheckContext, card: FileCard & StagesOf): readonly Problem[] {
  const isBookOpen = !context.ledger.unread.includes(ingredientsFile);
  return stageFaults(card, context.sources).flatMap(({ finding, span }) => {
    const { code } = finding;
    const isElsewhere = code === brokenTrial || (code === 'unknown-ingredient' && !isBookOpen);
    if (isElsewhere || (!card.isSound && !nameCodes.has(code))) return [];
    return [found(context, card, finding, span)];
  });
}

const nameCodes: ReadonlySet<string> = new Set([
  'unknown-ingredient',
  'own-stage',
  'later-stage',
  'unknown-trial',
  'unknown-stage',
]);

/** Two stages of one name, and a stage whose name is an ingredient's. */
export const checkStageNames: Check = (context) => {
  const { ledger, book } = context;
  const problems: Problem[] = [];
  for (const card of [...ledger.trials, ...ledger.formulas, ...ledger.batches]) {
    const seen = new Map<string, StageCard>();
    for (const stage of card.stages) {
      const name = normaliseName(stage.name);
      const first = seen.get(name);
      if (first) problems.push(sameName(context, card, stage, first));
      else seen.set(name, stage);
      if (book.find(stage.name)) problems.push(alsoIngredient(context, card, stage));
    }
  }
  return problems;
};

function sameName(context: CheckContext, card: FileCard, stage: StageCard, first: StageCard): Problem {
  const message = `"${stage.name}" is the same name as the stage "${first.name}"`;
  return found(context, card, { code: 'same-name', message, hint: 'give it another name' }, stage.nameSpan);
}

function alsoIngredient(context: CheckContext, card: FileCard, stage: StageCard): Problem {
  const finding = {
    code: 'name-is-both',
    severity: 'warning',
    message: `"${stage.name}" is a stage here and an ingredient too; in this file it means the stage`,
    hint: 'give the stage another name',
  } as const;
  return found(context, card, finding, stage.nameSpan);
}
